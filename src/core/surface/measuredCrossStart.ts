import type { Point } from '../base/index.ts';

/** Share of the width by which a crest must lie inside both channels. */
const LEAST_INSIDE = 0.15;

/**
 * A first guess of [centre, half width, rise, fullness, base, ] from readings sorted by x, tilt last; null when they fall to one side
 * only. Method: the straight line that touches the readings from below on both sides of the crest touches the channels.
 */
export function crossArchStart(
  readings: readonly Point<'section'>[],
  knowns: { readonly base: 'given' | 'free'; readonly centreXMm?: number; readonly halfWidthMm?: number },
): readonly number[] | null {
  const crest = readings.reduce((best, one) => (one.y > best.y ? one : best));
  const [left, right] = lowsOf(readings, crest, knowns.base);
  const centre = knowns.centreXMm ?? (left.x + right.x) / 2;
  const reach = Math.max(right.x - centre, centre - left.x);
  const half = knowns.halfWidthMm ?? (knowns.centreXMm === undefined ? (right.x - left.x) / 2 : reach);
  const inside = Math.min(crest.x - left.x, right.x - crest.x);
  if (knowns.centreXMm === undefined && !(inside > 2 * LEAST_INSIDE * half)) return null;
  const tilt = knowns.base === 'free' ? Math.atan2(right.y - left.y, right.x - left.x) : 0;
  const base = knowns.base === 'free' ? (left.y + right.y) / 2 : Math.min(left.y, right.y);
  const rise = crest.y - base;
  if (!(half > 0 && rise > 0 && Math.PI * rise < 2 * half)) return null;
  return [centre, half, rise, 0, base, tilt];
}

function lowsOf(
  readings: readonly Point<'section'>[],
  crest: Point<'section'>,
  base: 'given' | 'free',
): readonly [Point<'section'>, Point<'section'>] {
  const lowest = (side: readonly Point<'section'>[]) =>
    side.reduce((best, one) => (one.y < best.y ? one : best), crest);
  if (base === 'given')
    return [lowest(readings.filter(({ x }) => x < crest.x)), lowest(readings.filter(({ x }) => x > crest.x))];
  const hull: Point<'section'>[] = [];
  for (const one of readings) {
    while (hull.length > 1 && turnsDown(hull[hull.length - 2], hull[hull.length - 1], one)) hull.pop();
    hull.push(one);
  }
  let widest = 1;
  for (let i = 1; i < hull.length; i++)
    if (hull[i].x - hull[i - 1].x > hull[widest].x - hull[widest - 1].x) widest = i;
  return [hull[widest - 1], hull[widest]];
}

function turnsDown(a: Point<'section'>, b: Point<'section'>, c: Point<'section'>): boolean {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0;
}
