import { Bug, type Frame, hypot, type Point, WELD_MM } from '../base/index.ts';
import { blockBoxes, tableOfSegments } from './arcTable.ts';
import type { Chain } from './chain.ts';
import { areaOf } from './measure.ts';
import { nearerThan } from './nearerThan.ts';
import { type Kite, rawOffset } from './offsetRaw.ts';
import { offsetRuns, type Run } from './offsetRuns.ts';
import { reverseChain } from './placeChain.ts';
import { middleOf, segments } from './segment.ts';
import { stitchLoops } from './stitchLoops.ts';

/** How an offset passes a corner that it opens. */
export interface OffsetOptions {
  /** `mitre` runs both sides straight on until they meet; `round` keeps the distance all the way round. */
  readonly join: 'mitre' | 'round';
  /** A mitre that would reach further than this many distances from its corner is rounded; 4 when left out. */
  readonly mitreLimit?: number;
}

/**
 * The lines at a distance outside (positive) or inside (negative) a simple closed chain: closed chains of
 * exact arcs and lines, largest first, each simple and turning as the part of the source that it follows
 * (so a hollow that an outward offset closes off comes back as a loop of opposite turn). None when nothing
 * lies so deep.
 *
 * Every point lies at the distance from the source to within WELD_MM, mitres apart, which lie further out.
 * Method: each arc and line moved, corners that open joined, all cut where they meet; of the runs between
 * cuts those stay that no part of the source comes nearer to than the distance, and these close by themselves.
 */
export function offsetChain<F extends Frame>(
  chain: Chain<F>,
  distanceMm: number,
  options: OffsetOptions,
): readonly Chain<F>[] {
  if (!chain.closed) throw new Bug('only a closed chain has an offset; an open one has a parallel');
  if (!Number.isFinite(distanceMm)) throw new Bug(`an offset by ${distanceMm} mm`);
  if (distanceMm === 0) return [chain];
  const clockwise = areaOf(chain) < 0;
  const source = tableOfSegments(segments(clockwise ? reverseChain(chain) : chain));
  const { pieces, mitres } = rawOffset<F>(
    source,
    distanceMm,
    options.join === 'mitre',
    options.mitreLimit ?? 4,
  );
  const { runs, closed } = offsetRuns<F>(pieces);
  const blocks = blockBoxes(source);
  const nearMm = Math.abs(distanceMm) - WELD_MM / 2;
  const kept = runs.filter((run) => {
    const { x, y } = middleOfLongest(run);
    return !nearerThan(source, blocks, x, y, nearMm) && !mitres.some((kite) => isInside(kite, x, y));
  });
  const loops = stitchLoops(kept, closed);
  return clockwise ? loops.map(reverseChain) : loops;
}

/** The point of a run where rounding weighs least: what holds there holds for the whole run. */
function middleOfLongest<F extends Frame>(run: Run<F>): Point<F> {
  let longest = run[0];
  let square = 0;
  for (const piece of run) {
    const chordX = piece.end.x - piece.start.x;
    const chordY = piece.end.y - piece.start.y;
    if (chordX * chordX + chordY * chordY <= square) continue;
    square = chordX * chordX + chordY * chordY;
    longest = piece;
  }
  return middleOf(longest);
}

/** Whether a point lies inside a kite by more than WELD_MM; on its edge does not count. */
function isInside<F extends Frame>(kite: Kite<F>, x: number, y: number): boolean {
  let turn = 0;
  for (const { start, end } of kite) {
    const alongX = end.x - start.x;
    const alongY = end.y - start.y;
    const off = (alongX * (y - start.y) - alongY * (x - start.x)) / hypot(alongX, alongY);
    if (Math.abs(off) <= WELD_MM || (turn !== 0 && Math.sign(off) !== turn)) return false;
    turn = Math.sign(off);
  }
  return true;
}
