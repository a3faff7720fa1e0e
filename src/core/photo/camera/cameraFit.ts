import { SETTLED } from '../../base/index.ts';
import { backwardSolve, forwardSolve, lowerFactor, solveDefinite, zeroMatrix } from '../../numeric/index.ts';

/** A sum of squares to make least: measured residuals, weighed down when they stray, and firm beliefs. */
export interface FitProblem {
  /** Residuals in units of their spread. */
  readonly residuals: (parameters: Float64Array) => Float64Array;
  readonly beliefs: readonly { readonly parameter: number; readonly value: number; readonly sigma: number }[];
  /** A step of each parameter small against what it can be told to, for the slopes. */
  readonly steps: readonly number[];
}

export interface Fitted {
  readonly parameters: Float64Array;
  readonly cost: number;
  /** Covariance, row by row. */
  readonly covariance: readonly Float64Array[];
  readonly settled: boolean;
}

const MOST_STEPS = 80;
/** Spreads beyond which a residual pulls no harder: Huber's usual choice is 1.345; 2.5 keeps nearly all good points. */
const HUBER = 2.5;

/** Method: Levenberg and Marquardt with central differences; Huber weights. Null when the start has no slope. */
export function fitParameters(problem: FitProblem, start: Float64Array): Fitted | null {
  let parameters = start;
  let damping = 1 / 1000;
  let cost = costOf(problem, parameters);
  let settled = false;
  for (let step = 0; step < MOST_STEPS && !settled; step++) {
    const { matrix, right } = normalEquations(problem, parameters);
    let taken = false;
    while (!taken && damping < MOST_DAMPING) {
      const damped = matrix.map((row, i) => row.map((one, j) => (i === j ? one * (1 + damping) : one)));
      const move = solveDefinite(damped, right);
      if (!move) return null;
      const next = parameters.map((one, i) => one + move[i]);
      const nextCost = costOf(problem, next);
      taken = nextCost <= cost;
      if (taken) {
        settled = cost - nextCost <= SETTLED * (1 + cost);
        [parameters, cost] = [next, nextCost];
      }
      damping *= taken ? 1 / 10 : 10;
    }
    if (!taken) settled = true;
  }
  const factor = lowerFactor(normalEquations(problem, parameters).matrix);
  return factor ? { parameters, cost, covariance: inverseOf(factor), settled } : null;
}

/** A step this much damped is none: the cost cannot be made less at this precision. */
const MOST_DAMPING = 1e12;

function costOf({ residuals, beliefs }: FitProblem, parameters: Float64Array): number {
  let cost = 0;
  for (const residual of residuals(parameters)) {
    const size = Math.abs(residual);
    cost += size <= HUBER ? (size * size) / 2 : HUBER * (size - HUBER / 2);
  }
  for (const belief of beliefs)
    cost += ((parameters[belief.parameter] - belief.value) / belief.sigma) ** 2 / 2;
  return Number.isFinite(cost) ? cost : Number.POSITIVE_INFINITY;
}

function normalEquations(problem: FitProblem, parameters: Float64Array) {
  const size = parameters.length;
  const residuals = problem.residuals(parameters);
  const slopes = problem.steps.map((step, place) => {
    const shifted = (by: number) =>
      problem.residuals(parameters.map((one, other) => (other === place ? one + by : one)));
    const [ahead, behind] = [shifted(step), shifted(-step)];
    return ahead.map((one, i) => (one - behind[i]) / (2 * step));
  });
  const weights = residuals.map((one) => (Math.abs(one) <= HUBER ? 1 : HUBER / Math.abs(one)));
  const matrix = zeroMatrix(size, size);
  const right = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    for (let n = 0; n < residuals.length; n++) right[i] -= weights[n] * slopes[i][n] * residuals[n];
    for (let j = i; j < size; j++) {
      let sum = 0;
      for (let n = 0; n < residuals.length; n++) sum += weights[n] * slopes[i][n] * slopes[j][n];
      matrix[i][j] = sum;
      matrix[j][i] = sum;
    }
  }
  for (const { parameter, value, sigma } of problem.beliefs) {
    matrix[parameter][parameter] += 1 / sigma ** 2;
    right[parameter] -= (parameters[parameter] - value) / sigma ** 2;
  }
  return { matrix, right };
}

function inverseOf(factor: readonly Float64Array[]): readonly Float64Array[] {
  return factor.map((_, place) => {
    const unit = new Float64Array(factor.length);
    unit[place] = 1;
    return backwardSolve(factor, forwardSolve(factor, unit));
  });
}
