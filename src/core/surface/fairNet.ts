import { type BandedMatrix, solveBanded, zeroBanded } from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import type { SurfacePoint } from './loft.ts';

/** Where a net lies: x from 0 to `columns` steps, y from `fromMm` in `rows` steps; it is even in x and 0 at x = 0. */
export interface NetGrid {
  readonly stepMm: number;
  readonly fromMm: number;
  readonly columns: number;
  readonly rows: number;
}

/** A smooth surface over a rectangle: bicubic B-spline, twice continuously differentiable. */
export interface FairNet extends NetGrid {
  /** Row by row along y, columns 1, 2, … of each; column 0 follows from 1 so that the surface is 0 on the axis. */
  readonly coefficients: Float64Array;
}

/** A height, or a slope in a direction (unit vector), that the net goes near. */
export interface NetCondition {
  readonly x: number;
  readonly y: number;
  readonly along?: { readonly x: number; readonly y: number };
  readonly value: number;
  readonly weight: number;
}

/** Sample points of the bending in one step of the net, each way. */
const SAMPLES = 4;

/**
 * The net that bends least, ∫ v_xx² + 2 v_xy² + v_yy² with the weight of each place, while it goes near the conditions;
 * null when they leave it undetermined. `weightAt` is asked at the middle of quarter steps and must be above 0.
 */
export function fairNet(
  grid: NetGrid,
  weightAt: (xMm: number, yMm: number) => number,
  conditions: readonly NetCondition[],
): FairNet | null {
  const across = unknownsAcross(grid);
  const size = across * (grid.rows + 3);
  const matrix = zeroBanded(size, 3 * across + 3);
  const right = new Float64Array(size);
  addBending(grid, weightAt, matrix);
  for (const condition of conditions) {
    const { x, y, along, value, weight } = condition;
    const terms = along
      ? [...termsAt(grid, x, y, 1, 0, along.x), ...termsAt(grid, x, y, 0, 1, along.y)]
      : termsAt(grid, x, y, 0, 0, 1);
    addSquare(terms, weight, matrix);
    for (const { unknown, factor } of terms) right[unknown] = (right[unknown] ?? 0) + weight * factor * value;
  }
  const coefficients = solveBanded(matrix, right);
  return coefficients ? { ...grid, coefficients } : null;
}

/** Height and slopes of a net; x may be of either sign. Promises a place on its rectangle. */
export function netAt(net: FairNet, xMm: number, yMm: number): SurfacePoint {
  const { spanX, spanY, tX, tY } = placeOf(net, Math.abs(xMm), yMm);
  const [inX, inY] = [cubicBasis(tX, 0), cubicBasis(tY, 0)];
  const [slopeInX, slopeInY] = [cubicBasis(tX, 1), cubicBasis(tY, 1)];
  let [z, byX, byY] = [0, 0, 0];
  for (let row = 0; row < 4; row++) {
    let [along, slopeAlong] = [0, 0];
    for (let index = 0; index < 4; index++) {
      const column = spanX + index - 1;
      const value = (net.coefficients[unknownOf(net, column, spanY + row)] as number) * shareOf(column);
      along += value * (inX[index] as number);
      slopeAlong += value * (slopeInX[index] as number);
    }
    z += along * (inY[row] as number);
    byX += slopeAlong * (inY[row] as number);
    byY += along * (slopeInY[row] as number);
  }
  return { zMm: z, slopeX: (Math.sign(xMm) * byX) / net.stepMm || 0, slopeY: byY / net.stepMm };
}

interface Term {
  readonly unknown: number;
  readonly factor: number;
}

/** What each unknown adds to a derivative of the net at a place. */
function termsAt(
  grid: NetGrid,
  x: number,
  y: number,
  byX: 0 | 1 | 2,
  byY: 0 | 1 | 2,
  scale: number,
): readonly Term[] {
  const { spanX, spanY, tX, tY } = placeOf(grid, x, y);
  const scaled = scale / grid.stepMm ** (byX + byY);
  return spanTerms(grid, spanX, spanY, cubicBasis(tX, byX), cubicBasis(tY, byY), scaled);
}

/** The span that a place lies in, and how far across it. */
function placeOf(
  grid: NetGrid,
  x: number,
  y: number,
): { spanX: number; spanY: number; tX: number; tY: number } {
  const [alongX, alongY] = [x / grid.stepMm, (y - grid.fromMm) / grid.stepMm];
  const spanX = Math.max(0, Math.min(grid.columns - 1, Math.floor(alongX)));
  const spanY = Math.max(0, Math.min(grid.rows - 1, Math.floor(alongY)));
  return { spanX, spanY, tX: alongX - spanX, tY: alongY - spanY };
}

/** Even in x: column −1 is column 1. Zero on the axis: column 0 is minus half of column 1. */
function unknownOf(grid: NetGrid, column: number, row: number): number {
  return row * unknownsAcross(grid) + (column <= 0 ? 1 : column) - 1;
}

function shareOf(column: number): number {
  return column === 0 ? -0.5 : 1;
}

function spanTerms(
  grid: NetGrid,
  spanX: number,
  spanY: number,
  inX: readonly number[],
  inY: readonly number[],
  scale: number,
): readonly Term[] {
  const terms: Term[] = [];
  inY.forEach((factorY, row) => {
    inX.forEach((factorX, index) => {
      const column = spanX + index - 1;
      const unknown = unknownOf(grid, column, spanY + row);
      terms.push({ unknown, factor: scale * factorX * factorY * shareOf(column) });
    });
  });
  return terms;
}

/** Columns 1 to one past the last step: −1 and 0 follow from column 1. */
function unknownsAcross(grid: NetGrid): number {
  return grid.columns + 1;
}

/** Sums each span's bending over its sample points first, then adds it to the matrix once. */
function addBending(grid: NetGrid, weightAt: (x: number, y: number) => number, matrix: BandedMatrix): void {
  const samples = bendingSamples(grid.stepMm);
  const ones = [1, 1, 1, 1];
  for (let spanY = 0; spanY < grid.rows; spanY++)
    for (let spanX = 0; spanX < grid.columns; spanX++) {
      const local = new Float64Array(256);
      for (const { tX, tY, square } of samples) {
        const weight = weightAt((spanX + tX) * grid.stepMm, grid.fromMm + (spanY + tY) * grid.stepMm);
        for (let at = 0; at < 256; at++) local[at] = (local[at] as number) + weight * (square[at] as number);
      }
      const terms = spanTerms(grid, spanX, spanY, ones, ones, 1);
      terms.forEach((a, row) => {
        terms.forEach((b, column) => {
          addProduct(a, b, local[16 * row + column] as number, matrix);
        });
      });
    }
}

interface BendingSample {
  readonly tX: number;
  readonly tY: number;
  /** What every pair of a span's sixteen coefficients adds to the bending at this point, times its area. */
  readonly square: Float64Array;
}

function bendingSamples(stepMm: number): readonly BendingSample[] {
  const places = Array.from({ length: SAMPLES }, (_, index) => (index + 0.5) / SAMPLES);
  const scale = 1 / (SAMPLES ** 2 * stepMm ** 2);
  return places.flatMap((tY) =>
    places.map((tX) => {
      const product = (byX: 0 | 1 | 2, byY: 0 | 1 | 2): readonly number[] =>
        cubicBasis(tY, byY).flatMap((inY) => cubicBasis(tX, byX).map((inX) => inX * inY));
      const xx = product(2, 0);
      const xy = product(1, 1);
      const yy = product(0, 2);
      const square = new Float64Array(256);
      for (let at = 0; at < 256; at++) {
        const [i, j] = [at >> 4, at & 15];
        const term = (d: readonly number[]): number => (d[i] as number) * (d[j] as number);
        square[at] = scale * (term(xx) + 2 * term(xy) + term(yy));
      }
      return { tX, tY, square };
    }),
  );
}

/** Adds the square of a sum of terms; terms of one unknown may come more than once. */
function addSquare(terms: readonly Term[], weight: number, matrix: BandedMatrix): void {
  for (const a of terms) for (const b of terms) addProduct(a, b, weight, matrix);
}

function addProduct(a: Term, b: Term, weight: number, matrix: BandedMatrix): void {
  if (a.unknown < b.unknown) return;
  const { band, entries } = matrix;
  const at = a.unknown * (band + 1) + band - (a.unknown - b.unknown);
  entries[at] = (entries[at] as number) + weight * a.factor * b.factor;
}
