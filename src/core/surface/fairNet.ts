import { Bug } from '../base/index.ts';
import {
  type BandedFactor,
  type BandedMatrix,
  factorBanded,
  solveFactored,
  zeroBanded,
} from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import { type FairNet, type NetGrid, placeOf } from './netValue.ts';

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
    const terms = along ? slopeTerms(unknowns, x, y, along) : termsAt(unknowns, x, y, 0, 0, 1);
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

/** What each unknown adds to the slope in a direction. */
function slopeTerms(
  unknowns: NetUnknowns,
  x: number,
  y: number,
  along: { readonly x: number; readonly y: number },
): readonly Term[] {
  const up = termsAt(unknowns, x, y, 0, 1, along.y);
  return termsAt(unknowns, x, y, 1, 0, along.x).map(({ unknown, factor }, index) => ({
    unknown,
    factor: factor + (up[index] as Term).factor,
  }));
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
  const evenly = new Float64Array(256);
  for (const { square } of samples) addTimes(evenly, 1, square);
  const ones = [1, 1, 1, 1];
  const local = new Float64Array(256);
  const weights = new Float64Array(samples.length);
  for (let spanY = 0; spanY < grid.rows; spanY++)
    for (let spanX = 0; spanX < grid.columns; spanX++) {
      samples.forEach(({ tX, tY }, at) => {
        weights[at] = weightAt((spanX + tX) * grid.stepMm, grid.fromMm + (spanY + tY) * grid.stepMm);
      });
      local.fill(0);
      // Most spans lie on one side altogether.
      if (weights.every((weight) => weight === weights[0])) addTimes(local, weights[0] as number, evenly);
      else
        samples.forEach(({ square }, at) => {
          addTimes(local, weights[at] as number, square);
        });
      const terms = spanTerms(unknowns, spanX, spanY, ones, ones, 1);
      for (let row = 0; row < 16; row++)
        for (let column = 0; column < 16; column++)
          addProduct(terms[row] as Term, terms[column] as Term, local[16 * row + column] as number, matrix);
    }
}

function addTimes(sum: Float64Array, weight: number, square: Float64Array): void {
  for (let at = 0; at < 256; at++) sum[at] = (sum[at] as number) + weight * (square[at] as number);
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
