import { type Point, WELD_MM } from '../base/index.ts';
import type { Mesh } from './mesh.ts';
import type { Ring } from './plateRings.ts';
import { ringedTriangles } from './ringedTriangles.ts';
import { zipRings } from './zipRings.ts';

/** Height over a place in plan, mm. */
export type HeightAt = (xMm: number, yMm: number) => number;

/** A row of places round a skin, all at heights of their own. */
export interface SkinRing {
  readonly places: Ring;
  readonly heightAt: HeightAt;
}

/** One side of a plate: a net over the plan, bounded by its outer ring and by openings. Triangles anticlockwise from above. */
export interface Skin {
  readonly positions: readonly number[];
  readonly triangles: readonly number[];
  /** The first place and the number of places of the outer ring and of every opening. */
  readonly borders: readonly { readonly start: number; readonly count: number }[];
}

/**
 * A skin from its outer ring inwards: rings one inside the other, zipped together, and inside the last of them openings and
 * places, joined by {@link ringedTriangles}.
 */
export function plateSkin(
  rings: readonly SkinRing[],
  openings: readonly Ring[],
  places: readonly Point<'body'>[],
  heightAt: HeightAt,
): Skin {
  const positions: number[] = [];
  const put = (at: Ring, height: HeightAt): void => {
    for (const { x, y } of at) positions.push(Math.abs(x) < WELD_MM ? 0 : x, y, height(x, y));
  };
  for (const ring of rings) put(ring.places, ring.heightAt);
  put(openings.flat(), heightAt);
  put(places, heightAt);
  const triangles: number[] = [];
  let start = 0;
  rings.slice(1).forEach(({ places: ring }, index) => {
    const outer = (rings[index] as SkinRing).places;
    for (const corner of zipRings(outer, start, ring, start + outer.length)) triangles.push(corner);
    start += outer.length;
  });
  const last = (rings.at(-1) as SkinRing).places;
  for (const corner of ringedTriangles(last, openings, places)) triangles.push(start + corner);
  const borders = [{ start: 0, count: (rings[0] as SkinRing).places.length }];
  start += last.length;
  for (const { length } of openings) {
    borders.push({ start, count: length });
    start += length;
  }
  return { positions, triangles, borders };
}

/** The closed mesh between two skins whose borders stand over each other, place by place; walls run straight between them. */
export function betweenSkins(above: Skin, below: Skin): Mesh {
  const shift = above.positions.length / 3;
  const positions = new Float64Array(above.positions.length + below.positions.length);
  positions.set(above.positions);
  positions.set(below.positions, above.positions.length);
  const walls = above.borders.flatMap(({ start, count }, index) => {
    const under = shift + (below.borders[index]?.start ?? 0);
    return Array.from({ length: count }, (_, at) => {
      const next = (at + 1) % count;
      const [high, nextHigh, low, nextLow] = [start + at, start + next, under + at, under + next];
      // An opening is walled from the other side: the wood is round it.
      return index === 0
        ? [low, nextLow, nextHigh, low, nextHigh, high]
        : [low, nextHigh, nextLow, low, high, nextHigh];
    }).flat();
  });
  const triangles = new Uint32Array(above.triangles.length + below.triangles.length + walls.length);
  triangles.set(above.triangles);
  below.triangles.forEach((_, at) => {
    // Seen from below they turn the other way.
    const corner = at % 3;
    const from = corner === 0 ? at : corner === 1 ? at + 1 : at - 1;
    triangles[above.triangles.length + at] = shift + (below.triangles[from] as number);
  });
  triangles.set(walls, above.triangles.length + below.triangles.length);
  return { positions, triangles };
}
