import type { Instrument, RibLines } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/** How the ribs meet; seams of the treble side, from the tip of the block outward. */
export function ribJointRecord({ plan: { ribs } }: Instrument) {
  const degrees = (rad: number): number => toFile((rad * 180) / Math.PI);
  const corner = ({ which, seam, blockShowsMm, openingRad, bevelRad }: RibLines['joints']['lower']) => ({
    seam: seam ? chainToDocument(seam) : null,
    blockShows: toFile(blockShowsMm),
    overhangBeside: toFile(ribs.besideCornerMm[which]),
    openingDeg: degrees(openingRad),
    bevelDeg: { bout: degrees(bevelRad.bout), waist: degrees(bevelRad.waist) },
  });
  return {
    joint: ribs.choice.joint,
    corners: ribs.choice.corners,
    lowerRib: ribs.choice.lowerRib,
    upperRib: ribs.choice.upperRib,
    count: ribs.count,
    lower: corner(ribs.joints.lower),
    upper: corner(ribs.joints.upper),
  };
}

/** The linings of the treble side, each made four times; and the mortises in the treble corner blocks, at back and top. */
export function liningRecords({ plan: { linings } }: Instrument) {
  const { thicknessMm, widthMm, stripWidthMm, choice } = linings;
  return {
    kind: choice.linings,
    letIn: choice.liningsLetIn,
    thickness: thicknessMm,
    height: widthMm,
    stripWidth: toFile(stripWidthMm),
    pieces: [linings.lower, linings.waist, linings.upper].map(
      ({ name, lengthMm, cutMm, from, to, plan }) => ({
        name,
        count: 4,
        length: toFile(lengthMm),
        cut: toFile(cutMm),
        ends: { from: endRecord(from), to: endRecord(to) },
        plan: chainToDocument(plan),
      }),
    ),
    mortises: linings.mortises.map(({ block, side, reachMm, widthMm: width, depthMm, plan }) => ({
      block,
      side,
      reach: toFile(reachMm),
      width,
      depth: depthMm,
      plan: chainToDocument(plan),
    })),
  };
}

/** Where a cut leaves the outer and the inner face, along the strip laid flat. */
function endRecord({ outerMm, innerMm }: RibLines['cBout']['piece']['from']) {
  return { outer: toFile(outerMm), inner: toFile(innerMm) };
}

/** The cauls in their own frame: face below, back level above. */
export function caulRecords({ plan: { cauls } }: Instrument) {
  return {
    height: cauls.heightMm,
    facing: cauls.facingMm,
    pieces: cauls.cauls.map(({ name, count, piece, clamp }) => ({
      name,
      count,
      outline: chainToDocument(piece.outline),
      ...(clamp && { clampOpening: toFile(clamp.openingMm) }),
    })),
  };
}

/** Six ribs, lengths laid flat with what they are bent and trimmed to. */
export function ribRecords({ plan }: Instrument) {
  const { heightNeckMm: neck, heightTailMm: tail } = plan.ribs;
  return [plan.ribs.lowerBout, plan.ribs.cBout, plan.ribs.upperBout].flatMap((rib, i) =>
    (['bass', 'treble'] as const).map((side) => ({
      name: `${['lower', 'waist', 'upper'][i]} rib, ${side} side`,
      length: toFile(rib.lengthMm),
      developed: toFile(rib.developed.lengthMm),
      // Along the middle of the thickness: from, to, and the radius inside the bend; null where it is straight.
      bends: rib.developed.stretches.map(({ fromMm, toMm, bends, insideRadiusMm }) => ({
        from: toFile(fromMm),
        to: toFile(toMm),
        bends,
        insideRadius: insideRadiusMm === null ? null : toFile(insideRadiusMm),
      })),
      // The edge that is not level with the other when the rib lies flat: along it, and height.
      edge: rib.developed.edge.map(({ x, y }) => [toFile(x), toFile(y)]),
      // Where the trimmed ends leave both faces, along the middle of the thickness.
      ends: { from: endRecord(rib.piece.from), to: endRecord(rib.piece.to) },
      heightNeck: neck,
      heightTail: tail,
    })),
  );
}
