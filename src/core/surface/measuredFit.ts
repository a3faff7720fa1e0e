import { backwardSolve, forwardSolve, lowerFactor, type Matrix, zeroMatrix } from '../numeric/index.ts';

/** A number found from readings with its half interval at k = 2, both in its own unit. */
export interface Estimate {
  readonly value: number;
  readonly plusMinus: number;
}

/** What a model needs to be fitted: its residuals for a set of numbers, or null where the numbers make no shape. */
export interface FitTask {
  readonly residualsOf: (numbers: Float64Array) => Float64Array | null;
  readonly start: readonly number[];
  /** For each number the change that matters: slopes are taken over it, and a step far below it is at rest. */
  readonly steps: readonly number[];
  /** Which numbers are open; the others keep their start. */
  readonly open: readonly number[];
}

/** A model brought as near to the readings as it comes. */
export interface ModelFit {
  readonly numbers: readonly number[];
  /** Reading less model, in the order of the readings. */
  readonly residuals: Float64Array;
  /** Change of each residual with each open number. */
  readonly slopes: Matrix;
  readonly open: readonly number[];
  /** Lower factor of slopesᵀ · slopes over the open numbers. */
  readonly factor: Matrix;
  readonly rms: number;
}

const MOST_TURNS = 60;
/** Share of a number's own step below which it is at rest. */
const AT_REST = 0.0001;
const FIRST_DAMPING = 0.001;
const MOST_DAMPING = 10000000;

/**
 * The numbers for which the sum of squared residuals is least, or null when the readings do not settle them.
 * Method: Levenberg-Marquardt, slopes by central differences, columns brought to one size by `steps`.
 */
export function fitModel(task: FitTask): ModelFit | null {
  const numbers = Float64Array.from(task.start);
  let residuals = task.residualsOf(numbers);
  if (residuals === null || residuals.length <= task.open.length) return null;
  let damping = FIRST_DAMPING;
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const slopes = slopesAt(task, numbers);
    if (slopes === null) return null;
    const taken = betterStep(task, numbers, residuals, slopes, damping);
    if (taken === null) return finish(task, numbers, residuals, slopes);
    damping = taken.damping;
    residuals = taken.residuals;
    if (taken.size < AT_REST) {
      const last = slopesAt(task, numbers);
      return last && finish(task, numbers, residuals, last);
    }
  }
  return null;
}

interface Step {
  readonly residuals: Float64Array;
  readonly damping: number;
  /** Largest change as a share of the number's own step. */
  readonly size: number;
}

/** Moves `numbers` to a lower sum of squares; null where none can be found nearby. */
function betterStep(
  { residualsOf, steps, open }: FitTask,
  numbers: Float64Array,
  residuals: Float64Array,
  slopes: Matrix,
  firstDamping: number,
): Step | null {
  const scaled = slopes.map((slope, index) => slope.map((value) => value * steps[open[index]]));
  const right = Float64Array.from(scaled, (slope) => -product(slope, residuals));
  const cost = product(residuals, residuals);
  for (let damping = firstDamping; damping < MOST_DAMPING; damping *= 6) {
    const factor = lowerFactor(normalMatrix(scaled, damping));
    if (factor === undefined) continue;
    const shift = backwardSolve(factor, forwardSolve(factor, right));
    const trial = Float64Array.from(numbers);
    open.forEach((place, index) => {
      trial[place] += shift[index] * steps[place];
    });
    const tried = residualsOf(trial);
    if (tried === null || product(tried, tried) > cost) continue;
    numbers.set(trial);
    return { residuals: tried, damping: damping / 6, size: Math.max(...shift.map(Math.abs)) };
  }
  return null;
}

function slopesAt({ residualsOf, steps, open }: FitTask, numbers: Float64Array): Float64Array[] | null {
  const slopes: Float64Array[] = [];
  for (const place of open) {
    const half = steps[place] / 2;
    const [below, above] = [-half, half].map((by) =>
      residualsOf(numbers.map((value, index) => (index === place ? value + by : value))),
    );
    if (!below || !above) return null;
    slopes.push(above.map((value, index) => (value - below[index]) / (2 * half)));
  }
  return slopes;
}

function finish(
  { open, steps }: FitTask,
  numbers: Float64Array,
  residuals: Float64Array,
  slopes: Matrix,
): ModelFit | null {
  const scaled = slopes.map((slope, index) => slope.map((value) => value * steps[open[index]]));
  if (lowerFactor(normalMatrix(scaled, 0)) === undefined) return null;
  const factor = lowerFactor(normalMatrix(slopes, 0));
  if (factor === undefined) return null;
  const rms = Math.sqrt(product(residuals, residuals) / residuals.length);
  return { numbers: [...numbers], residuals, slopes, open, factor, rms };
}

function normalMatrix(slopes: Matrix, damping: number): Float64Array[] {
  const size = slopes.length;
  const matrix = zeroMatrix(size, size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) {
      const value = product(slopes[i], slopes[j]) * (i === j ? 1 + damping : 1);
      matrix[i][j] = value;
      matrix[j][i] = value;
    }
  return matrix;
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/**
 * Half interval (k = 2) of a combination of the fitted numbers, `weights` by their place; numbers that were held count
 * as certain. The noise is what the residuals show, widened where neighbouring residuals go together.
 */
export function plusMinusOf(fit: ModelFit, weights: ReadonlyMap<number, number>): number {
  const right = Float64Array.from(fit.open, (place) => weights.get(place) ?? 0);
  const half = forwardSolve(fit.factor, right);
  const fewness = 1 + SPREAD_UNSURE / Math.max(1, fit.residuals.length - fit.open.length);
  return 2 * noiseOf(fit) * fewness * Math.sqrt(product(half, half)) * togetherness(fit.residuals);
}

/** A spread taken from few readings is itself unsure: Student's 95.45 % point is near 2 · (1 + 1.3 / degrees of freedom). */
const SPREAD_UNSURE = 1.3;

/** Standard deviation of one reading, from the residuals. */
function noiseOf({ residuals, open }: ModelFit): number {
  return Math.sqrt(product(residuals, residuals) / Math.max(1, residuals.length - open.length));
}

/**
 * By how much residuals that go together with their neighbours tell less than their number: √((1 + r) / (1 − r)), r the
 * correlation of neighbours, taken into account where it is more than chance makes it.
 */
function togetherness(residuals: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < residuals.length; i++) sum += residuals[i] * residuals[i - 1];
  const share = sum / Math.max(Number.MIN_VALUE, product(residuals, residuals));
  if (share < 2 / Math.sqrt(residuals.length)) return 1;
  const most = Math.min(share, MOST_TOGETHER);
  return Math.sqrt((1 + most) / (1 - most));
}

const MOST_TOGETHER = 0.98;

/** What remains of a shape over the readings that the model's own numbers cannot imitate. */
export function beyondModel({ slopes, factor }: ModelFit, shape: Float64Array): Float64Array {
  const share = backwardSolve(
    factor,
    forwardSolve(
      factor,
      Float64Array.from(slopes, (slope) => product(slope, shape)),
    ),
  );
  return shape.map((value, index) => {
    let rest = value;
    for (let k = 0; k < slopes.length; k++) rest -= share[k] * slopes[k][index];
    return rest;
  });
}
