import { type Frame, WELD_MM } from '../base/index.ts';
import { arcOf, type Chain, headingOn, type Segment, segments, wrapAngle } from '../curve/index.ts';

/** Gauss's three places in a panel from −1 to 1, and their weights. */
const PLACES = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)] as const;
const WEIGHTS = [5 / 9, 8 / 9, 5 / 9] as const;

/**
 * Integrals of several quantities at once over the inside of closed chains (holes run the other way): `add` is given each
 * place and the area (mm²) that it stands for, and sums what it wants.
 *
 * Panels end at the `cuts`, lines at which what is summed bends or breaks. Panels no longer than `panelMm`, three places each way, cut exactly at the chains: smooth quantities come out to the
 * sixth order in the panel, the area itself to better than a millionth at panels of a fiftieth of the width.
 */
export function integrateInside<F extends Frame>(
  chains: readonly Chain<F>[],
  panelMm: number,
  add: (x: number, y: number, areaMm2: number) => void,
  cuts: readonly Chain<F>[] = [],
): void {
  const cutSides = cuts.flatMap((chain) => segments(chain));
  const sides = chains.flatMap((chain) => segments(chain));
  const ends = [...sides, ...cutSides].map(({ start }) => start.y);
  const levels = [...new Set([...chains, ...cuts].flatMap(levelsOf))].sort((a, b) => a - b);
  levels.slice(1).forEach((top, index) => {
    const bottom = levels[index] as number;
    // Toward a level where an arc turns, widths close like a root: slow steps there make them smooth again.
    forPanels(0, 1, panelMm / (top - bottom), (t, share) => {
      const y = clearOf(ends, bottom + (top - bottom) * t * t * (3 - 2 * t));
      const rowMm = (top - bottom) * 6 * t * (1 - t) * share;
      const crossings = sides.flatMap((side) => crossingsOf(side, y)).sort((a, b) => a - b);
      const breaks = cutSides.flatMap((side) => crossingsOf(side, y)).sort((a, b) => a - b);
      for (let at = 0; at + 1 < crossings.length; at += 2) {
        const [from, to] = [crossings[at] as number, crossings[at + 1] as number];
        const stops = [from, ...breaks.filter((x) => x > from && x < to), to];
        stops.slice(1).forEach((stop, index) => {
          forPanels(stops[index] as number, stop, panelMm, (x, columnMm) => add(x, y, rowMm * columnMm));
        });
      }
    });
  });
}

/** A height off the ends of all sides, where two of them would be met at once: a hair higher where it meets one. */
function clearOf(ends: readonly number[], y: number): number {
  return ends.some((end) => Math.abs(end - y) < WELD_MM) ? y + 2 * WELD_MM : y;
}

/** No unit. Sharper turns of a chain than this are corners, where widths change their course. */
const CORNER_RAD = 0.1;

/** Heights between which widths run smoothly: where an arc turns back, and where the chain has a corner. */
function levelsOf<F extends Frame>(chain: Chain<F>): readonly number[] {
  const sides = segments(chain);
  return sides.flatMap((side, index) => {
    const before = sides.at(index - 1) ?? side;
    const turn = Math.abs(wrapAngle(headingOn(side, 0) - headingOn(before, 1)));
    return [...turnsOf(side), ...(turn > CORNER_RAD ? [side.start.y] : [])];
  });
}

/** Heights at which an arc turns back up or down. */
function turnsOf<F extends Frame>(side: Segment<F>): readonly number[] {
  const arc = arcOf(side);
  if (!arc) return [];
  const { centre, radiusMm } = arc;
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
    PLACES.forEach((place, index) => {
      at(from + half * (2 * panel + 1 + place), half * (WEIGHTS[index] as number));
    });
}

/** Where a line or arc passes a height; levels lie between its ends or its extremes, never on them. */
function crossingsOf<F extends Frame>(side: Segment<F>, y: number): readonly number[] {
  const { start, end } = side;
  const arc = arcOf(side);
  if (!arc) {
    if (start.y > y === end.y > y) return [];
    return [start.x + ((end.x - start.x) * (y - start.y)) / (end.y - start.y)];
  }
  const { centre, radiusMm } = arc;
  const reach = radiusMm ** 2 - (y - centre.y) ** 2;
  if (!(reach > 0)) return [];
  const across = Math.sqrt(reach);
  return [centre.x - across, centre.x + across].filter((x) => isBeyondChord(side, x, y));
}

/** Whether a place of an arc's circle is on the arc: to the right of its chord where it turns left. */
function isBeyondChord<F extends Frame>({ start, end, bulge }: Segment<F>, x: number, y: number): boolean {
  const left = (end.x - start.x) * (y - start.y) - (end.y - start.y) * (x - start.x);
  return bulge > 0 ? left <= 0 : left >= 0;
}
