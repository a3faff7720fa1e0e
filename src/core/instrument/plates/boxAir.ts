import { type Chain, lengthOf, momentsOf } from '../../curve/index.ts';

/** The walls of a closed body between its plates. */
export interface BoxWalls {
  /** Inner face of the ribs with the recesses of the blocks; closed. */
  readonly innerFace: Chain<'body'>;
  readonly ribHeightTailMm: number;
  readonly ribHeightNeckMm: number;
  readonly liningThicknessMm: number;
  readonly liningWidthMm: number;
}

/** Share of its full section that a lining keeps when it is bevelled toward the ribs. */
const LINING_SHARE = 0.6;

/**
 * Air in the closed body, mm³: the hollows of both plates and what lies between them over the ribs' height, which tapers
 * evenly from tail to neck; blocks and linings taken off, bar, post and what the neck's root takes not.
 */
export function boxAir(hollowsMm3: number, bodyLengthMm: number, walls: BoxWalls): number {
  const { innerFace, ribHeightTailMm: tail, ribHeightNeckMm: neck } = walls;
  const { areaMm2, centroid } = momentsOf(innerFace);
  const betweenMm3 = areaMm2 * (tail + ((neck - tail) * centroid.y) / bodyLengthMm);
  const liningMm2 = LINING_SHARE * walls.liningThicknessMm * walls.liningWidthMm;
  return hollowsMm3 + betweenMm3 - 2 * liningMm2 * lengthOf(innerFace);
}
