import { power } from '../base/index.ts';
import type { BandedMatrix } from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import { type NetGrid, placeOf } from './netValue.ts';

/** Whether a net is held to 0 at x = 0, or as free there as anywhere. */
export type OnAxis = 'zero' | 'free';

/** How the coefficients of a grid hang on its unknowns. */
export interface NetUnknowns {
  readonly grid: NetGrid;
  /** Unknowns of a row; of all rows together they count from the first along x, then along y. */
  readonly across: number;
  /** For each column from −1 on which unknown of a row it follows, and with what share. */
  readonly columnOf: Int32Array;
  readonly shareOf: Float64Array;
}

/**
 * A net is even in x, so column −1 is column 1. 0 on the axis: a cubic spline is there a sixth of the columns −1 and 1 and four
 * sixths of column 0, so column 0 is minus half of column 1 and no unknown of its own.
 */
export function netUnknowns(grid: NetGrid, onAxis: OnAxis): NetUnknowns {
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

/**
 * What a height or slope of a net is as a sum over its unknowns, sixteen terms a place one place after the other: which unknown
 * each is of, and its factor (no unit for a height, 1/mm for a slope). Terms of one unknown may come more than once.
 */
export interface Terms {
  readonly unknowns: Int32Array;
  readonly factors: Float64Array;
}

/** Coefficients that a place of a net hangs on: four columns in each of four rows. */
export const AT_A_PLACE = 16;

/** Terms of so many places, to be put down. */
export function newTerms(places: number): Terms {
  return {
    unknowns: new Int32Array(AT_A_PLACE * places),
    factors: new Float64Array(AT_A_PLACE * places),
  };
}

/** Puts down what each unknown adds to a derivative of the net at a place (mm), times a scale; 1/mm for each time derived. */
export function putDerivative(
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

/** Puts down what each unknown adds to the slope in a direction. */
export function putSlope(
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

/** Puts down the terms of one span: `inX` four factors of its columns, `inY` four of its rows. */
export function putSpan(
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

/**
 * Adds the product of every two of one place's sixteen terms to a matrix of n × n, n all the unknowns; `weights` are 16 × 16,
 * one for each pair.
 */
export function addProducts({ unknowns, factors }: Terms, weights: Float64Array, matrix: BandedMatrix): void {
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
