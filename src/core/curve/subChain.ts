import { Bug, distanceBetween, type Frame, type Point, point, WELD_MM } from '../base/index.ts';
import type { Chain, Vertex } from './chain.ts';
import { pointOn, type Segment, segments, subSegment } from './segment.ts';
import { spansOf } from './span.ts';

/** A place on a chain: which arc or line, and the fraction of its length. */
export interface Place {
  readonly segment: number;
  readonly fraction: number;
}

/** The open chain from one place to another along the travel; on a closed chain it may run past the first vertex. */
export function subChain<F extends Frame>(chain: Chain<F>, from: Place, to: Place): Chain<F> {
  const all = segments(chain);
  const ahead = to.segment - from.segment || to.fraction - from.fraction;
  if (ahead <= 0 && !chain.closed)
    throw new Bug('the end of a part of an open chain must come after its start');
  const laps = ahead <= 0 ? all.length : 0;
  const parts: Segment<F>[] = [];
  for (let index = from.segment; index <= to.segment + laps; index++) {
    const segment = all[index % all.length];
    if (!segment) throw new Bug(`no segment ${index} in a chain of ${all.length}`);
    const start = index === from.segment ? from.fraction : 0;
    const end = index === to.segment + laps ? to.fraction : 1;
    if (end > start) parts.push(subSegment(segment, start, end));
  }
  return chainOfSegments(parts);
}

/** The point at a length along the travel from the start, mm; beyond the ends of an open chain its end. */
export function pointAlong<F extends Frame>(chain: Chain<F>, lengthMm: number): Point<F> {
  const place = placeAlong(chain, lengthMm);
  const span = spansOf(chain)[place.segment];
  if (!span) throw new Bug('a chain without a segment has no points along it');
  return pointOn(span.segment, place.fraction);
}

/** The place at a length along the travel, mm; closed chains wrap round, open ones stop at their ends. */
export function placeAlong<F extends Frame>(chain: Chain<F>, lengthMm: number): Place {
  const spans = spansOf(chain);
  const total = spans.reduce((sum, { lengthMm: each }) => sum + each, 0);
  let left = chain.closed ? lengthMm - total * Math.floor(lengthMm / total) : Math.max(0, lengthMm);
  for (const [segment, { lengthMm: each }] of spans.entries()) {
    if (left <= each) return { segment, fraction: left / each };
    left -= each;
  }
  return { segment: spans.length - 1, fraction: 1 };
}

/** An open chain of arcs and lines that follow each other; those shorter than WELD_MM from end to end are dropped. */
export function chainOfSegments<F extends Frame>(parts: readonly Segment<F>[]): Chain<F> {
  const vertices: Vertex<F>[] = [];
  let end: Point<F> | undefined;
  for (const part of parts) {
    end = part.end;
    if (distanceBetween(part.start, part.end) > WELD_MM) {
      vertices.push({ x: part.start.x, y: part.start.y, bulge: part.bulge });
    }
  }
  if (end) vertices.push({ ...point<F>(end.x, end.y), bulge: 0 });
  return { closed: false, vertices };
}
