import type { Frame, Point } from '../base/index.ts';
import type { Chain } from './chain.ts';
import type { Segment } from './segment.ts';
import { type Span, spansOf } from './span.ts';

/** Whether a closed chain goes round a point. A point within WELD_MM of the line may fall either way. */
export function containsPoint<F extends Frame>(chain: Chain<F>, p: Point<F>): boolean {
  return spansContain(spansOf(chain), p);
}

/** As {@link containsPoint}, for the spans of a closed chain that is asked many times. */
export function spansContain<F extends Frame>(spans: readonly Span<F>[], p: Point<F>): boolean {
  let winding = 0;
  for (const { segment, minY, maxY } of spans)
    if (p.y >= minY && p.y <= maxY) winding += windingOf(segment, p);
  return winding !== 0;
}

/** What one arc or line of a closed chain adds to how often the chain goes round a point, anticlockwise positive. */
function windingOf<F extends Frame>({ start, end, bulge }: Segment<F>, p: Point<F>): number {
  const chordX = end.x - start.x;
  const chordY = end.y - start.y;
  const across = chordX * (p.y - start.y) - chordY * (p.x - start.x);
  // A point on the chord itself counts as a hair to the right and above, for the chord and for the bow alike.
  const left = across > 0 || (across === 0 && (chordY < 0 || (chordY === 0 && chordX > 0)));
  let winding = 0;
  if (start.y <= p.y && end.y > p.y) winding += left ? 1 : 0;
  else if (start.y > p.y && end.y <= p.y) winding -= left ? 0 : 1;
  if (bulge > 0 && !left && inCircle(start, end, bulge, p)) winding += 1;
  if (bulge < 0 && left && inCircle(start, end, bulge, p)) winding -= 1;
  return winding;
}

/**
 * Whether a point lies in the circle of an arc. With s and e the vectors from the point to the ends, the
 * power of the point is s·e − (s × e) (1 − b²) / 2b: no centre needed, so flat arcs stay exact.
 */
function inCircle<F extends Frame>(start: Point<F>, end: Point<F>, bulge: number, p: Point<F>): boolean {
  const startX = start.x - p.x;
  const startY = start.y - p.y;
  const endX = end.x - p.x;
  const endY = end.y - p.y;
  const cross = startX * endY - startY * endX;
  return startX * endX + startY * endY - (cross * (1 - bulge * bulge)) / (2 * bulge) < 0;
}
