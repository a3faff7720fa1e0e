import { type FairSpline, splineSlope, splineValue } from './fairSpline.ts';
import { fullnessGain, withFullness } from './fullness.ts';
import { type LongArch, longArchHeight, longArchSlope } from './longArch.ts';
import { rollAngle } from './rollAngle.ts';

/**
 * Arches strung along a long arch: at every y a curtate cycloid over the body width, with the fullness of the
 * place. Heights above the channel; even in x. `squaredHalfWidth` is W² over y: smooth where the ends close,
 * which W is not.
 */
export interface Loft {
  readonly longArch: LongArch;
  readonly squaredHalfWidth: FairSpline;
  readonly fullness: FairSpline;
}

/** A height and the slopes of the surface there, across (x) and along (y). */
export interface SurfacePoint {
  readonly zMm: number;
  readonly slopeX: number;
  readonly slopeY: number;
}

const FLAT: SurfacePoint = { zMm: 0, slopeX: 0, slopeY: 0 };

/** Half width of the body that the loft spans at y, mm. */
export function bodyHalfWidth(loft: Loft, yMm: number): number {
  return Math.sqrt(Math.max(0, splineValue(loft.squaredHalfWidth, yMm)));
}

/** q of the cycloid at y: π × rise / (2 W); it loops from 1 on. */
export function loopRatio(loft: Loft, yMm: number): number {
  const rise = longArchHeight(loft.longArch, yMm);
  return rise > 0 ? (Math.PI * rise) / (2 * bodyHalfWidth(loft, yMm)) : 0;
}

/**
 * The loft at (x, y): height above the channel and slopes, continuous together; 0 beyond the body width and
 * beyond the ends of the long arch. Promises {@link loopRatio} < 1 along the body, which the maker of the loft checks.
 */
export function loftAt(loft: Loft, xMm: number, yMm: number): SurfacePoint {
  const width = bodyHalfWidth(loft, yMm);
  const rise = longArchHeight(loft.longArch, yMm);
  const u = Math.abs(xMm) / width;
  if (!(rise > 0 && u < 1)) return FLAT;
  const riseSlope = longArchSlope(loft.longArch, yMm);
  const widthSlope = splineSlope(loft.squaredHalfWidth, yMm) / (2 * width);
  const f = splineValue(loft.fullness, yMm);
  const q = (Math.PI * rise) / (2 * width);
  const psi = rollAngle(Math.PI * u, q);
  const zeta = (1 + Math.cos(psi)) / 2;
  // ψ + q sin ψ = π u, differentiated: once by u, once by q.
  const turn = 1 + q * Math.cos(psi);
  const zetaByU = (-Math.PI * Math.sin(psi)) / (2 * turn);
  const zetaByQ = Math.sin(psi) ** 2 / (2 * turn);
  const along = (-zetaByU * u * widthSlope) / width + zetaByQ * q * (riseSlope / rise - widthSlope / width);
  const gain = fullnessGain(zeta, f);
  return {
    zMm: rise * withFullness(zeta, f),
    slopeX: (Math.sign(xMm) * rise * gain * zetaByU) / width || 0,
    slopeY:
      riseSlope * withFullness(zeta, f) +
      rise * (gain * along + 4 * splineSlope(loft.fullness, yMm) * zeta * (1 - zeta)),
  };
}
