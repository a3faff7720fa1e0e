import { atan2, type Frame, type Point, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { segmentExtent } from './measure.ts';
import { type Arc, arcOf, type Segment, segmentLength, segments } from './segment.ts';

/** A segment with what measuring it again and again needs: its arc, length and upright box. */
export interface Span<F extends Frame> {
  readonly segment: Segment<F>;
  readonly arc: Arc<F> | null;
  readonly lengthMm: number;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export function spanOf<F extends Frame>(segment: Segment<F>): Span<F> {
  const arc = arcOf(segment);
  const { minX, minY, maxX, maxY } = segmentExtent(segment, arc);
  return { segment, arc, lengthMm: segmentLength(segment), minX, minY, maxX, maxY };
}

/** Chains never change, so their spans are made once and kept for as long as the chain is. */
const SPANS = new WeakMap<Chain<Frame>, readonly Span<Frame>[]>();

/** The spans of a chain, made once for many questions. */
export function spansOf<F extends Frame>(chain: Chain<F>): readonly Span<F>[] {
  const known = SPANS.get(chain as Chain<Frame>);
  if (known) return known as readonly Span<F>[];
  const spans = segments(chain).map(spanOf);
  SPANS.set(chain as Chain<Frame>, spans as readonly Span<Frame>[]);
  return spans;
}

/**
 * Where along a span the foot of a point lies, as a fraction of its length: below 0 or above 1 when the foot
 * on the whole line or circle lies beyond the ends.
 */
export function footFraction<F extends Frame>(span: Span<F>, x: number, y: number): number {
  const { segment, arc } = span;
  const { start, end } = segment;
  if (!arc) {
    const chordX = end.x - start.x;
    const chordY = end.y - start.y;
    const square = chordX * chordX + chordY * chordY;
    return ((x - start.x) * chordX + (y - start.y) * chordY) / square;
  }
  const fromX = start.x - arc.centre.x;
  const fromY = start.y - arc.centre.y;
  const toX = x - arc.centre.x;
  const toY = y - arc.centre.y;
  const turn = atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
  const sweep = Math.abs(arc.sweepRad);
  let ahead = arc.sweepRad > 0 ? turn : -turn;
  if (ahead < 0) ahead += 2 * Math.PI;
  // What lies nearer to the start than to the end, the short way round, counts as before the start.
  if (ahead > Math.PI + sweep / 2) ahead -= 2 * Math.PI;
  return ahead / sweep;
}

/** The fraction, with what lies within WELD_MM beyond an end drawn onto it; null further out. */
export function fractionWithin<F extends Frame>(span: Span<F>, x: number, y: number): number | null {
  const fraction = footFraction(span, x, y);
  const slack = WELD_MM / span.lengthMm;
  if (fraction < -slack || fraction > 1 + slack) return null;
  return Math.min(1, Math.max(0, fraction));
}

/** Square of how far a point lies from a span's box; 0 inside. A lower bound of its squared distance. */
export function squareToBox<F extends Frame>(span: Span<F>, p: Point<F>): number {
  const beyondX = Math.max(span.minX - p.x, 0, p.x - span.maxX);
  const beyondY = Math.max(span.minY - p.y, 0, p.y - span.maxY);
  return beyondX * beyondX + beyondY * beyondY;
}

/** Every pair of spans whose boxes come within WELD_MM of each other, by a sweep along x. */
export function nearPairs<F extends Frame>(
  spans: readonly Span<F>[],
  visit: (first: number, second: number) => void,
): void {
  const order = spans.map((_, index) => index).sort((a, b) => (spans[a]?.minX ?? 0) - (spans[b]?.minX ?? 0));
  for (let place = 0; place < order.length; place++) {
    const first = order[place] ?? 0;
    const a = spans[first];
    if (!a) continue;
    for (let next = place + 1; next < order.length; next++) {
      const second = order[next] ?? 0;
      const b = spans[second];
      if (!b || b.minX > a.maxX + WELD_MM) break;
      if (b.minY > a.maxY + WELD_MM || a.minY > b.maxY + WELD_MM) continue;
      if (first < second) visit(first, second);
      else visit(second, first);
    }
  }
}
