import { hypot, power } from '../base/index.ts';

/** A surface z(x, y) at one place: height (mm), slopes (no unit) and second derivatives (1/mm). */
export interface SurfaceShape {
  readonly zMm: number;
  readonly slopeX: number;
  readonly slopeY: number;
  readonly bendXX: number;
  readonly bendXY: number;
  readonly bendYY: number;
}

/** The unit normal on the upper side. */
export function upwardNormal(
  shape: Pick<SurfaceShape, 'slopeX' | 'slopeY'>,
): readonly [number, number, number] {
  const { slopeX, slopeY } = shape;
  const length = hypot(slopeX, slopeY, 1);
  return [-slopeX / length, -slopeY / length, 1 / length];
}

/** Both principal curvatures, 1/mm, the larger first; positive where the surface is hollow as seen from above. */
export function principalCurvatures(shape: SurfaceShape): readonly [number, number] {
  const { slopeX, slopeY, bendXX, bendXY, bendYY } = shape;
  const lengthSquared = 1 + slopeX ** 2 + slopeY ** 2;
  const gauss = (bendXX * bendYY - bendXY ** 2) / lengthSquared ** 2;
  const mean =
    ((1 + slopeY ** 2) * bendXX - 2 * slopeX * slopeY * bendXY + (1 + slopeX ** 2) * bendYY) /
    (2 * power(lengthSquared, 1.5));
  const half = Math.sqrt(Math.max(0, mean ** 2 - gauss));
  return [mean + half, mean - half];
}
