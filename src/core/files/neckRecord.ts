import type { Neck } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/**
 * Neck and fingerboard for other programs. Heights over the upper face of the top's edge unless they say otherwise, angles in
 * degrees. Chains of the neck: x from the nut along the gluing face of the board, y over it; sections: x across.
 */
export function neckRecord({ sizes, set, mortise, rootAngleRad, bodyHeightMm, ...neck }: Neck) {
  const { shape, button, block, inRibs, scoop, hollow } = neck;
  const degrees = (rad: number): number => toFile((rad * 180) / Math.PI);
  return {
    neckStop: toFile(sizes.neckStopMm),
    bodyStop: toFile(sizes.bodyStopMm),
    overstand: toFile(sizes.overstandMm),
    projection: toFile(sizes.projectionMm),
    angle: degrees(set.neckAngleRad),
    boardEnd: {
      overTop: toFile(set.boardEndOverTopMm),
      overEdge: toFile(set.boardEndOverEdgeMm),
      fromUpperEnd: toFile(set.boardEndFromTopEndMm),
    },
    bridge: { overTop: toFile(set.bridgeHeightMm), overEdge: toFile(set.bridgeOverEdgeMm) },
    stringLength: toFile(set.stringLengthMm),
    frontAngle: degrees(set.frontAngleRad),
    side: chainToDocument(shape.side),
    heel: {
      upperRadius: toFile(shape.heel.upperRadiusMm),
      lowerRadius: toFile(shape.heel.lowerRadiusMm),
    },
    sections: shape.sections.map((section) => ({
      name: section.name,
      fromNut: toFile(section.alongMm),
      width: toFile(section.widthMm),
      wood: toFile(section.woodMm),
      withBoard: toFile(section.withBoardMm),
      round: chainToDocument(section.round),
    })),
    root: {
      angle: degrees(rootAngleRad),
      height: toFile(shape.root.heightMm),
      widthAtBoard: toFile(shape.root.topWidthMm),
      widthAtEdge: toFile(shape.root.edgeWidthMm),
      widthAtBack: toFile(shape.root.backWidthMm),
    },
    button: {
      width: toFile(button.widthMm),
      height: toFile(button.heightMm),
      edge: chainToDocument(button.edge),
    },
    mortise: {
      depthAtTop: toFile(mortise.depthAtTopMm),
      depthAtBack: toFile(mortise.depthAtBackMm),
      lean: degrees(mortise.leanRad),
      height: toFile(bodyHeightMm),
      blockBehind: toFile(block.behindMm),
      blockBeside: toFile(block.besideMm),
      // From the centre line, and what goes of an upper rib that runs to it, laid flat.
      inRibs: {
        atTop: { aside: toFile(inRibs.atTop.asideMm), taken: toFile(inRibs.atTop.takenMm) },
        atBack: { aside: toFile(inRibs.atBack.asideMm), taken: toFile(inRibs.atBack.takenMm) },
        shortOfCentre: toFile(inRibs.shortOfCentreMm),
      },
    },
    board: {
      length: toFile(sizes.board.lengthMm),
      widthAtNut: toFile(sizes.board.widthAtNutMm),
      widthAtEnd: toFile(sizes.board.widthAtEndMm),
      radius: toFile(sizes.board.radiusMm),
      side: toFile(sizes.board.sideMm),
      scoop: {
        bass: toFile(scoop.bassMm),
        middle: toFile(scoop.middleMm),
        treble: toFile(scoop.trebleMm),
        radiusAcrossHalfWay: toFile(scoop.acrossRadiusMm),
      },
      hollow: hollow && {
        width: toFile(hollow.widthMm),
        depth: toFile(hollow.depthMm),
        fromNut: toFile(hollow.fromNutMm),
      },
    },
  };
}
