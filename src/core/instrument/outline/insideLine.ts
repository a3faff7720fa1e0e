import { distanceBetween, type Frame, type Point, WELD_MM } from '../../base/index.ts';
import { type Chain, containsPoint, intersections } from '../../curve/index.ts';

/**
 * The pieces of a straight line that lie in the material: inside `edge` and outside every hole.
 *
 * Open, in the direction from `from` to `to`; pieces end exactly on the edge. Empty when the line misses.
 */
export function insideLine<F extends Frame>(
  from: Point<F>,
  to: Point<F>,
  edge: Chain<F>,
  holes: readonly Chain<F>[] = [],
): readonly Chain<F>[] {
  const line: Chain<F> = { closed: false, vertices: [from, to].map(({ x, y }) => ({ x, y, bulge: 0 })) };
  const cuts = [edge, ...holes].flatMap((chain) => intersections(line, chain).map((hit) => hit.a.fraction));
  const stops = [0, ...cuts, 1].toSorted((a, b) => a - b);
  const lengthMm = distanceBetween(from, to);
  const at = (fraction: number): Point<F> => ({
    x: from.x + fraction * (to.x - from.x),
    y: from.y + fraction * (to.y - from.y),
  });
  const kept: [number, number][] = [];
  for (let stop = 1; stop < stops.length; stop++) {
    const [start, end] = [stops[stop - 1] as number, stops[stop] as number];
    if ((end - start) * lengthMm <= WELD_MM) continue;
    const middle = at((start + end) / 2);
    if (!containsPoint(edge, middle) || holes.some((hole) => containsPoint(hole, middle))) continue;
    const last = kept.at(-1);
    if (last !== undefined && (start - last[1]) * lengthMm <= WELD_MM) last[1] = end;
    else kept.push([start, end]);
  }
  return kept.map(([start, end]) => ({
    closed: false,
    vertices: [at(start), at(end)].map(({ x, y }) => ({ x, y, bulge: 0 })),
  }));
}
