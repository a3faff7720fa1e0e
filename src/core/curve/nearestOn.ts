import { Bug, cos, distanceBetween, type Frame, type Point, sin } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { headingOn, pointOn } from './segment.ts';
import { footFraction, type Span, spansOf, squareToBox } from './span.ts';

/** The place of a chain that lies nearest to a point. */
export interface Nearest<F extends Frame> {
  readonly point: Point<F>;
  readonly distanceMm: number;
  readonly segment: number;
  readonly fraction: number;
  /** 1 when the given point lies to the left of the travel, −1 to the right, 0 on the chain. */
  readonly side: -1 | 0 | 1;
}

/** The nearest place on a chain; of places equally near the first along the travel. */
export function nearestOn<F extends Frame>(chain: Chain<F>, p: Point<F>): Nearest<F> {
  const spans = spansOf(chain);
  const foot = nearestOnSpans(spans, p);
  const span = spans[foot.segment];
  if (!span) throw new Bug('a chain without a segment has no nearest place');
  const { segment, fraction } = foot;
  let heading = headingOn(span.segment, fraction);
  let alongX = cos(heading);
  let alongY = sin(heading);
  // At a corner neither segment's heading alone tells the side: their mean does.
  const step = fraction === 0 ? -1 : fraction === 1 ? 1 : 0;
  const next = segment + step;
  const beside = spans[chain.closed ? (next + spans.length) % spans.length : next];
  if (step !== 0 && beside) {
    heading = headingOn(beside.segment, step > 0 ? 0 : 1);
    alongX += cos(heading);
    alongY += sin(heading);
  }
  const across = alongX * (p.y - foot.point.y) - alongY * (p.x - foot.point.x);
  return { ...foot, side: foot.distanceMm === 0 || across === 0 ? 0 : across > 0 ? 1 : -1 };
}

/**
 * As {@link nearestOn} without the side, for spans that are asked many times. Where nothing lies within `withinMm`, that is
 * the distance and the segment −1.
 */
export function nearestOnSpans<F extends Frame>(
  spans: readonly Span<F>[],
  p: Point<F>,
  withinMm = Infinity,
): Omit<Nearest<F>, 'side'> {
  let best = { point: p, distanceMm: withinMm, segment: -1, fraction: 0 };
  for (let segment = 0; segment < spans.length; segment++) {
    const span = spans[segment] as Span<F>;
    if (squareToBox(span, p) >= best.distanceMm * best.distanceMm) continue;
    const foot = footFraction(span, p.x, p.y);
    const fraction = Math.min(1, Math.max(0, foot));
    const at = pointOn(span.segment, fraction);
    const distanceMm = distanceBetween(at, p);
    if (distanceMm < best.distanceMm) best = { point: at, distanceMm, segment, fraction };
  }
  return best;
}
