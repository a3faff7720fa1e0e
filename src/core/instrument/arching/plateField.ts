import { WELD_MM } from '../../base/index.ts';
import {
  boundsOf,
  clearRow,
  closeChain,
  joinChains,
  rowCrossings,
  rowEnds,
  rowSides,
} from '../../curve/index.ts';
import { type HeightField, loftAcross, loftRow, netRow, netRowHeight } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { EdgeState } from './edgeShape.ts';
import { fadedMiss, fadeReach, heightOutside } from './plateHeight.ts';
import { footPlace, leftOfPlace } from './smoothLine.ts';

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
  const sides = rowSides(treble);
  const ends = rowEnds(sides);
  const zMm = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const y = row * stepMm;
    // The lowest and the highest place touch their rows; no plate lies on either side of them.
    const touches = y < box.min.y + WELD_MM || y > box.max.y - WELD_MM;
    const crossings = touches ? [] : rowCrossings(sides, clearRow(ends, y));
    const heights = rowHeights(arch, state, crossings, y, stepMm, half + 1);
    const middle = row * columns + half;
    for (let column = 0; column <= half; column++) {
      zMm[middle + column] = heights[column] as number;
      zMm[middle - column] = heights[column] as number;
    }
  }
  return { fromXMm: -half * stepMm, fromYMm: 0, stepMm, columns, rows, zMm };
}

/** Heights along a row from the centre line outwards; the edge's crossings tell where the plate is. */
function rowHeights(
  arch: PlateArch,
  state: EdgeState,
  crossings: readonly number[],
  yMm: number,
  stepMm: number,
  count: number,
): Float64Array {
  const heights = new Float64Array(count).fill(Number.NaN);
  if (crossings.length === 0) return heights;
  const { line } = arch.channel;
  // Nothing is rolled on beyond the edge.
  const reach = Math.min(count, Math.ceil((crossings.at(-1) as number) / stepMm));
  const body = new Float64Array(reach);
  loftAcross(loftRow(arch.loft, yMm), stepMm, body);
  const correction = netRow(arch.correction, yMm);
  const lowestMm = state === 'arched' ? arch.numbers.edgeHeightMm : Number.NEGATIVE_INFINITY;
  const fadeMm = fadeReach(arch);
  let deepToMm = Number.NEGATIVE_INFINITY;
  let passed = 0;
  for (let column = 0; column < reach; column++) {
    const x = column * stepMm;
    while (passed < crossings.length && (crossings[passed] as number) <= x) passed++;
    if (passed % 2 === 0) continue;
    if (x < deepToMm) {
      heights[column] = Math.max(
        lowestMm,
        arch.channelZMm + (body[column] as number) + netRowHeight(arch.correction, correction, x),
      );
      continue;
    }
    const at = footPlace(line, x, yMm);
    const distanceMm = leftOfPlace(line, at, x, yMm);
    if (distanceMm >= fadeMm) deepToMm = x + distanceMm - fadeMm;
    if (distanceMm < 0) {
      heights[column] = heightOutside(arch, x, yMm, -distanceMm, state);
      continue;
    }
    const insideMm = (body[column] as number) + netRowHeight(arch.correction, correction, x);
    const fadedMm = distanceMm < fadeMm ? fadedMiss(arch, { at, distanceMm }).fadedMm : 0;
    heights[column] = Math.max(lowestMm, arch.channelZMm + insideMm - fadedMm);
  }
  return heights;
}
