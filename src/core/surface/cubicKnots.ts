import { Bug } from '../base/index.ts';

/**
 * Knots of a cubic B-spline, not falling; each end stands four times, so that the curve ends in its first and last
 * coefficient. There are four more knots than coefficients.
 */
export type CubicKnots = Float64Array;

/** The four basis functions that are not 0 at a place, with their slopes; `first` is the coefficient of the first. */
export interface KnotBasis {
  readonly first: number;
  readonly values: readonly [number, number, number, number];
  readonly slopes: readonly [number, number, number, number];
}

/**
 * Knots from the first stop to the last, evenly spaced between stops and no farther apart than `stepMm`. A stop in between
 * is a double knot: there the second derivative may jump.
 */
export function cubicKnots(stops: readonly number[], stepMm: number): CubicKnots {
  const [start, end] = [stops[0], stops.at(-1)];
  if (start === undefined || end === undefined || !(end > start)) throw new Bug('knots over no length');
  const inner = stops.slice(1).flatMap((to, index) => {
    const from = stops[index] as number;
    const count = Math.ceil((to - from) / stepMm);
    const between = Array.from({ length: count - 1 }, (_, at) => from + ((to - from) * (at + 1)) / count);
    return index < stops.length - 2 ? [...between, to, to] : between;
  });
  return knotsAt([start, ...inner, end]);
}

/** Knots at places in order, the ends given once; a place in between that is given twice is a double knot. */
export function knotsAt(places: readonly number[]): CubicKnots {
  const [start, end] = [places[0], places.at(-1)];
  if (start === undefined || end === undefined || !(end > start)) throw new Bug('knots over no length');
  return Float64Array.from([start, start, start, ...places, end, end, end]);
}

/** Where each coefficient stands (the mean of three knots): a straight line has there its own values as coefficients. */
export function knotPlaces(knots: CubicKnots): Float64Array {
  return Float64Array.from(
    { length: knots.length - 4 },
    (_, at) => ((knots[at + 1] as number) + (knots[at + 2] as number) + (knots[at + 3] as number)) / 3,
  );
}

/** The basis at a place between the first and last knot; beyond them that of the end. Method: Cox and de Boor (1972). */
export function knotBasis(knots: CubicKnots, place: number): KnotBasis {
  const span = spanOf(knots, place);
  const k = (offset: number): number => knots[span + offset] as number;
  const share = (from: number, to: number): number => (place - k(from)) / (k(to) - k(from));
  const a = share(0, 1);
  const [b0, b1] = [share(-1, 1), share(0, 2)];
  const [c0, c1, c2] = [share(-2, 1), share(-1, 2), share(0, 3)];
  const quadratic = [(1 - b0) * (1 - a), b0 * (1 - a) + (1 - b1) * a, b1 * a] as const;
  const [q0, q1, q2] = quadratic;
  const rate = (value: number, from: number, to: number): number => (3 * value) / (k(to) - k(from));
  const [r0, r1, r2] = [rate(q0, -2, 1), rate(q1, -1, 2), rate(q2, 0, 3)];
  return {
    first: span - 3,
    values: [(1 - c0) * q0, c0 * q0 + (1 - c1) * q1, c1 * q1 + (1 - c2) * q2, c2 * q2],
    slopes: [-r0, r0 - r1, r1 - r2, r2],
  };
}

/** The last knot at or before a place that has a greater one behind it. */
function spanOf(knots: CubicKnots, place: number): number {
  let [low, high] = [3, knots.length - 4];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((knots[middle] as number) <= place) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * What finds the coefficients of a cubic spline from its values at {@link knotPlaces}; asked once for many rows of values.
 *
 * Method: elimination within the band. The matrix is totally positive, for which no pivots are needed (C. de Boor and
 * A. Pinkus, Backward error analysis for totally positive linear systems, 1977).
 */
export function knotSolver(knots: CubicKnots): (values: Float64Array) => Float64Array {
  const places = knotPlaces(knots);
  const size = places.length;
  // Row by row, the entry of coefficient `row + offset − BAND` at `row * WIDTH + offset`.
  const rows = new Float64Array(size * WIDTH);
  places.forEach((place, row) => {
    const { first, values } = knotBasis(knots, place);
    values.forEach((value, index) => {
      const offset = first + index - row + BAND;
      if (offset >= 0 && offset < WIDTH) rows[row * WIDTH + offset] = value;
    });
  });
  const at = (row: number, column: number): number => row * WIDTH + column - row + BAND;
  for (let pivot = 0; pivot < size; pivot++)
    for (let row = pivot + 1; row < Math.min(size, pivot + BAND + 1); row++) {
      const factor = (rows[at(row, pivot)] as number) / (rows[at(pivot, pivot)] as number);
      rows[at(row, pivot)] = factor;
      for (let column = pivot + 1; column < Math.min(size, pivot + BAND + 1); column++)
        rows[at(row, column)] =
          (rows[at(row, column)] as number) - factor * (rows[at(pivot, column)] as number);
    }
  return (values) => {
    const solved = Float64Array.from(values);
    for (let row = 0; row < size; row++)
      for (let column = Math.max(0, row - BAND); column < row; column++)
        solved[row] =
          (solved[row] as number) - (rows[at(row, column)] as number) * (solved[column] as number);
    for (let row = size - 1; row >= 0; row--) {
      for (let column = row + 1; column < Math.min(size, row + BAND + 1); column++)
        solved[row] =
          (solved[row] as number) - (rows[at(row, column)] as number) * (solved[column] as number);
      solved[row] = (solved[row] as number) / (rows[at(row, row)] as number);
    }
    return solved;
  };
}

/** Diagonals on either side that a spline's values at its own places reach, and all of them together. */
const BAND = 2;
const WIDTH = 2 * BAND + 1;
