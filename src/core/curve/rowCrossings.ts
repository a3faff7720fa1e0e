import { type Frame, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { type Arc, arcOf, type Segment, segments } from './segment.ts';

/** A segment made ready to be crossed by many rows, lines of one y each. */
export interface RowSide<F extends Frame> extends Segment<F> {
  readonly arc: Arc<F> | null;
  readonly minY: number;
  readonly maxY: number;
}

/** The segments of a chain, made ready once for many rows. */
export function rowSides<F extends Frame>(chain: Chain<F>): readonly RowSide<F>[] {
  return segments(chain).map((segment) => {
    const { start, end, bulge } = segment;
    const arc = arcOf(segment);
    const ys = [start.y, end.y, ...(arc ? turnsOf(segment, arc) : [])];
    return { start, end, bulge, arc, minY: Math.min(...ys), maxY: Math.max(...ys) };
  });
}

/** Heights of the ends of all sides, in order. */
export function rowEnds<F extends Frame>(sides: readonly RowSide<F>[]): Float64Array {
  return Float64Array.from(sides, ({ start }) => start.y).sort();
}

/** A row that meets no end, where two sides would be passed at once: a hair higher where it meets one. */
export function clearRow(ends: Float64Array, y: number): number {
  let [low, high] = [0, ends.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ends[middle] as number) <= y - WELD_MM) low = middle + 1;
    else high = middle;
  }
  const next = ends[low];
  return next !== undefined && next < y + WELD_MM ? y + 2 * WELD_MM : y;
}

/**
 * Every x at which sides pass a row, in order: of closed chains they go in and out by turns. Promises a row that meets no end
 * of a side, as {@link clearRow} gives it; there both sides or neither may count.
 */
export function rowCrossings<F extends Frame>(sides: readonly RowSide<F>[], y: number): readonly number[] {
  const found: number[] = [];
  for (const side of sides) if (side.minY <= y && side.maxY >= y) addCrossings(side, y, found);
  return found.sort((a, b) => a - b);
}

/** Heights at which an arc turns back up or down. */
export function turnsOf<F extends Frame>(side: Segment<F>, { centre, radiusMm }: Arc<F>): readonly number[] {
  return [centre.y - radiusMm, centre.y + radiusMm].filter((y) => isBeyondChord(side, centre.x, y));
}

function addCrossings<F extends Frame>(side: RowSide<F>, y: number, found: number[]): void {
  const { start, end, arc } = side;
  if (!arc) {
    if (start.y > y !== end.y > y)
      found.push(start.x + ((end.x - start.x) * (y - start.y)) / (end.y - start.y));
    return;
  }
  const { centre, radiusMm } = arc;
  const reach = radiusMm ** 2 - (y - centre.y) ** 2;
  if (!(reach > 0)) return;
  const across = Math.sqrt(reach);
  for (const x of [centre.x - across, centre.x + across]) if (isBeyondChord(side, x, y)) found.push(x);
}

/** Whether a place of an arc's circle is on the arc: to the right of its chord where it turns left. */
function isBeyondChord<F extends Frame>({ start, end, bulge }: Segment<F>, x: number, y: number): boolean {
  const left = (end.x - start.x) * (y - start.y) - (end.y - start.y) * (x - start.x);
  return bulge > 0 ? left <= 0 : left >= 0;
}
