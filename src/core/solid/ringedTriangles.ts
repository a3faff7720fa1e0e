import Delaunator from 'delaunator';
import { type Point, point } from '../base/index.ts';
import { spansContain, spansOf } from '../curve/index.ts';
import type { Ring } from './plateRings.ts';

/**
 * Delaunay's triangles over an outer ring, openings inside it and places between them, three indices each and anticlockwise; none
 * lies outside the ring or in an opening. Indices count through the ring, the openings and the places, in this order.
 * A side of a ring is one of a triangle if no place stands in the circle over it: who lays the places keeps clear of it.
 */
export function ringedTriangles(
  outer: Ring,
  openings: readonly Ring[],
  places: readonly Point<'body'>[],
): readonly number[] {
  const rings = [outer, ...openings];
  const onRing = rings.reduce((sum, ring) => sum + ring.length, 0);
  const all = [...rings.flat(), ...places];
  const [around, ...holes] = rings.map((ring) =>
    spansOf({ closed: true, vertices: ring.map(({ x, y }) => ({ x, y, bulge: 0 })) }),
  );
  const isWithin = (at: Point<'body'>): boolean =>
    around !== undefined && spansContain(around, at) && !holes.some((hole) => spansContain(hole, at));
  const { triangles } = Delaunator.from(
    all,
    ({ x }) => x,
    ({ y }) => y,
  );
  const kept: number[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [triangles[at], triangles[at + 1], triangles[at + 2]] as [number, number, number];
    const [p, q, r] = [all[a], all[b], all[c]] as [Point<'body'>, Point<'body'>, Point<'body'>];
    // A triangle with a place between the rings lies between them whole.
    if (Math.max(a, b, c) < onRing && !isWithin(point((p.x + q.x + r.x) / 3, (p.y + q.y + r.y) / 3)))
      continue;
    const turn = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    kept.push(a, ...(turn > 0 ? [b, c] : [c, b]));
  }
  return kept;
}
