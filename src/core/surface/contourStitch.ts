import type { Crossings } from './contourCells.ts';
import type { ContourLine } from './contourLine.ts';

/** Lines read off from crossings that point to the next: open ones from their first crossing, closed ones round. */
export function stitchLines(crossings: Crossings, levelsMm: readonly number[]): readonly ContourLine[] {
  const { count, next, led, level } = crossings;
  const lines = levelsMm.map((): ContourLine[] => []);
  const taken = new Uint8Array(count);
  const read = (first: number, closed: boolean): void => {
    const index = level[first] as number;
    const xyMm = placesFrom(crossings, first, closed, taken);
    if (xyMm.length >= (closed ? 6 : 4))
      lines[index]?.push({ levelMm: levelsMm[index] as number, closed, xyMm });
  };
  for (let first = 0; first < count; first++)
    if (led[first] === 0 && (next[first] as number) >= 0) read(first, false);
  for (let first = 0; first < count; first++)
    if (taken[first] === 0 && (next[first] as number) >= 0) read(first, true);
  return lines.flat();
}

/** Places of a line from its first crossing on; where a height equals the level two crossings are one place. */
function placesFrom(
  { xMm, yMm, next }: Crossings,
  first: number,
  closed: boolean,
  taken: Uint8Array,
): Float64Array {
  let length = 0;
  for (let at = first; at >= 0 && taken[at] === 0; at = next[at] as number) {
    taken[at] = 1;
    length++;
  }
  const xy = new Float64Array(2 * length);
  let size = 0;
  let at = first;
  for (let step = 0; step < length; step++, at = next[at] as number) {
    const x = xMm[at] as number;
    const y = yMm[at] as number;
    if (size > 0 && x === xy[size - 2] && y === xy[size - 1]) continue;
    xy[size++] = x;
    xy[size++] = y;
  }
  if (closed && size > 2 && xy[0] === xy[size - 2] && xy[1] === xy[size - 1]) size -= 2;
  return size === xy.length ? xy : xy.slice(0, size);
}
