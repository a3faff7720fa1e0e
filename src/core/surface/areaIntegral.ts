import { type Frame, WELD_MM } from '../base/index.ts';
import { type Arc, arcOf, type Chain, headingOn, type Segment, segments, wrapAngle } from '../curve/index.ts';

/** Gauss's three places in a panel from −1 to 1, and their weights. */
const PLACES = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)] as const;
const WEIGHTS = [5 / 9, 8 / 9, 5 / 9] as const;

/**
 * Integrals of several quantities at once over the inside of closed chains (holes run the other way): `add` is given each
 * place and the area (mm²) that it stands for, and sums what it wants.
 *
 * Panels end at the `cuts`, lines at which what is summed bends or breaks. Panels no longer than `panelMm`, three places each
 * way, cut exactly at the chains: smooth quantities come out to the sixth order in the panel, the area itself to better than a
 * millionth at panels of a fiftieth of the width. Nothing to the left of `fromX` is asked for, the middle of what is even.
 */
export function integrateInside<F extends Frame>(
  chains: readonly Chain<F>[],
  panelMm: number,
  add: (x: number, y: number, areaMm2: number) => void,
  cuts: readonly Chain<F>[] = [],
  fromX = Number.NEGATIVE_INFINITY,
): void {
  const sides = chains.flatMap((chain) => segments(chain)).map(sideOf);
  const cutSides = cuts
    .flatMap((chain) => segments(chain))
    .filter(({ start, end, bulge }) => bulge !== 0 || start.x > fromX || end.x > fromX)
    .map(sideOf);
  const ends = Float64Array.from([...sides, ...cutSides], ({ start }) => start.y).sort();
  const levels = [...new Set([...chains, ...cuts].flatMap(levelsOf))].sort((a, b) => a - b);
  levels.slice(1).forEach((top, index) => {
    const bottom = levels[index] as number;
    const between = (side: Side<F>): boolean => side.minY <= top && side.maxY >= bottom;
    const [sidesHere, cutsHere] = [sides.filter(between), cutSides.filter(between)];
    // Toward a level where an arc turns, widths close like a root: slow steps there make them smooth again.
    forPanels(0, 1, panelMm / (top - bottom), (t, share) => {
      const y = clearOf(ends, bottom + (top - bottom) * t * t * (3 - 2 * t));
      const rowMm = (top - bottom) * 6 * t * (1 - t) * share;
      const crossings = crossingsAt(sidesHere, y);
      const breaks = crossingsAt(cutsHere, y);
      for (let at = 0; at + 1 < crossings.length; at += 2) {
        const [from, to] = [Math.max(fromX, crossings[at] as number), crossings[at + 1] as number];
        if (to <= from) continue;
        let start = from;
        for (const stop of [...breaks.filter((x) => x > from && x < to), to]) {
          forPanels(start, stop, panelMm, (x, columnMm) => add(x, y, rowMm * columnMm));
          start = stop;
        }
      }
    });
  });
}

/** A segment made ready to be crossed by many rows. */
interface Side<F extends Frame> extends Segment<F> {
  readonly arc: Arc<F> | null;
  readonly minY: number;
  readonly maxY: number;
}

function sideOf<F extends Frame>(segment: Segment<F>): Side<F> {
  const { start, end, bulge } = segment;
  const arc = arcOf(segment);
  const ys = [start.y, end.y, ...(arc ? turnsOf(segment, arc) : [])];
  return { start, end, bulge, arc, minY: Math.min(...ys), maxY: Math.max(...ys) };
}

function crossingsAt<F extends Frame>(sides: readonly Side<F>[], y: number): readonly number[] {
  const found: number[] = [];
  for (const side of sides) if (side.minY <= y && side.maxY >= y) addCrossings(side, y, found);
  return found.sort((a, b) => a - b);
}

/** A height off the ends of all sides, where two of them would be met at once: a hair higher where it meets one. */
function clearOf(sortedEnds: Float64Array, y: number): number {
  let [low, high] = [0, sortedEnds.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sortedEnds[middle] as number) <= y - WELD_MM) low = middle + 1;
    else high = middle;
  }
  const next = sortedEnds[low];
  return next !== undefined && next < y + WELD_MM ? y + 2 * WELD_MM : y;
}

/** No unit. Sharper turns of a chain than this are corners, where widths change their course. */
const CORNER_RAD = 0.1;

/** Heights between which widths run smoothly: where an arc turns back, and where the chain has a corner. */
function levelsOf<F extends Frame>(chain: Chain<F>): readonly number[] {
  const sides = segments(chain);
  return sides.flatMap((side, index) => {
    const before = sides.at(index - 1) ?? side;
    const turn = Math.abs(wrapAngle(headingOn(side, 0) - headingOn(before, 1)));
    const arc = arcOf(side);
    return [...(arc ? turnsOf(side, arc) : []), ...(turn > CORNER_RAD ? [side.start.y] : [])];
  });
}

/** Heights at which an arc turns back up or down. */
function turnsOf<F extends Frame>(side: Segment<F>, { centre, radiusMm }: Arc<F>): readonly number[] {
  return [centre.y - radiusMm, centre.y + radiusMm].filter((y) => isBeyondChord(side, centre.x, y));
}

function forPanels(
  from: number,
  to: number,
  panelMm: number,
  at: (place: number, weightMm: number) => void,
): void {
  const count = Math.max(1, Math.ceil((to - from) / panelMm));
  const half = (to - from) / (2 * count);
  for (let panel = 0; panel < count; panel++)
    for (let index = 0; index < PLACES.length; index++)
      at(from + half * (2 * panel + 1 + (PLACES[index] as number)), half * (WEIGHTS[index] as number));
}

/** Where a line or arc passes a height; levels lie between its ends or its extremes, never on them. */
function addCrossings<F extends Frame>(side: Side<F>, y: number, found: number[]): void {
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
