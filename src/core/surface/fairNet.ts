import { Bug, power } from '../base/index.ts';
import {
  type BandedFactor,
  type BandedMatrix,
  factorInPlace,
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
  /** How many places it goes near, and for each in turn sixteen terms: what the unknowns add up to there, times its weight. */
  readonly places: number;
  readonly pulls: Terms;
}

/** Terms of sums over the unknowns: which of them each is of, and its factor. Terms of one unknown may come more than once. */
interface Terms {
  readonly unknowns: Int32Array;
  readonly factors: Float64Array;
}

/** Coefficients that a place of a net hangs on: four columns in each of four rows. */
const AT_A_PLACE = 16;

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
  const pulls = newTerms(places.length);
  const terms = newTerms(1);
  const alike = new Float64Array(AT_A_PLACE * AT_A_PLACE);
  places.forEach(({ x, y, along, weight }, place) => {
    if (along) putSlope(unknowns, x, y, along, terms);
    else putDerivative(unknowns, x, y, 0, 0, 1, terms);
    addProducts(terms, alike.fill(weight), matrix);
    pulls.unknowns.set(terms.unknowns, AT_A_PLACE * place);
    for (let at = 0; at < AT_A_PLACE; at++)
      pulls.factors[AT_A_PLACE * place + at] = (terms.factors[at] as number) * weight;
  });
  const factor = factorInPlace(matrix);
  return factor ? { grid, onAxis, factor, places: places.length, pulls } : null;
}

function newTerms(places: number): Terms {
  return {
    unknowns: new Int32Array(AT_A_PLACE * places),
    factors: new Float64Array(AT_A_PLACE * places),
  };
}

/** The net of a frame for these values, one for each of its places. */
export function solveNet(frame: NetFrame, values: ArrayLike<number>): FairNet {
  if (values.length !== frame.places)
    throw new Bug(`${values.length} values for ${frame.places} places of a net`);
  const right = new Float64Array(frame.factor.size);
  const { unknowns, factors } = frame.pulls;
  for (let place = 0; place < frame.places; place++) {
    const value = values[place] as number;
    if (value === 0) continue;
    for (let at = AT_A_PLACE * place; at < AT_A_PLACE * (place + 1); at++) {
      const unknown = unknowns[at] as number;
      right[unknown] = (right[unknown] as number) + (factors[at] as number) * value;
    }
  }
  return { ...frame.grid, coefficients: wholeRows(frame, solveFactored(frame.factor, right)) };
}

/** The solved unknowns with the column on the axis put back. */
function wholeRows({ grid, onAxis }: NetFrame, solved: Float64Array): Float64Array {
  const { across, columnOf, shareOf } = netUnknowns(grid, onAxis);
  const stride = grid.columns + 2;
  const rows = new Float64Array(stride * (grid.rows + 3));
  for (let row = 0; row < grid.rows + 3; row++)
    for (let column = 0; column < stride; column++) {
      const value = solved[row * across + (columnOf[column + 1] as number)] as number;
      rows[row * stride + column] = value * (shareOf[column + 1] as number);
    }
  return rows;
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

/** Puts down what each unknown adds to a derivative of the net at a place, times a scale. */
function putDerivative(
  unknowns: NetUnknowns,
  x: number,
  y: number,
  byX: 0 | 1 | 2,
  byY: 0 | 1 | 2,
  scale: number,
  terms: Terms,
): void {
  const { spanX, spanY, tX, tY } = placeOf(unknowns.grid, x, y);
  const scaled = scale / power(unknowns.grid.stepMm, byX + byY);
  putSpan(unknowns, spanX, spanY, cubicBasis(tX, byX), cubicBasis(tY, byY), scaled, terms);
}

/** How the coefficients of a grid hang on its unknowns. */
interface NetUnknowns {
  readonly grid: NetGrid;
  /** Unknowns of a row. */
  readonly across: number;
  /** For each column from −1 on which unknown of a row it follows, and with what share. */
  readonly columnOf: Int32Array;
  readonly shareOf: Float64Array;
}

/** 0 on the axis: column 0 is minus half of column 1, and no unknown of its own. */
function netUnknowns(grid: NetGrid, onAxis: OnAxis): NetUnknowns {
  const columns = Int32Array.from({ length: grid.columns + 3 }, (_, at) => at - 1);
  return onAxis === 'zero'
    ? {
        grid,
        across: grid.columns + 1,
        columnOf: columns.map((column) => (column <= 0 ? 1 : column) - 1),
        shareOf: Float64Array.from(columns, (column) => (column === 0 ? -0.5 : 1)),
      }
    : {
        grid,
        across: grid.columns + 2,
        columnOf: columns.map(Math.abs),
        shareOf: new Float64Array(columns.length).fill(1),
      };
}

/** Puts down what each unknown adds to the slope in a direction. */
function putSlope(
  unknowns: NetUnknowns,
  x: number,
  y: number,
  along: { readonly x: number; readonly y: number },
  terms: Terms,
): void {
  putDerivative(unknowns, x, y, 0, 1, along.y, terms);
  const up = terms.factors.slice();
  putDerivative(unknowns, x, y, 1, 0, along.x, terms);
  for (let at = 0; at < AT_A_PLACE; at++)
    terms.factors[at] = (terms.factors[at] as number) + (up[at] as number);
}

function putSpan(
  { across, columnOf, shareOf }: NetUnknowns,
  spanX: number,
  spanY: number,
  inX: readonly number[],
  inY: readonly number[],
  scale: number,
  { unknowns, factors }: Terms,
): void {
  for (let row = 0; row < 4; row++)
    for (let index = 0; index < 4; index++) {
      const column = spanX + index;
      const at = 4 * row + index;
      unknowns[at] = (spanY + row) * across + (columnOf[column] as number);
      factors[at] = scale * (inX[index] as number) * (inY[row] as number) * (shareOf[column] as number);
    }
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
  const terms = newTerms(1);
  for (let spanY = 0; spanY < grid.rows; spanY++)
    for (let spanX = 0; spanX < grid.columns; spanX++) {
      samples.forEach(({ tX, tY }, at) => {
        weights[at] = weightAt((spanX + tX) * grid.stepMm, grid.fromMm + (spanY + tY) * grid.stepMm);
      });
      let square = local;
      // Most spans lie on one side altogether.
      if (!weights.every((weight) => weight === weights[0])) {
        local.fill(0);
        samples.forEach((sample, at) => {
          addTimes(local, weights[at] as number, sample.square);
        });
      } else if (weights[0] === 1) square = evenly;
      else {
        local.fill(0);
        addTimes(local, weights[0] as number, evenly);
      }
      putSpan(unknowns, spanX, spanY, ones, ones, 1, terms);
      addProducts(terms, square, matrix);
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

/** Adds the product of every two terms of a place, each with its own weight. */
function addProducts({ unknowns, factors }: Terms, weights: Float64Array, matrix: BandedMatrix): void {
  const { band, entries } = matrix;
  for (let a = 0; a < AT_A_PLACE; a++) {
    const row = unknowns[a] as number;
    const factor = factors[a] as number;
    const first = row * (band + 1) + band - row;
    for (let b = 0; b < AT_A_PLACE; b++) {
      const column = unknowns[b] as number;
      // The lower half stands for both.
      if (row < column) continue;
      const weight = weights[AT_A_PLACE * a + b] as number;
      entries[first + column] =
        (entries[first + column] as number) + weight * factor * (factors[b] as number);
    }
  }
}
