import { type CubicKnots, knotBasis, knotPlaces } from './cubicKnots.ts';
import type { SpaceCurve, SpacePlace } from './spaceCurve.ts';
import { gridCoefficients } from './splineSurface.ts';

/** A bicubic B-spline surface in space over two parameters, for what is no height over x and y alone. */
export interface SplinePatch {
  readonly knotsU: CubicKnots;
  readonly knotsV: CubicKnots;
  /** For x, y and z: row by row along v, each along u. */
  readonly coefficients: readonly [Float64Array, Float64Array, Float64Array];
}

/** The patch that passes through the places of `placeAt` where its own coefficients stand. */
export function splinePatch(
  knotsU: CubicKnots,
  knotsV: CubicKnots,
  placeAt: (u: number, v: number) => SpacePlace,
): SplinePatch {
  const places = Array.from(knotPlaces(knotsV), (v) => Array.from(knotPlaces(knotsU), (u) => placeAt(u, v)));
  const axis = (which: 0 | 1 | 2): Float64Array =>
    gridCoefficients(
      knotsU,
      knotsV,
      places.map((row) => Float64Array.from(row, (place) => place[which])),
    );
  return { knotsU, knotsV, coefficients: [axis(0), axis(1), axis(2)] };
}

/** The place of a patch at its parameters. */
export function splinePatchAt(
  { knotsU, knotsV, coefficients }: SplinePatch,
  u: number,
  v: number,
): SpacePlace {
  const [inU, inV] = [knotBasis(knotsU, u), knotBasis(knotsV, v)];
  const columns = knotsU.length - 4;
  const axis = (values: Float64Array): number => {
    let sum = 0;
    for (let row = 0; row < 4; row++)
      for (let column = 0; column < 4; column++)
        sum +=
          (values[(inV.first + row) * columns + inU.first + column] as number) *
          (inU.values[column] as number) *
          (inV.values[row] as number);
    return sum;
  };
  return [axis(coefficients[0]), axis(coefficients[1]), axis(coefficients[2])];
}

/** A border of a patch: along v where u starts or ends, or along u where v starts. */
export function patchBorder(patch: SplinePatch, border: 'uStart' | 'uEnd' | 'vStart'): SpaceCurve {
  const { knotsU, knotsV } = patch;
  if (border !== 'vStart') {
    const column = border === 'uStart' ? 0 : knotsU.length - 5;
    const coefficients = Array.from({ length: knotsV.length - 4 }, (_, row) =>
      patchCoefficient(patch, column, row),
    );
    return { knots: knotsV, coefficients };
  }
  const coefficients = Array.from({ length: knotsU.length - 4 }, (_, column) =>
    patchCoefficient(patch, column, 0),
  );
  return { knots: knotsU, coefficients };
}

/** The coefficient of a patch in a column along u and a row along v. */
export function patchCoefficient(
  { knotsU, coefficients }: SplinePatch,
  column: number,
  row: number,
): SpacePlace {
  const at = row * (knotsU.length - 4) + column;
  const [x, y, z] = coefficients;
  return [x[at] as number, y[at] as number, z[at] as number];
}
