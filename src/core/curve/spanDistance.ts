import type { Frame } from '../base/index.ts';
import type { Span } from './span.ts';

/**
 * Distance from a place to the nearest of spans, mm, or `withinMm` where none is as near: {@link nearestOnSpans} where only the distance
 * is wanted, without angles and without leaving anything behind.
 */
export function distanceToSpans<F extends Frame>(
  spans: readonly Span<F>[],
  x: number,
  y: number,
  withinMm = Number.POSITIVE_INFINITY,
): number {
  let least = withinMm * withinMm;
  for (let index = 0; index < spans.length; index++) {
    const span = spans[index] as Span<F>;
    const beyondX = x < span.minX ? span.minX - x : x > span.maxX ? x - span.maxX : 0;
    const beyondY = y < span.minY ? span.minY - y : y > span.maxY ? y - span.maxY : 0;
    if (beyondX * beyondX + beyondY * beyondY >= least) continue;
    const square = squareToSpan(span, x, y);
    if (square < least) least = square;
  }
  return Math.sqrt(least);
}

/** A place is beside an arc where it lies in the sector between its ends, seen from the centre; else the nearer end counts. */
function squareToSpan<F extends Frame>({ segment, arc }: Span<F>, x: number, y: number): number {
  const { start, end } = segment;
  if (!arc) {
    const [alongX, alongY] = [end.x - start.x, end.y - start.y];
    const share = ((x - start.x) * alongX + (y - start.y) * alongY) / (alongX * alongX + alongY * alongY);
    const t = share < 0 ? 0 : share > 1 ? 1 : share;
    return squareTo(start.x + t * alongX, start.y + t * alongY, x, y);
  }
  const { centre, radiusMm, sweepRad } = arc;
  const turn = sweepRad > 0 ? 1 : -1;
  const [awayX, awayY] = [x - centre.x, y - centre.y];
  const isPastStart = turn * ((start.x - centre.x) * awayY - (start.y - centre.y) * awayX) >= 0;
  const isBeforeEnd = turn * (awayX * (end.y - centre.y) - awayY * (end.x - centre.x)) >= 0;
  // A sweep over half a turn leaves out a sector that is narrower than half a turn.
  const isBeside = turn * sweepRad <= Math.PI ? isPastStart && isBeforeEnd : isPastStart || isBeforeEnd;
  if (isBeside) {
    const off = Math.sqrt(awayX * awayX + awayY * awayY) - radiusMm;
    return off * off;
  }
  return Math.min(squareTo(start.x, start.y, x, y), squareTo(end.x, end.y, x, y));
}

function squareTo(atX: number, atY: number, x: number, y: number): number {
  return (atX - x) * (atX - x) + (atY - y) * (atY - y);
}
