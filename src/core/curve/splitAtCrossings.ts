import { distanceBetween, type Frame, type Point, WELD_MM } from '../base/index.ts';
import { crossSpans } from './crossSpans.ts';
import { bulgeOfSweep, type Segment, sweepOf } from './segment.ts';
import { nearPairs, type Span } from './span.ts';

interface Cut<F extends Frame> {
  readonly fraction: number;
  readonly point: Point<F>;
}

/**
 * All arcs and lines cut wherever two of them meet; pieces shorter than WELD_MM are left out. The pieces of
 * both sides of a cut share its point exactly.
 */
export function splitAtCrossings<F extends Frame>(spans: readonly Span<F>[]): readonly Segment<F>[] {
  const cuts: Cut<F>[][] = spans.map(() => []);
  nearPairs(spans, (first, second) => {
    const a = spans[first];
    const b = spans[second];
    if (!a || !b) return;
    for (const { point, onFirst, onSecond } of crossSpans(a, b)) {
      if (onFirst > 0 && onFirst < 1) cuts[first]?.push({ fraction: onFirst, point });
      if (onSecond > 0 && onSecond < 1) cuts[second]?.push({ fraction: onSecond, point });
    }
  });
  return spans.flatMap((span, index) => pieces(span.segment, cuts[index] ?? []));
}

function pieces<F extends Frame>(segment: Segment<F>, cuts: Cut<F>[]): readonly Segment<F>[] {
  if (cuts.length === 0) return distanceBetween(segment.start, segment.end) > WELD_MM ? [segment] : [];
  cuts.sort((one, other) => one.fraction - other.fraction);
  const sweep = sweepOf(segment);
  const found: Segment<F>[] = [];
  let from: Cut<F> = { fraction: 0, point: segment.start };
  for (const cut of [...cuts, { fraction: 1, point: segment.end }]) {
    if (distanceBetween(from.point, cut.point) <= WELD_MM) continue;
    const bulge = segment.bulge === 0 ? 0 : bulgeOfSweep(sweep * (cut.fraction - from.fraction));
    found.push({ start: from.point, end: cut.point, bulge });
    from = cut;
  }
  return found;
}
