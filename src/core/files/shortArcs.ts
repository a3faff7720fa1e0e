import { distanceBetween, type Frame, type Point, SETTLED, sin } from '../base/index.ts';
import { bulgeOfSweep, type Chain, pointOn, segments, sweepOf, type Vertex } from '../curve/index.ts';

/**
 * The same line with every arc cut into equal arcs that turn no more than `greatestRad`.
 *
 * Formats that name an arc by its radius need this: near half a turn, rounding a radius to a tenth of a
 * micrometre would move the arc's middle by many times as much; up to a quarter turn it moves by less than half.
 */
export function shortArcs<F extends Frame>(
  chain: Chain<F>,
  greatestRad: (radius: number) => number,
): Chain<F> {
  const vertices: Vertex<F>[] = [];
  for (const segment of segments(chain)) {
    const sweep = sweepOf(segment);
    const chord = distanceBetween(segment.start, segment.end);
    const radius = sweep === 0 ? 0 : chord / (2 * Math.abs(sin(sweep / 2)));
    // Just a quarter turn, made longer by its last place, is one piece still.
    const pieces = sweep === 0 ? 1 : Math.max(1, Math.ceil(Math.abs(sweep) / greatestRad(radius) - SETTLED));
    const bulge = pieces === 1 ? segment.bulge : bulgeOfSweep(sweep / pieces);
    for (let piece = 0; piece < pieces; piece++) {
      const { x, y }: Point<F> = pointOn(segment, piece / pieces);
      vertices.push({ x, y, bulge });
    }
  }
  const last = chain.vertices.at(-1);
  if (!chain.closed && last) vertices.push({ ...last, bulge: 0 });
  return { closed: chain.closed, vertices };
}
