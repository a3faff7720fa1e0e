import { type Frame, SETTLED, WELD_MM } from '../base/index.ts';
import { solveSquare } from '../numeric/index.ts';
import { type ArcSpline, arcCount } from './arcSpline.ts';
import { endResiduals, endsOff, type SplineEnds } from './splineEnds.ts';
import { feetOf, type Misfit, misfitOf, type PointRows, type SplineFeet } from './splineFeet.ts';
import { normalSystem, type System } from './splineSystem.ts';

export interface SettledSpline extends Misfit {
  readonly spline: ArcSpline;
  /** Largest departure from what the ends must keep, mm and rad. */
  readonly endsOff: number;
}

export interface SettleOptions {
  /** Steps at most. */
  readonly rounds: number;
  /** The arc that each point is counted to in the first steps of a rough start. */
  readonly firstArcs?: Int32Array;
  /** Stops as soon as no point lies further off than this, mm; never when left out. */
  readonly enoughMm?: number;
}

/**
 * The spline moved to where the weighted squares of its distances from the points are least and its ends
 * keep what they must. Method: Gauss-Newton with Lagrange multipliers, damped; the feet follow each step.
 */
export function settleSpline<F extends Frame>(
  start: ArcSpline,
  points: PointRows,
  ends: SplineEnds<F>,
  weights: Float64Array,
  options: SettleOptions,
): SettledSpline {
  const { firstArcs, enoughMm = 0 } = options;
  let spline = start;
  let feet = feetOf(spline, points, firstArcs);
  let merit = meritOf(spline, feet, weights, ends);
  let damping = 0.001;
  for (let round = 0; round < options.rounds; round++) {
    const system = normalSystem(spline, feet, weights, ends);
    let better = false;
    for (let tries = 0; tries < 6 && !better; tries++) {
      const moved = stepped(spline, system, damping);
      if (moved) {
        // At first each point keeps the arc it was counted to, so that a rough start cannot lead it astray.
        const newFeet = feetOf(moved, points, round < 2 ? firstArcs : undefined);
        const newMerit = meritOf(moved, newFeet, weights, ends);
        if (newMerit <= merit || (round === 2 && firstArcs)) {
          const settled =
            round > 3 && (merit - newMerit <= MERIT_SHARE * merit || misfitOf(newFeet).maxMm <= enoughMm);
          spline = moved;
          feet = newFeet;
          merit = newMerit;
          if (tries === 0) damping = Math.max(damping / 10, SETTLED);
          if (settled) return closeEnds(spline, points, ends, weights);
          better = true;
          continue;
        }
      }
      damping *= 10;
    }
    if (!better) break;
  }
  return closeEnds(spline, points, ends, weights);
}

/** Share of the merit below which a step no longer counts. */
const MERIT_SHARE = 0.000_1;

/** The last steps only bring the ends home; the curve moves as little as the points allow. */
function closeEnds<F extends Frame>(
  start: ArcSpline,
  points: PointRows,
  ends: SplineEnds<F>,
  weights: Float64Array,
): SettledSpline {
  let spline = start;
  for (let round = 0; round < 6; round++) {
    if (endsOff(spline, ends) < SETTLED) break;
    const system = normalSystem(spline, feetOf(spline, points), weights, ends);
    system.right.fill(0, 0, system.unknowns);
    const moved = stepped(spline, system, MERIT_SHARE);
    if (!moved || endsOff(moved, ends) >= endsOff(spline, ends)) break;
    spline = moved;
  }
  return { spline, ...misfitOf(feetOf(spline, points)), endsOff: endsOff(spline, ends) };
}

function stepped(spline: ArcSpline, system: System, damping: number): ArcSpline | undefined {
  const { matrix, right, unknowns } = system;
  const damped = matrix.map((row, index) => {
    if (index >= unknowns) return row;
    const copy = Float64Array.from(row);
    copy[index] = row[index] * (1 + damping) + SETTLED;
    return copy;
  });
  const step = solveSquare(damped, right);
  if (!step) return undefined;
  // No arc loses more than half its length in one step.
  let share = 1;
  for (let arc = 0; arc < arcCount(spline); arc++) {
    const lengthMm = spline[4 + 2 * arc];
    const change = step[4 + 2 * arc];
    if (change < -lengthMm / 2) share = Math.min(share, -lengthMm / 2 / change);
  }
  return spline.map((value, index) => value + share * step[index]);
}

function meritOf<F extends Frame>(
  spline: ArcSpline,
  feet: SplineFeet,
  weights: Float64Array,
  ends: SplineEnds<F>,
): number {
  let sum = 0;
  const { leftMm } = feet;
  for (let index = 0; index < leftMm.length; index++) sum += weights[index] * leftMm[index] * leftMm[index];
  for (let arc = 0; arc < arcCount(spline); arc++) {
    if (!(spline[4 + 2 * arc] > WELD_MM)) return Infinity;
  }
  for (const off of endResiduals(spline, ends)) sum += leftMm.length * off * off;
  return sum;
}
