import { Bug, type Frame, type Point, point } from '../base/index.ts';
import { type CubicKnots, knotBasis, knotPlaces, knotSolver } from './cubicKnots.ts';

/** A cubic B-spline in the plane; its parameter goes with the length, mm. */
export interface SplineCurve<F extends Frame> {
  readonly knots: CubicKnots;
  readonly coefficients: readonly Point<F>[];
}

/**
 * The curve through the places of `placeAt` along a length, asked where the curve's own coefficients stand, with knots no
 * farther apart than `stepMm`.
 */
export function splineCurve<F extends Frame>(
  knots: CubicKnots,
  placeAt: (alongMm: number) => Point<F>,
): SplineCurve<F> {
  const places = [...knotPlaces(knots)].map(placeAt);
  const solve = knotSolver(knots);
  const xs = solve(Float64Array.from(places, ({ x }) => x));
  const ys = solve(Float64Array.from(places, ({ y }) => y));
  return { knots, coefficients: places.map((_, at) => point<F>(xs[at] as number, ys[at] as number)) };
}

/** The place of a curve at a length along it. */
export function splineCurveAt<F extends Frame>(curve: SplineCurve<F>, alongMm: number): Point<F> {
  const { first, values } = knotBasis(curve.knots, alongMm);
  let [x, y] = [0, 0];
  values.forEach((value, index) => {
    const coefficient = curve.coefficients[first + index];
    if (!coefficient) throw new Bug('a curve with fewer coefficients than its knots ask for');
    x += value * coefficient.x;
    y += value * coefficient.y;
  });
  return point(x, y);
}
