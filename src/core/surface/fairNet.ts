import { Bug } from '../base/index.ts';
import {
  type BandedFactor,
  type BandedMatrix,
  factorBanded,
  solveFactored,
  zeroBanded,
} from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import type { SurfacePoint } from './loft.ts';
import type { SurfaceShape } from './surfaceShape.ts';

/** Where a net lies: x from 0 to `columns` steps, y from `fromMm` in `rows` steps; it is even in x. */
export interface NetGrid {
  readonly stepMm: number;
  readonly fromMm: number;
  readonly columns: number;
  readonly rows: number;
}

/** A smooth surface over a rectangle: bicubic B-spline, twice continuously differentiable. */
export interface FairNet extends NetGrid {
  /** Row by row along y, columns 0 to one past the last step of each. */
  readonly coefficients: Float64Array;
}

/** Whether a net is held to 0 at x = 0, or as free there as anywhere. */
export type OnAxis = 'zero' | 'free';

/** Where a height, or a slope in a direction (unit vector), is asked of a net, and how much it weighs. */
export interface NetPlace {
  readonly x: number;
  readonly y: number;
  readonly along?: { readonly x: number; readonly y: number };
  readonly weight: number;
}

/** A height or a slope that the net goes near. */
export interface NetCondition extends NetPlace {
  readonly value: number;
}

/** Everything about a fair net but the values that it goes near: its matrix taken apart. */
export interface NetFrame {
  readonly grid: NetGrid;
  readonly onAxis: OnAxis;
  readonly factor: BandedFactor;
  /** For each place what the unknowns add up to there, times its weight. */
  readonly pulls: readonly (readonly Term[])[];
}

/** Sample points of the bending in one step of the net, each way. */
const SAMPLES = 4;

/**
 * What {@link solveNet} needs: the net that bends least, ∫ v_xx² + 2 v_xy² + v_yy² with the weight of each place, while it
 * goes near values at the places; null when they leave it undetermined. `weightAt` is asked at the middle of quarter
 * steps and must be above 0.
 */
export function netFrame(
  grid: NetGrid,
  weightAt: (xMm: number, yMm: number) => number,
  places: readonly NetPlace[],
  onAxis: OnAxis = 'zero',
): NetFrame | null {
  const unknowns = netUnknowns(grid, onAxis);
  const { across } = unknowns;
  const matrix = zeroBanded(across * (grid.rows + 3), 3 * across + 3);
  addBending(unknowns, weightAt, matrix);
  const pulls = places.map(({ x, y, along, weight }): readonly Term[] => {
    const terms = along
      ? [...termsAt(unknowns, x, y, 1, 0, along.x), ...termsAt(unknowns, x, y, 0, 1, along.y)]
      : termsAt(unknowns, x, y, 0, 0, 1);
    addSquare(terms, weight, matrix);
    return terms.map(({ unknown, factor }) => ({ unknown, factor: factor * weight }));
  });
  const factor = factorBanded(matrix);
  return factor ? { grid, onAxis, factor, pulls } : null;
}

/** The net of a frame for these values, one for each of its places. */
export function solveNet(frame: NetFrame, values: ArrayLike<number>): FairNet {
  if (values.length !== frame.pulls.length)
    throw new Bug(`${values.length} values for ${frame.pulls.length} places of a net`);
  const right = new Float64Array(frame.factor.size);
  frame.pulls.forEach((terms, index) => {
    const value = values[index] as number;
    if (value !== 0)
      for (const { unknown, factor } of terms) right[unknown] = (right[unknown] as number) + factor * value;
  });
  return { ...frame.grid, coefficients: wholeRows(frame, solveFactored(frame.factor, right)) };
}

/** The solved unknowns with the column on the axis put back. */
function wholeRows({ grid, onAxis }: NetFrame, solved: Float64Array): Float64Array {
  const { across, column, share } = netUnknowns(grid, onAxis);
  const stride = grid.columns + 2;
  return Float64Array.from({ length: stride * (grid.rows + 3) }, (_, at) => {
    const [row, col] = [Math.floor(at / stride), at % stride];
    return (solved[row * across + column(col)] as number) * share(col);
  });
}

/** Two nets over one grid added up. */
export function sumOfNets(a: FairNet, b: FairNet): FairNet {
  if (a.columns !== b.columns || a.rows !== b.rows || a.stepMm !== b.stepMm || a.fromMm !== b.fromMm)
    throw new Bug('nets over different grids added up');
  return { ...a, coefficients: a.coefficients.map((value, at) => value + (b.coefficients[at] as number)) };
}

/** Frame and net at once. */
export function fairNet(
  grid: NetGrid,
  weightAt: (xMm: number, yMm: number) => number,
  conditions: readonly NetCondition[],
  onAxis: OnAxis = 'zero',
): FairNet | null {
  const frame = netFrame(grid, weightAt, conditions, onAxis);
  return (
    frame &&
    solveNet(
      frame,
      conditions.map(({ value }) => value),
    )
  );
}

/** Height and slopes of a net; x may be of either sign. Promises a place on its rectangle. */
export function netAt(net: FairNet, xMm: number, yMm: number): SurfacePoint {
  const { spanX, spanY, tX, tY } = placeOf(net, Math.abs(xMm), yMm);
  const inX = cubicBasis(tX, 0);
  const inY = cubicBasis(tY, 0);
  const slopeInX = cubicBasis(tX, 1);
  const slopeInY = cubicBasis(tY, 1);
  const { coefficients, stepMm } = net;
  const stride = net.columns + 2;
  // Even in x: column −1 is column 1.
  const before = spanX === 0 ? 1 : spanX - 1;
  let z = 0;
  let byX = 0;
  let byY = 0;
  for (let row = 0; row < 4; row++) {
    const first = (spanY + row) * stride;
    const a = coefficients[first + before] as number;
    const b = coefficients[first + spanX] as number;
    const c = coefficients[first + spanX + 1] as number;
    const d = coefficients[first + spanX + 2] as number;
    const along = a * inX[0] + b * inX[1] + c * inX[2] + d * inX[3];
    const share = inY[row] as number;
    z += along * share;
    byX += (a * slopeInX[0] + b * slopeInX[1] + c * slopeInX[2] + d * slopeInX[3]) * share;
    byY += along * (slopeInY[row] as number);
  }
  return { zMm: z, slopeX: (Math.sign(xMm) * byX) / stepMm || 0, slopeY: byY / stepMm };
}

/** {@link netAt} with its second derivatives. */
export function netShape(net: FairNet, xMm: number, yMm: number): SurfaceShape {
  const { spanX, spanY, tX, tY } = placeOf(net, Math.abs(xMm), yMm);
  const x0 = cubicBasis(tX, 0);
  const x1 = cubicBasis(tX, 1);
  const x2 = cubicBasis(tX, 2);
  const y0 = cubicBasis(tY, 0);
  const y1 = cubicBasis(tY, 1);
  const y2 = cubicBasis(tY, 2);
  const { coefficients, stepMm } = net;
  const stride = net.columns + 2;
  const before = spanX === 0 ? 1 : spanX - 1;
  const shape = { zMm: 0, slopeX: 0, slopeY: 0, bendXX: 0, bendXY: 0, bendYY: 0 };
  for (let row = 0; row < 4; row++) {
    const first = (spanY + row) * stride;
    const a = coefficients[first + before] as number;
    const b = coefficients[first + spanX] as number;
    const c = coefficients[first + spanX + 1] as number;
    const d = coefficients[first + spanX + 2] as number;
    const value = a * x0[0] + b * x0[1] + c * x0[2] + d * x0[3];
    const slope = a * x1[0] + b * x1[1] + c * x1[2] + d * x1[3];
    const bend = a * x2[0] + b * x2[1] + c * x2[2] + d * x2[3];
    const share = y0[row] as number;
    const change = y1[row] as number;
    shape.zMm += value * share;
    shape.slopeX += slope * share;
    shape.slopeY += value * change;
    shape.bendXX += bend * share;
    shape.bendXY += slope * change;
    shape.bendYY += value * (y2[row] as number);
  }
  const side = Math.sign(xMm);
  return {
    zMm: shape.zMm,
    slopeX: (side * shape.slopeX) / stepMm || 0,
    slopeY: shape.slopeY / stepMm,
    bendXX: shape.bendXX / stepMm ** 2,
    bendXY: (side * shape.bendXY) / stepMm ** 2 || 0,
    bendYY: shape.bendYY / stepMm ** 2,
  };
}

/** A net cut at one y: the coefficients across, from column −1 on. */
export function netRow(net: FairNet, yMm: number): Float64Array {
  const { spanY, tY } = placeOf(net, 0, yMm);
  const inY = cubicBasis(tY, 0);
  return Float64Array.from({ length: net.columns + 3 }, (_, index) => {
    const column = index - 1;
    let sum = 0;
    for (let row = 0; row < 4; row++) sum += coefficientAt(net, column, spanY + row) * (inY[row] as number);
    return sum;
  });
}

/** Height at a place of a row, mm. */
export function netRowHeight(net: NetGrid, row: Float64Array, xMm: number): number {
  const across = Math.abs(xMm) / net.stepMm;
  const span = Math.max(0, Math.min(net.columns - 1, Math.floor(across)));
  const [a, b, c, d] = cubicBasis(across - span, 0);
  return (
    a * (row[span] as number) +
    b * (row[span + 1] as number) +
    c * (row[span + 2] as number) +
    d * (row[span + 3] as number)
  );
}

interface Term {
  readonly unknown: number;
  readonly factor: number;
}

/** What each unknown adds to a derivative of the net at a place. */
function termsAt(
  unknowns: NetUnknowns,
  x: number,
  y: number,
  byX: 0 | 1 | 2,
  byY: 0 | 1 | 2,
  scale: number,
): readonly Term[] {
  const { spanX, spanY, tX, tY } = placeOf(unknowns.grid, x, y);
  const scaled = scale / unknowns.grid.stepMm ** (byX + byY);
  return spanTerms(unknowns, spanX, spanY, cubicBasis(tX, byX), cubicBasis(tY, byY), scaled);
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

/** Even in x: column −1 is column 1. */
function coefficientAt(net: FairNet, column: number, row: number): number {
  return net.coefficients[row * (net.columns + 2) + Math.abs(column)] as number;
}

/** How the coefficients of a grid hang on its unknowns: which one of a row a column follows, and with what share. */
interface NetUnknowns {
  readonly grid: NetGrid;
  /** Unknowns of a row. */
  readonly across: number;
  readonly column: (column: number) => number;
  readonly share: (column: number) => number;
}

/** 0 on the axis: column 0 is minus half of column 1, and no unknown of its own. */
function netUnknowns(grid: NetGrid, onAxis: OnAxis): NetUnknowns {
  return onAxis === 'zero'
    ? {
        grid,
        across: grid.columns + 1,
        column: (column) => (column <= 0 ? 1 : column) - 1,
        share: (column) => (column === 0 ? -0.5 : 1),
      }
    : { grid, across: grid.columns + 2, column: Math.abs, share: () => 1 };
}

function spanTerms(
  unknowns: NetUnknowns,
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
      const unknown = (spanY + row) * unknowns.across + unknowns.column(column);
      terms.push({ unknown, factor: scale * factorX * factorY * unknowns.share(column) });
    });
  });
  return terms;
}

/** Sums each span's bending over its sample points first, then adds it to the matrix once. */
function addBending(
  unknowns: NetUnknowns,
  weightAt: (x: number, y: number) => number,
  matrix: BandedMatrix,
): void {
  const { grid } = unknowns;
  const samples = bendingSamples(grid.stepMm);
  const ones = [1, 1, 1, 1];
  for (let spanY = 0; spanY < grid.rows; spanY++)
    for (let spanX = 0; spanX < grid.columns; spanX++) {
      const local = new Float64Array(256);
      for (const { tX, tY, square } of samples) {
        const weight = weightAt((spanX + tX) * grid.stepMm, grid.fromMm + (spanY + tY) * grid.stepMm);
        for (let at = 0; at < 256; at++) local[at] = (local[at] as number) + weight * (square[at] as number);
      }
      const terms = spanTerms(unknowns, spanX, spanY, ones, ones, 1);
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
