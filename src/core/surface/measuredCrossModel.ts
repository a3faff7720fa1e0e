import { cos, type Point, sin } from '../base/index.ts';
import { withFullness } from './fullness.ts';
import { rollAngle } from './rollAngle.ts';

/** Places of a cross arch's numbers in its fit. */
export const CENTRE = 0;
export const HALF_WIDTH = 1;
export const RISE = 2;
export const FULLNESS = 3;
export const BASE = 4;
export const TILT = 5;
export const SCOOP = 6;
/** For each the change that matters, in its own unit. */
export const STEPS = [0.02, 0.02, 0.02, 0.001, 0.02, 0.0005, 0.002];

/** Reading less arch for each reading, or null where the numbers make no arch. Outside the channel the scoop goes on. */
export function residualsFrom(
  readings: readonly Point<'section'>[],
  numbers: ArrayLike<number>,
): Float64Array | null {
  const half = numbers[HALF_WIDTH];
  const rise = numbers[RISE];
  const loop = (Math.PI * rise) / (2 * half);
  if (!(half > 0 && rise > 0 && loop < 1)) return null;
  const [cosine, sine] = [cos(numbers[TILT]), sin(numbers[TILT])];
  return Float64Array.from(readings, ({ x, y }) => {
    const across = x - numbers[CENTRE];
    const along = across * cosine + (y - numbers[BASE]) * sine;
    const height = (y - numbers[BASE]) * cosine - across * sine;
    const u = Math.abs(along) / half;
    if (u > 1) return height - numbers[SCOOP] * (Math.abs(along) - half) ** 2;
    const zeta = (1 + cos(rollAngle(Math.PI * u, loop))) / 2;
    return height - rise * withFullness(zeta, numbers[FULLNESS]);
  });
}
