import earcut from 'earcut';
import type { Frame, Point } from '../base/index.ts';
import { areaOf, type Chain, reverseChain, sampleChain } from '../curve/index.ts';
import type { Mesh } from './mesh.ts';

/**
 * A board of even thickness: the inside of a closed chain less its holes, from one height to another, its arcs within the
 * chord error (mm) of the true ones. Any turn of the chains will do.
 */
export function prism<F extends Frame>(
  outer: Chain<F>,
  holes: readonly Chain<F>[],
  fromZMm: number,
  toZMm: number,
  chordErrorMm: number,
): Mesh {
  const rings = [
    sampleChain(areaOf(outer) < 0 ? reverseChain(outer) : outer, chordErrorMm),
    ...holes.map((hole) => sampleChain(areaOf(hole) > 0 ? reverseChain(hole) : hole, chordErrorMm)),
  ];
  const points = rings.flat();
  const starts = rings.map((_, index) => rings.slice(0, index).reduce((sum, ring) => sum + ring.length, 0));
  const cap = earcut(
    points.flatMap(({ x, y }) => [x, y]),
    starts.slice(1),
  );
  const count = points.length;
  const positions = Float64Array.from([
    ...points.flatMap(({ x, y }) => [x, y, fromZMm]),
    ...points.flatMap(({ x, y }) => [x, y, toZMm]),
  ]);
  const triangles: number[] = [];
  for (let at = 0; at < cap.length; at += 3) {
    const [a, b, c] = anticlockwise(points, cap.slice(at, at + 3));
    triangles.push(a, c, b, a + count, b + count, c + count);
  }
  rings.forEach((ring, index) => {
    const start = starts[index] as number;
    ring.forEach((_, step) => {
      const from = start + step;
      const to = start + ((step + 1) % ring.length);
      triangles.push(from, to, to + count, from, to + count, from + count);
    });
  });
  return { positions, triangles: Uint32Array.from(triangles) };
}

function anticlockwise<F extends Frame>(
  points: readonly Point<F>[],
  corners: readonly number[],
): readonly [number, number, number] {
  const [a, b, c] = corners as [number, number, number];
  const [p, q, r] = [points[a], points[b], points[c]] as [Point<F>, Point<F>, Point<F>];
  const turn = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return turn >= 0 ? [a, b, c] : [a, c, b];
}
