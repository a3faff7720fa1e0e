import { intersections } from '../../curve/index.ts';
import { flatPlace } from '../ribs/flatPlace.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import type { SetNeck } from './neckOfDesign.ts';
import type { NeckRoot } from './neckShape.ts';

/** Where a side of the mortise cuts the outer face of an upper rib. */
export interface RibCut {
  /** From the centre line. */
  readonly asideMm: number;
  /** Along the middle of the rib's thickness, in the measure of the strip laid flat. */
  readonly alongMm: number;
  /** What is cut away there of the strip that runs to the centre line. */
  readonly takenMm: number;
}

/** What the mortise of the neck takes out of the upper ribs. It is cut when they are on: their joint goes with it. */
export interface MortiseInRibs {
  readonly atTop: RibCut;
  readonly atBack: RibCut;
  /** How far both ribs may stop short of the centre line, so that their ends still go with the mortise. */
  readonly shortOfCentreMm: number;
}

/** mm of rib that must be left to be cut away on either side of the joint; common practice. */
const LEFT_TO_CUT_MM = 3;

/**
 * The cuts of a mortise in the upper ribs: at their edges toward the top and toward the back.
 *
 * The side of the mortise runs from its mouth to its floor as the plan of the neck does, and narrows from the edge of the top to the
 * back. Null where the upper rib is nowhere so far from the centre line.
 */
export function mortiseInRibs(
  { mortise, bodyHeightMm }: Pick<SetNeck, 'mortise' | 'bodyHeightMm'>,
  root: NeckRoot,
  ribs: RibLines,
): MortiseInRibs | null {
  const face = ribs.outer.sections.upperBout;
  const widening = (root.mouthWidthMm - root.topWidthMm) / 2;
  const cut = (downMm: number): RibCut | null => {
    const share = downMm / bodyHeightMm;
    const floorMm = (root.edgeWidthMm + share * (root.backWidthMm - root.edgeWidthMm)) / 2;
    const deepMm = mortise.depthAtTopMm + share * (mortise.depthAtBackMm - mortise.depthAtTopMm);
    const asideMm = floorMm + widening * (1 - ribs.outer.insetMm / deepMm);
    const end = face.vertices.at(-1);
    if (!end) return null;
    const upright = {
      closed: false,
      vertices: [end.y / 2, end.y + 1].map((y) => ({ x: asideMm, y, bulge: 0 })),
    };
    const at = intersections(face, upright).toSorted((a, b) => b.point.y - a.point.y)[0];
    if (!at) return null;
    const { alongMm } = flatPlace(face, ribs.thicknessMm, at.point);
    return { asideMm, alongMm, takenMm: ribs.upperBout.developed.lengthMm - alongMm };
  };
  const [atTop, atBack] = [cut(bodyHeightMm - ribs.heightNeckMm), cut(bodyHeightMm)];
  if (!atTop || !atBack) return null;
  const shortOfCentreMm = Math.max(0, Math.min(atTop.asideMm, atBack.asideMm) - LEFT_TO_CUT_MM);
  return { atTop, atBack, shortOfCentreMm };
}
