import { distanceBetween, type Point, point } from '../../base/index.ts';
import { type Chain, nearestOn } from '../../curve/index.ts';
import type { BodyWear, WearPlace } from '../../photo/index.ts';

/** mm beyond half the stretch within which a place still belongs to it. */
const BESIDE_MM = 3;

/**
 * The wood that was put back at one stretch: along the edge as found and back along the restored outline (drawn for both
 * sides), bass x negative; empty where fewer than two places tell it.
 */
export function wornRegion(
  { side, at, extentMm }: BodyWear,
  places: readonly WearPlace[],
  restored: Chain<'body'>,
): readonly Point<'body'>[] {
  const found = places
    .filter((place) => place.side === side && isBy(place.at, at, extentMm / 2 + BESIDE_MM))
    .toSorted((a, b) => a.alongMm - b.alongMm)
    .map((place) => place.at);
  if (found.length < 2) return [];
  const sign = side === 'bass' ? -1 : 1;
  const meant = found.map(({ x, y }) => {
    const on = nearestOn(restored, point<'body'>(sign * x, y)).point;
    return point<'body'>(sign * on.x, on.y);
  });
  return [...found, ...meant.reverse()];
}

function isBy(one: Point<'body'>, other: Point<'body'>, withinMm: number): boolean {
  return distanceBetween(one, other) <= withinMm;
}
