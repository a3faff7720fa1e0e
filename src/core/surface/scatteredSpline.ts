import { exp, log, power } from '../base/index.ts';
import { type FairSpline, type FairSplineTask, fairSpline, splineValue } from './fairSpline.ts';

/** Stiffnesses between which the search runs, for abscissae of length 1, and its halvings. */
const STIFFNESS = { least: 1 / 100_000_000, most: 100, halvings: 16 } as const;

/**
 * The curve that bends least of all that miss scattered values by no more than `sigma` rms; the nearest that its spans allow where
 * none comes as near, and null where the exact conditions contradict each other.
 *
 * Method: smoothing spline, its stiffness by the discrepancy principle (V. A. Morozov, 1966), found by halving on its logarithm.
 */
export function scatteredSpline(
  task: Omit<FairSplineTask, 'stiffness'> & Required<Pick<FairSplineTask, 'near'>>,
  sigma: number,
): FairSpline | null {
  const scale = power(task.to - task.from, 3);
  const made = (logarithm: number): FairSpline | null => {
    const spline = fairSpline({ ...task, stiffness: scale * exp(logarithm) }, 'readings');
    return spline.ok ? spline.value : null;
  };
  let [low, high] = [log(STIFFNESS.least), log(STIFFNESS.most)];
  let best = made(low);
  for (let halving = 0; best && halving < STIFFNESS.halvings; halving++) {
    const middle = (low + high) / 2;
    const tried = made(middle);
    if (tried && missOf(task.near, tried) <= sigma) [low, best] = [middle, tried];
    else high = middle;
  }
  return best;
}

/** Root mean square of what a curve leaves of values, by their weights. */
function missOf(near: Required<FairSplineTask>['near'], spline: FairSpline): number {
  let [sum, weights] = [0, 0];
  for (const { at, value, weight } of near) {
    sum += weight * (value - splineValue(spline, at)) ** 2;
    weights += weight;
  }
  return Math.sqrt(sum / weights);
}
