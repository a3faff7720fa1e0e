import { type CubicKnots, knotPlaces, knotSolver } from './cubicKnots.ts';

/** A place in space, mm. */
export type SpacePlace = readonly [number, number, number];

/** A cubic B-spline in space. */
export interface SpaceCurve {
  readonly knots: CubicKnots;
  readonly coefficients: readonly SpacePlace[];
}

/** The curve that passes through the places of `placeAt` where its own coefficients stand. */
export function spaceCurve(knots: CubicKnots, placeAt: (at: number) => SpacePlace): SpaceCurve {
  const places = Array.from(knotPlaces(knots), placeAt);
  const solve = knotSolver(knots);
  const [xs, ys, zs] = ([0, 1, 2] as const).map((axis) =>
    solve(Float64Array.from(places, (place) => place[axis])),
  ) as [Float64Array, Float64Array, Float64Array];
  return {
    knots,
    coefficients: places.map((_, at) => [xs[at] as number, ys[at] as number, zs[at] as number]),
  };
}
