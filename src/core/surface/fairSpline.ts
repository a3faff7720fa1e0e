import { accept, type Checked, power, refuse } from '../base/index.ts';
import { solveSquare, zeroMatrix } from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';

/** A smooth curve over an interval: uniform cubic B-spline, twice continuously differentiable. */
export interface FairSpline {
  readonly from: number;
  readonly to: number;
  /** One more than three past the number of spans: the usual coefficients of the basis. */
  readonly coefficients: readonly number[];
}

/** What a fair curve from `from` to `to` must meet, and what it may only pass near. */
export interface FairSplineTask {
  readonly from: number;
  readonly to: number;
  readonly spans: number;
  /** Values that the curve takes exactly. */
  readonly values: readonly { readonly at: number; readonly value: number }[];
  /** Slopes that the curve takes exactly. */
  readonly slopes?: readonly { readonly at: number; readonly slope: number }[];
  /** Values that it goes near, each with its weight. */
  readonly near?: readonly { readonly at: number; readonly value: number; readonly weight: number }[];
  /** How dear bending is beside missing `near`: multiplies ∫ s″² . Above 0. */
  readonly stiffness: number;
}

/**
 * The curve that bends least while it takes the exact values and slopes and goes near the others.
 *
 * Fault: `arch.fair` when the exact conditions contradict each other, as when two stand at one place.
 * Method: quadratic objective over the coefficients, the exact conditions by multipliers, one dense solve.
 */
export function fairSpline(task: FairSplineTask, at: string): Checked<FairSpline> {
  const count = task.spans + 3;
  const exact = [
    ...task.values.map(({ at: x, value }) => ({ row: basisRow(task, x, 0), value })),
    ...(task.slopes ?? []).map(({ at: x, slope }) => ({ row: basisRow(task, x, 1), value: slope })),
  ];
  const size = count + exact.length;
  const matrix = zeroMatrix(size, size);
  const right = new Float64Array(size);
  addBending(task, matrix);
  for (const { at: x, value, weight } of task.near ?? [])
    addNear(basisRow(task, x, 0), value, weight, matrix, right);
  exact.forEach(({ row, value }, index) => {
    right[count + index] = value;
    for (const { column, factor } of row) {
      add(matrix, column, count + index, factor);
      add(matrix, count + index, column, factor);
    }
  });
  const solution = solveSquare(matrix, right);
  if (!solution)
    return refuse({
      code: 'arch.fair',
      at,
      found: 'conditions that no smooth curve meets together',
      need: 'places that differ',
      remedy: 'move the stations apart',
    });
  return accept({ from: task.from, to: task.to, coefficients: [...solution.subarray(0, count)] });
}

/** Value of the curve at a place; beyond its ends the value at the end. */
export function splineValue(spline: FairSpline, at: number): number {
  return combine(spline, at, 0);
}

/** Slope of the curve at a place; 0 beyond its ends. */
export function splineSlope(spline: FairSpline, at: number): number {
  return at < spline.from || at > spline.to ? 0 : combine(spline, at, 1);
}

/** Second derivative of the curve at a place; 0 beyond its ends. */
export function splineBend(spline: FairSpline, at: number): number {
  return at < spline.from || at > spline.to ? 0 : combine(spline, at, 2);
}

interface Term {
  readonly column: number;
  readonly factor: number;
}

function combine({ from, to, coefficients }: FairSpline, at: number, derivative: 0 | 1 | 2): number {
  const spans = coefficients.length - 3;
  const width = (to - from) / spans;
  const place = Math.max(0, Math.min(spans, (at - from) / width));
  const span = Math.min(spans - 1, Math.floor(place));
  const [a, b, c, d] = cubicBasis(place - span, derivative);
  const sum =
    a * coefficients[span] +
    b * coefficients[span + 1] +
    c * coefficients[span + 2] +
    d * coefficients[span + 3];
  return derivative === 0 ? sum : derivative === 1 ? sum / width : sum / (width * width);
}

function basisRow(
  grid: { readonly from: number; readonly to: number; readonly spans: number },
  at: number,
  derivative: 0 | 1 | 2,
): readonly Term[] {
  const width = (grid.to - grid.from) / grid.spans;
  const place = Math.max(0, Math.min(grid.spans, (at - grid.from) / width));
  const span = Math.min(grid.spans - 1, Math.floor(place));
  const factors = cubicBasis(place - span, derivative);
  return factors.map((factor, index) => ({
    column: span + index,
    factor: factor / power(width, derivative),
  }));
}

/** The second derivative is straight in each span, so two Gauss points a span integrate its square exactly. */
function addBending(task: FairSplineTask, matrix: Float64Array[]): void {
  const width = (task.to - task.from) / task.spans;
  const weight = (task.stiffness * width) / 2;
  const reach = 0.5 / Math.sqrt(3);
  for (let span = 0; span < task.spans; span++)
    for (const t of [0.5 - reach, 0.5 + reach]) {
      const row = basisRow(task, task.from + (span + t) * width, 2);
      for (const a of row) for (const b of row) add(matrix, a.column, b.column, weight * a.factor * b.factor);
    }
}

function addNear(
  row: readonly Term[],
  value: number,
  weight: number,
  matrix: Float64Array[],
  right: Float64Array,
): void {
  for (const a of row) {
    right[a.column] += weight * a.factor * value;
    for (const b of row) add(matrix, a.column, b.column, weight * a.factor * b.factor);
  }
}

function add(matrix: Float64Array[], row: number, column: number, value: number): void {
  matrix[row][column] += value;
}
