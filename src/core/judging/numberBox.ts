import { cos, hypot, sin } from '../base/index.ts';
import { type ContourLine, placesOf } from '../surface/index.ts';

export type Place = readonly [number, number];

/** The room that a number takes: a box about its middle, turned with it. */
export interface NumberBox {
  readonly at: Place;
  readonly turnRad: number;
  readonly halfWidthMm: number;
  readonly halfHeightMm: number;
}

/**
 * The part of a stretch that lies in the box of a number, as shares of the stretch; null where it passes by.
 * Method: clipping against the two pairs of sides (Liang and Barsky).
 */
export function inBox(
  { at, turnRad, halfWidthMm, halfHeightMm }: NumberBox,
  from: Place,
  to: Place,
): readonly [number, number] | null {
  const reach = halfWidthMm + halfHeightMm;
  if (Math.min(from[0], to[0]) > at[0] + reach || Math.max(from[0], to[0]) < at[0] - reach) return null;
  if (Math.min(from[1], to[1]) > at[1] + reach || Math.max(from[1], to[1]) < at[1] - reach) return null;
  const [c, s] = [cos(turnRad), sin(turnRad)];
  const turned = ([x, y]: Place): Place => [
    c * (x - at[0]) + s * (y - at[1]),
    -s * (x - at[0]) + c * (y - at[1]),
  ];
  const [a, b] = [turned(from), turned(to)];
  let [enter, leave] = [0, 1];
  for (const [start, step, half] of [
    [a[0], b[0] - a[0], halfWidthMm],
    [a[1], b[1] - a[1], halfHeightMm],
  ] as const) {
    if (step === 0) {
      if (Math.abs(start) > half) return null;
      continue;
    }
    const [first, second] = [(-half - start) / step, (half - start) / step];
    enter = Math.max(enter, Math.min(first, second));
    leave = Math.min(leave, Math.max(first, second));
  }
  return enter <= leave ? [enter, leave] : null;
}

/** The pieces of a line outside the boxes of numbers. */
export function outsideBoxes(line: ContourLine, boxes: readonly NumberBox[]): readonly ContourLine[] {
  const own = placesOf(line);
  const places = line.closed && own[0] !== undefined ? [...own, own[0]] : own;
  const pieces: Place[][] = [[]];
  let isCut = false;
  for (const [index, to] of places.entries()) {
    const from = places[index - 1];
    if (from === undefined) {
      pieces[0]?.push(to);
      continue;
    }
    const hits = boxes
      .flatMap((box) => {
        const hit = inBox(box, from, to);
        return hit === null ? [] : [hit];
      })
      .toSorted((a, b) => a[0] - b[0]);
    for (const [enter, leave] of hits) {
      isCut = true;
      pieces.at(-1)?.push(between(from, to, enter));
      pieces.push([between(from, to, leave)]);
    }
    pieces.at(-1)?.push(to);
  }
  if (!isCut) return [line];
  // A closed line was begun somewhere on its way: its last piece goes on into its first.
  const joined = line.closed
    ? [[...(pieces.at(-1) ?? []), ...(pieces[0] ?? []).slice(1)], ...pieces.slice(1, -1)]
    : pieces;
  return joined
    .filter((piece) => lengthOf(piece) > 0)
    .map((piece) => ({ levelMm: line.levelMm, closed: false, xyMm: Float64Array.from(piece.flat()) }));
}

function between(from: Place, to: Place, share: number): Place {
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function lengthOf(piece: readonly Place[]): number {
  return piece.slice(1).reduce((sum, [x, y], index) => {
    const [beforeX, beforeY] = piece[index] as Place;
    return sum + hypot(x - beforeX, y - beforeY);
  }, 0);
}
