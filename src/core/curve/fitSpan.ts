import { cbrt, DRAFT_MM, type Frame, hypot, type Point, sin } from '../base/index.ts';
import type { ArcSpline } from './arcSpline.ts';
import { balancedWindows, greedyWindows, type Window } from './fitWindows.ts';
import { wrapAngle } from './segment.ts';
import { type SettledSpline, settleSpline } from './settleSpline.ts';
import type { SplineEnds } from './splineEnds.ts';
import { feetOf, type PointRows, pointRows } from './splineFeet.ts';

/**
 * The tangent arcs, as few as were found, that pass a smooth run of points within a tolerance; null when even
 * one arc to every two points does not. Method: the number of unconstrained circles that the points need is a
 * start; splines of fewer or more arcs are settled from balanced windows until one fits and the next lower fails.
 */
export function fitSpan<F extends Frame>(
  points: readonly Point<F>[],
  ends: SplineEnds<F>,
  toleranceMm: number,
): SettledSpline | null {
  const most = Math.max(1, Math.floor((points.length - 1) / 2));
  let count = Math.min(most, greedyWindows(points, toleranceMm).length);
  let found = fitCount(points, ends, count, toleranceMm);
  let tooFew = 0;
  while (!found || !fits(found, toleranceMm)) {
    tooFew = count;
    if (count >= most) return null;
    const short = found ? cbrt(Math.min(8, found.maxMm / toleranceMm)) - 1 : 0;
    count = Math.min(most, count + Math.max(1, Math.floor((count * short) / 2)));
    found = fitCount(points, ends, count, toleranceMm);
  }
  for (; count - 1 > tooFew; count--) {
    const fewer = fitCount(points, ends, count - 1, toleranceMm);
    if (!fewer || !fits(fewer, toleranceMm)) break;
    found = fewer;
  }
  return finished(found, points, ends, toleranceMm);
}

function fits(found: SettledSpline, toleranceMm: number): boolean {
  return found.maxMm <= toleranceMm && found.endsOff <= DRAFT_MM;
}

/** The search stops at the first spline within the tolerance; the one that is kept goes on to the least squares. */
function finished<F extends Frame>(
  found: SettledSpline,
  points: readonly Point<F>[],
  ends: SplineEnds<F>,
  toleranceMm: number,
): SettledSpline {
  const weights = new Float64Array(points.length).fill(1);
  const settled = settleSpline(found.spline, pointRows(points), ends, weights, { rounds: ROUNDS });
  return fits(settled, toleranceMm) && settled.rmsMm <= found.rmsMm ? settled : found;
}

function fitCount<F extends Frame>(
  points: readonly Point<F>[],
  ends: SplineEnds<F>,
  count: number,
  toleranceMm: number,
): SettledSpline | null {
  const windows = balancedWindows(points, count, toleranceMm);
  if (!windows) return null;
  const weights = new Float64Array(points.length).fill(1);
  const start = startOf(points, windows, ends);
  const rows = pointRows(points);
  let settled = settleSpline(start, rows, ends, weights, {
    rounds: ROUNDS,
    firstArcs: arcsOf(windows, points.length),
    enoughMm: toleranceMm,
  });
  let best = settled;
  // Least squares leave the largest departure larger than it need be: higher powers press it down.
  for (let power = 3; power <= POWERS && best.maxMm > toleranceMm && best.maxMm < 4 * toleranceMm; power++) {
    const sharpened = sharpenedWeights(rows, settled, weights);
    settled = settleSpline(settled.spline, rows, ends, sharpened, {
      rounds: SHARPEN_ROUNDS,
      enoughMm: toleranceMm,
    });
    if (settled.maxMm < best.maxMm && settled.endsOff <= DRAFT_MM) best = settled;
  }
  return best;
}

const ROUNDS = 40;

/** Each power starts where the one before ended, so few steps do. */
const SHARPEN_ROUNDS = 5;

const POWERS = 10;

function sharpenedWeights(points: PointRows, settled: SettledSpline, weights: Float64Array): Float64Array {
  const { leftMm } = feetOf(settled.spline, points);
  let sum = 0;
  for (let index = 0; index < leftMm.length; index++) {
    const weight = weights[index] * (Math.abs(leftMm[index]) / settled.maxMm + WEIGHT_FLOOR);
    weights[index] = weight;
    sum += weight;
  }
  for (let index = 0; index < weights.length; index++) {
    weights[index] *= weights.length / sum;
  }
  return weights;
}

/** Keeps a point that happens to lie on the curve from dropping out for good. */
const WEIGHT_FLOOR = 0.05;

function startOf<F extends Frame>(
  points: readonly Point<F>[],
  windows: readonly Window[],
  ends: SplineEnds<F>,
): ArcSpline {
  const spline = new Float64Array(3 + 2 * windows.length);
  const headings = windows.map(({ startRad }, index) => {
    const before = windows[index - 1];
    return before ? startRad + wrapAngle(before.endRad - startRad) / 2 : startRad;
  });
  headings.push(windows.at(-1)?.endRad ?? 0);
  const first = points[0];
  spline[0] = ends.start?.x ?? first?.x ?? 0;
  spline[1] = ends.start?.y ?? first?.y ?? 0;
  spline[2] = ends.startHeadingRad ?? headings[0] ?? 0;
  for (const [index, { from, to }] of windows.entries()) {
    const a = points[from];
    const b = points[to];
    const chordMm = hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0));
    const turn = turnOf(windows[index], headings[index] ?? 0, headings[index + 1] ?? 0);
    const lengthMm = turn === 0 ? chordMm : (chordMm * turn) / 2 / sin(turn / 2);
    spline[3 + 2 * index] = turn / lengthMm;
    spline[4 + 2 * index] = lengthMm;
  }
  return spline;
}

/** The turn between two headings that is nearest to the turn of the window's own circle. */
function turnOf(window: Window | undefined, fromRad: number, toRad: number): number {
  const own = window ? window.endRad - window.startRad : 0;
  return own + wrapAngle(toRad - fromRad - own);
}

function arcsOf(windows: readonly Window[], count: number): Int32Array {
  const arcs = new Int32Array(count);
  for (const [index, { from, to }] of windows.entries()) arcs.fill(index, from, to + 1);
  return arcs;
}
