import { Bug } from '../base/index.ts';
import { type BandedFactor, factorInPlace, solveFactored, zeroBanded } from '../numeric/index.ts';
import { addBending } from './netBending.ts';
import {
  AT_A_PLACE,
  addProducts,
  netUnknowns,
  newTerms,
  type OnAxis,
  putDerivative,
  putSlope,
  type Terms,
} from './netTerms.ts';
import type { FairNet, NetGrid } from './netValue.ts';

/**
 * Where (mm) a height, or a slope in a direction (unit vector), is asked of a net, and how much its square weighs beside the
 * bending: 1/mm² for a height, no unit for a slope.
 */
export interface NetPlace {
  readonly x: number;
  readonly y: number;
  readonly along?: { readonly x: number; readonly y: number };
  readonly weight: number;
}

/** A height (mm) or a slope that the net goes near. */
export interface NetCondition extends NetPlace {
  readonly value: number;
}

/** Everything about a fair net but the values that it goes near: its matrix taken apart. */
export interface NetFrame {
  readonly grid: NetGrid;
  readonly onAxis: OnAxis;
  readonly factor: BandedFactor;
  /** How many places it goes near, and their terms times their weights: what each place's value pulls at the unknowns. */
  readonly places: number;
  readonly pulls: Terms;
}

/**
 * What {@link solveNet} needs: the net that bends least while it goes near values at the places, the least of
 * ∫ w (v_xx² + 2 v_xy² + v_yy²) + Σ weight (v − value)²; null when the places leave it undetermined. `weightAt` is w, asked
 * at the middle of quarter steps, without a unit and above 0.
 *
 * Method: a thin plate's energy over bicubic B-splines (penalised splines: P. Eilers, B. Marx, 1996, for lines), least squares
 * by normal equations in a band of three rows, taken apart by Cholesky. The matrix hangs on places and weights alone, not on
 * values: it is kept, and a changed rise is solved on it again.
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
