import { cos, exp, hypot, log, sin } from '../../base/index.ts';
import { SHAPE_NUMBERS, TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';

/**
 * How the template lies in a picture: one list of 35 numbers. The first 29 are the shape; then the photo
 * place of the body's middle (x, y, px), ln of px per template mm, the angle of the centre line (0 = neck up,
 * growing clockwise as seen), skew, and the sideways keystone x' = x (1 + a x) with a in 1/mm.
 */
export type BodyFit = Float64Array;

export const FIT_NUMBERS = SHAPE_NUMBERS + 6;
export const AT_X = SHAPE_NUMBERS;
export const AT_Y = SHAPE_NUMBERS + 1;
export const AT_LN_SCALE = SHAPE_NUMBERS + 2;
export const AT_ANGLE = SHAPE_NUMBERS + 3;
export const AT_SKEW = SHAPE_NUMBERS + 4;
export const AT_KEYSTONE = SHAPE_NUMBERS + 5;

const HALF_LENGTH_MM = TEMPLATE_LENGTH_MM / 2;

/** The affine part of a seat, unpacked once for a loop. */
export interface Seat {
  readonly x: number;
  readonly y: number;
  readonly pxPerMm: number;
  readonly cosine: number;
  readonly sine: number;
  readonly skew: number;
  readonly keystone: number;
}

export function seatOf(fit: BodyFit): Seat {
  const angle = fit[AT_ANGLE] as number;
  return {
    x: fit[AT_X] as number,
    y: fit[AT_Y] as number,
    pxPerMm: exp(fit[AT_LN_SCALE] as number),
    cosine: cos(angle),
    sine: sin(angle),
    skew: fit[AT_SKEW] as number,
    keystone: fit[AT_KEYSTONE] as number,
  };
}

/** Body mm (x right, y up) to photo px: [x, y] written into `into` at `to`. */
export function bodyToPhoto(seat: Seat, x: number, y: number, into: Float64Array, to: number): void {
  const up = y - HALF_LENGTH_MM;
  const across = x * (1 + seat.keystone * x) + seat.skew * up;
  into[to] = seat.x + seat.pxPerMm * (across * seat.cosine + up * seat.sine);
  into[to + 1] = seat.y + seat.pxPerMm * (across * seat.sine - up * seat.cosine);
}

/** The unit outward normal in photo px of a place whose normal in the body frame is (nx, ny). */
export function normalToPhoto(
  seat: Seat,
  x: number,
  nx: number,
  ny: number,
  into: Float64Array,
  to: number,
): void {
  const along = -ny * (1 + 2 * seat.keystone * x) + seat.skew * nx;
  const tangentX = along * seat.cosine + nx * seat.sine;
  const tangentY = along * seat.sine - nx * seat.cosine;
  const length = hypot(tangentX, tangentY) || 1;
  into[to] = -tangentY / length;
  into[to + 1] = tangentX / length;
}

/** Photo px to body mm, the sideways keystone left out, for marking regions only: x = x0 + xx px + xy py, y likewise. */
export interface BodyAffine {
  readonly x0: number;
  readonly xx: number;
  readonly xy: number;
  readonly y0: number;
  readonly yx: number;
  readonly yy: number;
}

export function bodyAffine({ x, y, pxPerMm, cosine, sine, skew }: Seat): BodyAffine {
  const yx = sine / pxPerMm;
  const yy = -cosine / pxPerMm;
  const xx = cosine / pxPerMm - skew * yx;
  const xy = sine / pxPerMm - skew * yy;
  return { xx, xy, x0: -xx * x - xy * y, yx, yy, y0: HALF_LENGTH_MM - yx * x - yy * y };
}

/** The same seat in a picture whose pixels are `factor` times as many along a side. */
export function rescaleFit(fit: BodyFit, factor: number): BodyFit {
  const out = Float64Array.from(fit);
  out[AT_X] = ((fit[AT_X] as number) + 0.5) * factor - 0.5;
  out[AT_Y] = ((fit[AT_Y] as number) + 0.5) * factor - 0.5;
  out[AT_LN_SCALE] = (fit[AT_LN_SCALE] as number) + log(factor);
  return out;
}
