import { point, WRITE_MM } from '../../base/index.ts';
import { boundsOf, type Chain, closeChain, containsPoint, joinChains } from '../../curve/index.ts';
import { type HeightField, loftHeight, loftRow, netRow, netRowHeight } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { EdgeState } from './edgeShape.ts';
import { fadeReach, heightAtFoot } from './plateHeight.ts';
import { footOn } from './smoothLine.ts';

/**
 * Heights of a plate's outside over a grid that is even about the centre line and starts at the lower end; NaN off the
 * plate. Body frame: the plates are symmetric, so that the same grid serves the back seen from outside. Those of
 * {@link plateHeight} to better than a millionth of a thousandth of a millimetre.
 *
 * Method: row by row. Who stands d inside the channel need not ask for it again before d is walked.
 */
export function plateField(arch: PlateArch, state: EdgeState, stepMm: number): HeightField {
  const treble = closeChain(joinChains(...arch.edge));
  const box = boundsOf(treble);
  const half = Math.ceil(box.max.x / stepMm);
  const columns = 2 * half + 1;
  const rows = Math.ceil(box.max.y / stepMm) + 1;
  const zMm = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const heights = rowHeights(arch, treble, state, row * stepMm, stepMm, half + 1);
    const middle = row * columns + half;
    heights.forEach((height, column) => {
      zMm[middle + column] = height;
      zMm[middle - column] = height;
    });
  }
  return { fromXMm: -half * stepMm, fromYMm: 0, stepMm, columns, rows, zMm };
}

/** Heights along a row from the centre line outwards. */
function rowHeights(
  arch: PlateArch,
  treble: Chain<'body'>,
  state: EdgeState,
  yMm: number,
  stepMm: number,
  count: number,
): Float64Array {
  const across = loftRow(arch.loft, yMm);
  const correction = netRow(arch.correction, yMm);
  const lowestMm = state === 'arched' ? arch.numbers.edgeHeightMm : Number.NEGATIVE_INFINITY;
  const fadeMm = fadeReach(arch);
  let deepToMm = Number.NEGATIVE_INFINITY;
  return Float64Array.from({ length: count }, (_, column) => {
    const x = column * stepMm;
    if (x >= deepToMm) {
      const foot = footOn(arch.channel.line, x, yMm);
      if (foot.distanceMm < 0 && !isOnPlate(treble, x, yMm)) return Number.NaN;
      if (foot.distanceMm < fadeMm) return heightAtFoot(arch, x, yMm, foot, state);
      deepToMm = x + foot.distanceMm - fadeMm;
    }
    const insideMm = loftHeight(across, x) + netRowHeight(arch.correction, correction, x);
    return Math.max(lowestMm, arch.channelZMm + insideMm);
  });
}

/** The centre line closes the half: a place on it counts as a hair beside it. */
function isOnPlate(treble: Chain<'body'>, x: number, yMm: number): boolean {
  return containsPoint(treble, point<'body'>(Math.max(x, WRITE_MM), yMm));
}
