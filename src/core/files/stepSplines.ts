import type { Point } from '../base/index.ts';
import {
  type CubicKnots,
  knotPlaces,
  patchCoefficient,
  type SpaceCurve,
  type SplineCurve,
  type SplinePatch,
  type SplineSurface,
} from '../surface/index.ts';
import { type StepEntities, stepNumber } from './stepEntities.ts';
import { stepPoint } from './stepGeometry.ts';

/** A plane curve as a cubic B-spline at a height. */
export function stepSplineCurve(file: StepEntities, curve: SplineCurve<'body'>, zMm: number): string {
  const points = curve.coefficients.map(({ x, y }: Point<'body'>) => stepPoint(file, [x, y, zMm]));
  const { times, values } = knotTimes(curve.knots);
  return file.add(
    `B_SPLINE_CURVE_WITH_KNOTS('',3,(${points.join(',')}),.UNSPECIFIED.,.F.,.F.,${times},${values},.UNSPECIFIED.)`,
  );
}

/** Heights over a rectangle as a bicubic B-spline whose parameters are x and y in mm; it looks up. */
export function stepSplineSurface(file: StepEntities, surface: SplineSurface): string {
  const { knotsX, knotsY, coefficients } = surface;
  const [placesX, placesY] = [knotPlaces(knotsX), knotPlaces(knotsY)];
  const columns = Array.from(placesX, (x, column) => {
    const points = Array.from(placesY, (y, row) =>
      stepPoint(file, [x, y, coefficients[row * placesX.length + column] as number]),
    );
    return `(${points.join(',')})`;
  });
  const [inX, inY] = [knotTimes(knotsX), knotTimes(knotsY)];
  return file.add(
    `B_SPLINE_SURFACE_WITH_KNOTS('',3,3,(${columns.join(',')}),.UNSPECIFIED.,.F.,.F.,.F.,${inX.times},${inY.times},${inX.values},${inY.values},.UNSPECIFIED.)`,
  );
}

/** A cubic B-spline in space. */
export function stepSpaceCurve(file: StepEntities, { knots, coefficients }: SpaceCurve): string {
  const points = coefficients.map((place) => stepPoint(file, place));
  const { times, values } = knotTimes(knots);
  return file.add(
    `B_SPLINE_CURVE_WITH_KNOTS('',3,(${points.join(',')}),.UNSPECIFIED.,.F.,.F.,${times},${values},.UNSPECIFIED.)`,
  );
}

/** A patch as a bicubic B-spline with its own parameters. */
export function stepSplinePatch(file: StepEntities, patch: SplinePatch): string {
  const { knotsU, knotsV } = patch;
  const [across, along] = [knotsU.length - 4, knotsV.length - 4];
  const columns = Array.from({ length: across }, (_, column) => {
    const points = Array.from({ length: along }, (__, row) =>
      stepPoint(file, patchCoefficient(patch, column, row)),
    );
    return `(${points.join(',')})`;
  });
  const [inU, inV] = [knotTimes(knotsU), knotTimes(knotsV)];
  return file.add(
    `B_SPLINE_SURFACE_WITH_KNOTS('',3,3,(${columns.join(',')}),.UNSPECIFIED.,.F.,.F.,.F.,${inU.times},${inV.times},${inU.values},${inV.values},.UNSPECIFIED.)`,
  );
}

/** Knots as STEP lists them: each value once, and how often it stands. */
function knotTimes(knots: CubicKnots): { readonly times: string; readonly values: string } {
  const values = [...new Set(knots)];
  const times = values.map((value) => knots.filter((knot) => knot === value).length);
  return { times: `(${times.join(',')})`, values: `(${values.map(stepNumber).join(',')})` };
}
