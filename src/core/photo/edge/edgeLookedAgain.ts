import { hypot, type Point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';

/** mm by which a worn edge may lie inside the expected outline, and by which a good one may lie outside it. */
const NEAR_MM = { inside: 3, outside: 1.2 };
/** Stations to either side that may lie opposite a traced place. */
const WINDOW = 40;

/**
 * Which places of a traced edge stand where the outline is expected: seen, on the near plate's own silhouette, and
 * near to the expected line. All others are to be looked at again from there.
 */
export function standsAsExpected(
  traced: readonly EdgePoint[],
  expected: readonly EdgePoint[],
  overlookPx: (place: Point<'photo'>, normal: Point<'photo'>) => number,
  leastPx: number,
  pxPerMm: number,
): readonly boolean[] {
  return traced.map((place, i) => {
    if (place.state !== 'seen' || overlookPx(place.point, place.normal) >= leastPx) return false;
    const opposite = nearest(place, expected, i);
    if (opposite === null || overlookPx(opposite.point, opposite.normal) >= leastPx) return false;
    const outMm =
      ((place.point.x - opposite.point.x) * opposite.normal.x +
        (place.point.y - opposite.point.y) * opposite.normal.y) /
      pxPerMm;
    const awayMm = hypot(place.point.x - opposite.point.x, place.point.y - opposite.point.y) / pxPerMm;
    return outMm > -NEAR_MM.inside && outMm < NEAR_MM.outside && awayMm < NEAR_MM.inside;
  });
}

/** The expected place of the same stretch that lies nearest. */
function nearest(
  { point: at, side, section }: EdgePoint,
  expected: readonly EdgePoint[],
  i: number,
): EdgePoint | null {
  let [best, least]: [EdgePoint | null, number] = [null, Number.POSITIVE_INFINITY];
  for (let j = Math.max(0, i - WINDOW); j <= Math.min(expected.length - 1, i + WINDOW); j++) {
    const other = expected[j];
    if (other.side !== side || other.section !== section) continue;
    const away = (other.point.x - at.x) ** 2 + (other.point.y - at.y) ** 2;
    if (away < least) [best, least] = [other, away];
  }
  return best;
}
