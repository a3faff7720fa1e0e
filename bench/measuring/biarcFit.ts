/** A point of a known curve with the direction of travel there, rad. */
export interface DirectedPoint {
  readonly x: number;
  readonly y: number;
  readonly headingRad: number;
}

interface BowOfPair {
  readonly joint: { readonly x: number; readonly y: number };
  readonly centres: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
}

/** Shares of the first tangent that are tried for each pair of arcs. */
const SHARES = [0.3, 0.4, 0.45, 0.5, 0.55, 0.6, 0.7];

/**
 * How many arcs a chain of biarcs needs that passes through some of the points with the curve's own directions
 * and leaves no point further off than the tolerance: each pair of arcs as far as it will go, the best of
 * seven divisions. Biarcs with free division after Meek and Walton, 1995, in our own words.
 */
export function biarcCount(points: readonly DirectedPoint[], toleranceMm: number): number {
  const last = points.length - 1;
  let pairs = 0;
  for (let from = 0; from < last; pairs++) {
    let good = from + 1;
    let step = 8;
    while (good < last && fits(points, from, Math.min(last, good + step), toleranceMm)) {
      good = Math.min(last, good + step);
      step *= 2;
    }
    for (; step >= 1; step = Math.floor(step / 2)) {
      if (good + step <= last && fits(points, from, good + step, toleranceMm)) good += step;
    }
    from = good;
  }
  return 2 * pairs;
}

function fits(points: readonly DirectedPoint[], from: number, to: number, toleranceMm: number): boolean {
  return SHARES.some((share) => {
    const pair = biarc(points[from], points[to], share);
    return pair !== null && offMm(pair, points, from, to) <= toleranceMm;
  });
}

/** Two tangent arcs; `share` weighs the first control length against the second. */
function biarc(start: DirectedPoint, end: DirectedPoint, share: number): BowOfPair | null {
  const weight = share / (1 - share);
  const [startX, startY] = [Math.cos(start.headingRad), Math.sin(start.headingRad)];
  const [endX, endY] = [Math.cos(end.headingRad), Math.sin(end.headingRad)];
  const [chordX, chordY] = [end.x - start.x, end.y - start.y];
  // |chord − d (w T₀ + T₁)| = d (w + 1) fixes the length d.
  const [sumX, sumY] = [weight * startX + endX, weight * startY + endY];
  const square = (weight + 1) ** 2 - sumX * sumX - sumY * sumY;
  const along = chordX * sumX + chordY * sumY;
  const chord = chordX * chordX + chordY * chordY;
  const root = Math.sqrt(along * along + square * chord);
  const length = square > 0 ? (root - along) / square : chord / (2 * along);
  if (!(length > 0)) return null;
  const first = { x: start.x + startX * length * weight, y: start.y + startY * length * weight };
  const second = { x: end.x - endX * length, y: end.y - endY * length };
  const joint = {
    x: first.x + ((second.x - first.x) * weight) / (weight + 1),
    y: first.y + ((second.y - first.y) * weight) / (weight + 1),
  };
  return {
    joint,
    centres: [circle(start, start.headingRad, joint), circle(end, end.headingRad, joint)],
  };
}

function circle(at: { x: number; y: number }, headingRad: number, through: { x: number; y: number }) {
  const [normalX, normalY] = [-Math.sin(headingRad), Math.cos(headingRad)];
  const [x, y] = [through.x - at.x, through.y - at.y];
  const radius = (x * x + y * y) / (2 * (x * normalX + y * normalY));
  return { x: at.x + normalX * radius, y: at.y + normalY * radius, radius: Math.abs(radius) };
}

function offMm(pair: BowOfPair, points: readonly DirectedPoint[], from: number, to: number): number {
  const [first, second] = pair.centres;
  const { joint } = pair;
  const alongX = points[to].x - points[from].x;
  const alongY = points[to].y - points[from].y;
  let most = 0;
  for (let index = from + 1; index < to; index++) {
    const p = points[index];
    const ahead = (p.x - joint.x) * alongX + (p.y - joint.y) * alongY;
    const { x, y, radius } = ahead < 0 ? first : second;
    most = Math.max(most, Math.abs(Math.hypot(p.x - x, p.y - y) - radius));
  }
  return most;
}
