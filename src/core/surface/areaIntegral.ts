import type { Frame } from '../base/index.ts';
import {
  arcOf,
  type Chain,
  clearRow,
  headingOn,
  type RowSide,
  rowCrossings,
  rowEnds,
  rowSides,
  segments,
  turnsOf,
  wrapAngle,
} from '../curve/index.ts';

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
  const sides = chains.flatMap((chain) => rowSides(chain));
  const cutSides = cuts
    .flatMap((chain) => rowSides(chain))
    .filter(({ start, end, bulge }) => bulge !== 0 || start.x > fromX || end.x > fromX);
  const ends = rowEnds([...sides, ...cutSides]);
  const levels = [...new Set([...chains, ...cuts].flatMap(levelsOf))].sort((a, b) => a - b);
  levels.slice(1).forEach((top, index) => {
    const bottom = levels[index] as number;
    const between = (side: RowSide<F>): boolean => side.minY <= top && side.maxY >= bottom;
    const [sidesHere, cutsHere] = [sides.filter(between), cutSides.filter(between)];
    // Toward a level where an arc turns, widths close like a root: slow steps there make them smooth again.
    forPanels(0, 1, panelMm / (top - bottom), (t, share) => {
      const y = clearRow(ends, bottom + (top - bottom) * t * t * (3 - 2 * t));
      const rowMm = (top - bottom) * 6 * t * (1 - t) * share;
      const crossings = rowCrossings(sidesHere, y);
      const breaks = rowCrossings(cutsHere, y);
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
