import { Bug, type Frame, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { areaOf } from './measure.ts';
import { nearestOnSpans } from './nearestOn.ts';
import { rawOffset } from './offsetRaw.ts';
import { reverseChain } from './placeChain.ts';
import { pointOn, type Segment, segments } from './segment.ts';
import { type Span, spanOf } from './span.ts';
import { splitAtCrossings } from './splitAtCrossings.ts';
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
 * Method: each arc and line moved, corners that open joined, all cut where they meet, and those pieces kept
 * that no part of the source comes nearer to than the distance; these close by themselves.
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
  const source = segments(clockwise ? reverseChain(chain) : chain);
  const { pieces, mitres } = rawOffset(source, distanceMm, options.join === 'mitre', options.mitreLimit ?? 4);
  const sourceSpans = source.map(spanOf);
  const kept = splitAtCrossings(pieces.map(spanOf)).filter((piece) =>
    isOutermost(piece, sourceSpans, Math.abs(distanceMm), mitres),
  );
  const loops = stitchLoops(kept);
  return clockwise ? loops.map(reverseChain) : loops;
}

/** The corners of a mitred corner's kite: the source's corner, the end of one side, the mitre, the start of the next. */
export type Kite<F extends Frame> = readonly Segment<F>[];

function isOutermost<F extends Frame>(
  piece: Segment<F>,
  source: readonly Span<F>[],
  distanceMm: number,
  mitres: readonly Kite<F>[],
): boolean {
  const middle = pointOn(piece, 0.5);
  if (nearestOnSpans(source, middle).distanceMm < distanceMm - WELD_MM / 2) return false;
  return !mitres.some((kite) => isInside(kite, middle.x, middle.y));
}

/** Whether a point lies inside a kite by more than WELD_MM; on its edge does not count. */
function isInside<F extends Frame>(kite: Kite<F>, x: number, y: number): boolean {
  let turn = 0;
  for (const { start, end } of kite) {
    const alongX = end.x - start.x;
    const alongY = end.y - start.y;
    const off = (alongX * (y - start.y) - alongY * (x - start.x)) / Math.hypot(alongX, alongY);
    if (Math.abs(off) <= WELD_MM || (turn !== 0 && Math.sign(off) !== turn)) return false;
    turn = Math.sign(off);
  }
  return true;
}
