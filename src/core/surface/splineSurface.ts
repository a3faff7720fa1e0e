import { type CubicKnots, cubicKnots, knotBasis, knotPlaces, knotSolver } from './cubicKnots.ts';
import type { SurfacePoint } from './loft.ts';

/** A bicubic B-spline over a rectangle: heights in mm over x and y. */
export interface SplineSurface {
  readonly knotsX: CubicKnots;
  readonly knotsY: CubicKnots;
  /** Row by row along y, each along x: the coefficient of each pair of knot places. */
  readonly coefficients: Float64Array;
}

/** Where a spline surface lies: the stops of {@link cubicKnots} each way, and the step that knots stay within, mm. */
export interface SplineGrid {
  readonly stopsX: readonly number[];
  readonly stopsY: readonly number[];
  readonly stepMm: number;
}

/**
 * The bicubic spline that has the heights of `heightAt` at its own places. What is four times continuously differentiable
 * it meets to the fourth order of the step between them, with its stops as the only exceptions.
 */
export function splineSurface(
  { stopsX, stopsY, stepMm }: SplineGrid,
  heightAt: (xMm: number, yMm: number) => number,
): SplineSurface {
  const [knotsX, knotsY] = [cubicKnots(stopsX, stepMm), cubicKnots(stopsY, stepMm)];
  const [placesX, placesY] = [knotPlaces(knotsX), knotPlaces(knotsY)];
  const heights = Array.from(placesY, (y) => placesX.map((x) => heightAt(x, y)));
  return { knotsX, knotsY, coefficients: gridCoefficients(knotsX, knotsY, heights) };
}

/** Coefficients over a grid, row by row, from values at its knot places: one row for each place along the second knots. */
export function gridCoefficients(
  knotsX: CubicKnots,
  knotsY: CubicKnots,
  values: readonly Float64Array[],
): Float64Array {
  const [columns, rows] = [knotsX.length - 4, knotsY.length - 4];
  const alongX = knotSolver(knotsX);
  const alongY = knotSolver(knotsY);
  const coefficients = new Float64Array(columns * rows);
  values.forEach((row, at) => {
    coefficients.set(alongX(row), at * columns);
  });
  for (let column = 0; column < columns; column++) {
    const upward = Float64Array.from(
      { length: rows },
      (_, row) => coefficients[row * columns + column] as number,
    );
    alongY(upward).forEach((value, row) => {
      coefficients[row * columns + column] = value;
    });
  }
  return coefficients;
}

/** Height and slopes of a spline surface at a place on its rectangle. */
export function splineSurfaceAt(surface: SplineSurface, xMm: number, yMm: number): SurfacePoint {
  const { knotsX, knotsY, coefficients } = surface;
  const [inX, inY] = [knotBasis(knotsX, xMm), knotBasis(knotsY, yMm)];
  const columns = knotsX.length - 4;
  let [zMm, slopeX, slopeY] = [0, 0, 0];
  for (let row = 0; row < 4; row++) {
    const start = (inY.first + row) * columns + inX.first;
    let [along, slopeAlong] = [0, 0];
    for (let column = 0; column < 4; column++) {
      const value = coefficients[start + column] as number;
      along += value * (inX.values[column] as number);
      slopeAlong += value * (inX.slopes[column] as number);
    }
    zMm += along * (inY.values[row] as number);
    slopeX += slopeAlong * (inY.values[row] as number);
    slopeY += along * (inY.slopes[row] as number);
  }
  return { zMm, slopeX, slopeY };
}
