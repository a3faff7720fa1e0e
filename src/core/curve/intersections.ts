import { type Frame, hypot, type Point, WELD_MM } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { crossSpans } from './crossSpans.ts';
import { segments } from './segment.ts';
import { nearPairs, type Span, spanOf } from './span.ts';
import type { Place } from './subChain.ts';

/** A point that two chains share, or that one chain passes twice, with its place on each. */
export interface Crossing<F extends Frame> {
  readonly point: Point<F>;
  readonly a: Place;
  readonly b: Place;
}

/**
 * Every point that two chains share, in the order of the first: crossings, touches within WELD_MM, and
 * where they run along each other the ends of each common stretch (and the vertices in it).
 */
export function intersections<F extends Frame>(a: Chain<F>, b: Chain<F>): readonly Crossing<F>[] {
  const first = segments(a).map(spanOf);
  const second = segments(b).map(spanOf);
  const found: Crossing<F>[] = [];
  for (const [indexA, spanA] of first.entries()) {
    for (const [indexB, spanB] of second.entries()) {
      if (apart(spanA, spanB)) continue;
      for (const { point, onFirst, onSecond } of crossSpans(spanA, spanB)) {
        addCrossing(found, {
          point,
          a: { segment: indexA, fraction: onFirst },
          b: { segment: indexB, fraction: onSecond },
        });
      }
    }
  }
  return found.sort(alongA);
}

/** Every point that a chain passes more than once, its joints aside; none for a simple chain. */
export function selfCrossings<F extends Frame>(chain: Chain<F>): readonly Crossing<F>[] {
  const spans = segments(chain).map(spanOf);
  const found: Crossing<F>[] = [];
  nearPairs(spans, (first, second) => {
    const a = spans[first];
    const b = spans[second];
    if (!a || !b) return;
    for (const { point, onFirst, onSecond } of crossSpans(a, b)) {
      const follows = second === first + 1 && onFirst === 1 && onSecond === 0;
      const returns =
        chain.closed && first === 0 && second === spans.length - 1 && onFirst === 0 && onSecond === 1;
      if (follows || returns) continue;
      addCrossing(found, {
        point,
        a: { segment: first, fraction: onFirst },
        b: { segment: second, fraction: onSecond },
      });
    }
  });
  return found.sort(alongA);
}

function apart<F extends Frame>(a: Span<F>, b: Span<F>): boolean {
  return (
    a.minX > b.maxX + WELD_MM ||
    b.minX > a.maxX + WELD_MM ||
    a.minY > b.maxY + WELD_MM ||
    b.minY > a.maxY + WELD_MM
  );
}

function addCrossing<F extends Frame>(found: Crossing<F>[], crossing: Crossing<F>): void {
  const { x, y } = crossing.point;
  if (!found.some(({ point: at }) => hypot(at.x - x, at.y - y) <= 2 * WELD_MM)) found.push(crossing);
}

function alongA<F extends Frame>(one: Crossing<F>, other: Crossing<F>): number {
  return one.a.segment - other.a.segment || one.a.fraction - other.a.fraction;
}
