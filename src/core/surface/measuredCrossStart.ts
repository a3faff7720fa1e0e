import { atan2, type Point } from '../base/index.ts';
import { medianOf } from '../numeric/index.ts';

/** Share of the width by which a crest must lie inside both channels. */
const LEAST_INSIDE = 0.15;

/**
 * A first guess of [centre, half width, rise, fullness, base, tilt] from readings sorted by x; null when they fall to one side only.
 */
export function crossArchStart(
  readings: readonly Point<'section'>[],
  knowns: { readonly base: 'given' | 'free'; readonly centreXMm?: number; readonly halfWidthMm?: number },
): readonly number[] | null {
  const crest = readings.reduce((best, one) => (one.y > best.y ? one : best));
  const [left, right] = lowsOf(readings, crest);
  const centre = knowns.centreXMm ?? (left.x + right.x) / 2;
  const reach = Math.max(right.x - centre, centre - left.x);
  const half = knowns.halfWidthMm ?? (knowns.centreXMm === undefined ? (right.x - left.x) / 2 : reach);
  const inside = Math.min(crest.x - left.x, right.x - crest.x);
  if (knowns.centreXMm === undefined && !(inside > 2 * LEAST_INSIDE * half)) return null;
  const tilt = knowns.base === 'free' ? atan2(right.y - left.y, right.x - left.x) : 0;
  const base = knowns.base === 'free' ? (left.y + right.y) / 2 : Math.min(left.y, right.y);
  const rise = crest.y - base;
  if (!(half > 0 && rise > 0 && Math.PI * rise < 2 * half)) return null;
  return [centre, half, rise, 0, base, tilt];
}

/** The first low on each side of the crest: beyond the channel the edge rises, and then falls again to its rim. */
function lowsOf(
  readings: readonly Point<'section'>[],
  crest: Point<'section'>,
): readonly [Point<'section'>, Point<'section'>] {
  const at = readings.indexOf(crest);
  return [firstLow(readings.slice(0, at + 1).reverse()), firstLow(readings.slice(at))];
}

/** From the crest outwards; heights are the middle of three, so that one slip makes no low. */
function firstLow(side: readonly Point<'section'>[]): Point<'section'> {
  const heights = side.map(({ y }, i) => medianOf([side[i - 1]?.y ?? y, y, side[i + 1]?.y ?? y]));
  const fall = heights[0] - Math.min(...heights);
  let low = 0;
  for (let i = 1; i < side.length; i++) {
    if (heights[i] <= heights[low]) low = i;
    else if (heights[i] > heights[low] + RISEN_MM && heights[0] - heights[low] > LEAST_FALL * fall) break;
  }
  return side[low];
}

/** mm. Rising by so much again is the edge beyond the channel, not noise. */
const RISEN_MM = 0.25;
/** Share of the whole fall below which a dip is still on the arch. */
const LEAST_FALL = 0.6;
