import { cos, power, sin } from '../base/index.ts';
import { type FairSpline, splineBend, splineSlope, splineValue } from './fairSpline.ts';
import { fullnessGain, withFullness } from './fullness.ts';
import { type LongArch, longArchBend, longArchHeight, longArchSlope } from './longArch.ts';
import { type BlendedShape, blendedAt, type MeasuredShape, shapeAt, shapeOf } from './measuredShape.ts';
import { rollAngle } from './rollAngle.ts';
import type { SurfaceShape } from './surfaceShape.ts';

/**
 * Arches strung along a long arch: at every y a curtate cycloid over the body width, with the fullness of the
 * place. Heights above the channel; even in x. `squaredHalfWidth` is W² over y: smooth where the ends close,
 * which W is not.
 */
export interface Loft {
  readonly longArch: LongArch;
  readonly squaredHalfWidth: FairSpline;
  readonly fullness: FairSpline;
  /** What was measured beyond these; absent where nothing was. */
  readonly measured?: MeasuredShape;
}

/** A height and the slopes of the surface there, across (x) and along (y). */
export interface SurfacePoint {
  readonly zMm: number;
  readonly slopeX: number;
  readonly slopeY: number;
}

const FLAT: SurfacePoint = { zMm: 0, slopeX: 0, slopeY: 0 };

/** The arch across a loft at one y: half width, rise, fullness, and q of its cycloid. */
export interface LoftRow {
  readonly widthMm: number;
  readonly riseMm: number;
  readonly fullness: number;
  readonly loopRatio: number;
  /** What measured sections have beyond cycloid and fullness here, a share of the rise over the share of the half width. */
  readonly beyond: FairSpline | null;
}

/** Half width of the body that the loft spans at y, mm. */
export function bodyHalfWidth(loft: Loft, yMm: number): number {
  return Math.sqrt(Math.max(0, splineValue(loft.squaredHalfWidth, yMm)));
}

/** q of the cycloid at y: π × rise / (2 W); it loops from 1 on. */
export function loopRatio(loft: Loft, yMm: number): number {
  return loftRow(loft, yMm).loopRatio;
}

/** The arch across at y; asked once for all the places of a row. */
export function loftRow(loft: Loft, yMm: number): LoftRow {
  const widthMm = bodyHalfWidth(loft, yMm);
  const riseMm = loftCrest(loft, yMm);
  const fullness = splineValue(loft.fullness, yMm);
  const beyond = loft.measured ? shapeAt(loft.measured.sections, yMm) : null;
  return {
    widthMm,
    riseMm,
    fullness,
    loopRatio: riseMm > 0 ? (Math.PI * riseMm) / (2 * widthMm) : 0,
    beyond,
  };
}

/** Height over the channel of the cycloid's crest at y: the long arch, lifted to what was measured along it. */
function loftCrest({ longArch, measured }: Loft, yMm: number): number {
  const arch = longArchHeight(longArch, yMm);
  return measured && arch > 0 ? arch + splineValue(measured.lift, yMm) : arch;
}

/**
 * Share of the half width beyond which the loft is 0. Up to there it leaves its lowest line with the bend that it arrived with and
 * comes back to 0, a few hundredths of a millimetre high at most: cut off at that line it would break the surface by a fraction of a degree
 * wherever the channel crosses it.
 */
const BRIM = 1.1;

/** Height of a loft above the channel at a place of a row, mm: that of {@link loftAt}, to the last bit. */
export function loftHeight(row: LoftRow, xMm: number): number {
  const u = Math.abs(xMm) / row.widthMm;
  if (!(row.riseMm > 0 && u < BRIM)) return 0;
  const { loopRatio: q } = row;
  const zeta = u < 1 ? (1 + cos(rollAngle(Math.PI * u, q))) / 2 : brimShape(u, q).value;
  const beyond = row.beyond ? beyondShape(row.beyond, u).value : 0;
  return row.riseMm * (withFullness(zeta, row.fullness) + beyond);
}

/**
 * The loft at (x, y): height above the channel, slopes and bends across, continuous together; 0 beyond the body width and its brim and
 * beyond the ends of the long arch. Promises {@link loopRatio} < 1 along the body, which the maker of the loft checks.
 */
export function loftAt(loft: Loft, xMm: number, yMm: number): SurfacePoint {
  const { widthMm: width, riseMm: rise, fullness: f, loopRatio: q } = loftRow(loft, yMm);
  const u = Math.abs(xMm) / width;
  if (!(rise > 0 && u < BRIM)) return FLAT;
  const { measured } = loft;
  const riseSlope = longArchSlope(loft.longArch, yMm) + (measured ? splineSlope(measured.lift, yMm) : 0);
  const widthSlope = splineSlope(loft.squaredHalfWidth, yMm) / (2 * width);
  const { value: zeta, byU: zetaByU, byQ: zetaByQ } = u < 1 ? unitSlopes(u, q) : brimShape(u, q);
  const along = (-zetaByU * u * widthSlope) / width + zetaByQ * q * (riseSlope / rise - widthSlope / width);
  const gain = fullnessGain(zeta, f);
  const beyond = beyondAlong(measured && blendedAt(measured.sections, yMm), u, (-u * widthSlope) / width);
  const height = withFullness(zeta, f) + beyond.value;
  return {
    zMm: rise * height,
    slopeX: (Math.sign(xMm) * rise * (gain * zetaByU + beyond.byU)) / width || 0,
    slopeY:
      riseSlope * height +
      rise * (gain * along + 4 * splineSlope(loft.fullness, yMm) * zeta * (1 - zeta) + beyond.byY),
  };
}

/** {@link loftAt} with its second derivatives; where the long arch passes from one arc to the next, those of one side. */
export function loftShape(loft: Loft, xMm: number, yMm: number): SurfaceShape {
  const { widthMm: w, riseMm: rise, fullness: f, loopRatio: q } = loftRow(loft, yMm);
  const u = Math.abs(xMm) / w;
  if (!(rise > 0 && u < BRIM)) return { ...FLAT, bendXX: 0, bendXY: 0, bendYY: 0 };
  const square = splineSlope(loft.squaredHalfWidth, yMm);
  const widthRate = square / (2 * w * w);
  const widthBendRate = splineBend(loft.squaredHalfWidth, yMm) / (2 * w * w) - widthRate ** 2;
  const { measured } = loft;
  const riseSlope = longArchSlope(loft.longArch, yMm) + (measured ? splineSlope(measured.lift, yMm) : 0);
  const riseBend = longArchBend(loft.longArch, yMm) + (measured ? splineBend(measured.lift, yMm) : 0);
  const zeta = u < 1 ? unitArch(u, q) : brimShape(u, q);
  // u and q along the body.
  const uY = -u * widthRate;
  const uYY = u * (2 * widthRate ** 2 - widthBendRate);
  const qRate = riseSlope / rise - widthRate;
  const qY = q * qRate;
  const qYY = q * (qRate ** 2 + riseBend / rise - (riseSlope / rise) ** 2 - widthBendRate + widthRate ** 2);
  const zX = zeta.byU / w;
  const zY = zeta.byU * uY + zeta.byQ * qY;
  const zXX = zeta.byUU / (w * w);
  const zXY = (zeta.byUU * uY + zeta.byUQ * qY - zeta.byU * widthRate) / w;
  const zYY =
    zeta.byUU * uY ** 2 + 2 * zeta.byUQ * uY * qY + zeta.byQQ * qY ** 2 + zeta.byU * uYY + zeta.byQ * qYY;
  const [fY, fYY] = [splineSlope(loft.fullness, yMm), splineBend(loft.fullness, yMm)];
  const gain = fullnessGain(zeta.value, f);
  const fuller = 4 * zeta.value * (1 - zeta.value);
  const fullerBy = 4 * (1 - 2 * zeta.value);
  const beyond = beyondAlong(measured && blendedAt(measured.sections, yMm), u, uY);
  const height = withFullness(zeta.value, f) + beyond.value;
  const hX = gain * zX + beyond.byU / w;
  const hY = gain * zY + fuller * fY + beyond.byY;
  const hXX = gain * zXX - 8 * f * zX ** 2 + beyond.byUU / (w * w);
  const hXY = gain * zXY - 8 * f * zX * zY + fullerBy * zX * fY + (beyond.byUY - beyond.byU * widthRate) / w;
  const hYY =
    gain * zYY - 8 * f * zY ** 2 + 2 * fullerBy * zY * fY + fuller * fYY + beyond.byYY + beyond.byU * uYY;
  const side = Math.sign(xMm);
  return {
    zMm: rise * height,
    slopeX: side * rise * hX || 0,
    slopeY: riseSlope * height + rise * hY,
    bendXX: rise * hXX,
    bendXY: side * (riseSlope * hX + rise * hXY) || 0,
    bendYY: riseBend * height + 2 * riseSlope * hY + rise * hYY,
  };
}

/** ζ(u; q) of a unit cycloid and its slopes: ψ + q sin ψ = π u differentiated once by u, once by q. */
function unitSlopes(u: number, q: number) {
  const psi = rollAngle(Math.PI * u, q);
  const [sine, cosine] = [sin(psi), cos(psi)];
  const turn = 1 + q * cosine;
  return {
    value: (1 + cosine) / 2,
    byU: (-Math.PI * sine) / (2 * turn),
    byQ: sine ** 2 / (2 * turn),
  };
}

const NOTHING_BEYOND = { value: 0, byU: 0, byY: 0, byUU: 0, byUY: 0, byYY: 0 };

/** What measured sections have beyond, where the share u of the half width changes by `uY` along the body; `byYY` but for how u bends. */
function beyondAlong(blend: BlendedShape | null | undefined, u: number, uY: number): typeof NOTHING_BEYOND {
  if (!blend) return NOTHING_BEYOND;
  const shape = beyondShape(blend.shape, u);
  const change = beyondShape(blend.change, u);
  const bend = beyondShape(blend.bend, u);
  return {
    value: shape.value,
    byU: shape.byU,
    byY: change.value + shape.byU * uY,
    byUU: shape.byUU,
    byUY: change.byU + shape.byUU * uY,
    byYY: bend.value + 2 * change.byU * uY + shape.byUU * uY ** 2,
  };
}

/** A measured shape, carried over the brim as the cycloid is. */
function beyondShape(shape: FairSpline, u: number) {
  return u < 1 ? shapeOf(shape, u) : brim(u, shapeOf(shape, 1).byUU / 2);
}

/** {@link unitArch} beyond its lowest line: with s = u − 1 and w the brim's width, the cycloid's own bend there times s² (1 − s/w)³ / 2. */
function brimShape(u: number, q: number) {
  const { value, byU, byUU } = brim(u, Math.PI ** 2 / (4 * (1 - q) ** 2));
  return {
    value,
    byU,
    byQ: (2 * value) / (1 - q),
    byUU,
    byUQ: (2 * byU) / (1 - q),
    byQQ: (6 * value) / (1 - q) ** 2,
  };
}

/** Beyond a lowest line that was reached with twice this second derivative. */
function brim(u: number, halfBend: number) {
  const [s, w] = [u - 1, BRIM - 1];
  const left = 1 - s / w;
  return {
    value: halfBend * s ** 2 * power(left, 3),
    byU: halfBend * s * left ** 2 * (2 * left - (3 * s) / w),
    byUU: halfBend * left * (2 * left ** 2 - (12 * s * left) / w + (6 * s ** 2) / w ** 2),
  };
}

/** ζ(u; q) of a unit cycloid and its derivatives: ψ + q sin ψ = π u differentiated once and twice. */
function unitArch(u: number, q: number) {
  const psi = rollAngle(Math.PI * u, q);
  const [sine, cosine] = [sin(psi), cos(psi)];
  const turn = 1 + q * cosine;
  const [byU, byQ] = [Math.PI / turn, -sine / turn];
  const byUU = (q * sine * byU ** 2) / turn;
  const byUQ = (-byU * (cosine - q * sine * byQ)) / turn;
  const byQQ = (-byQ * (2 * cosine - q * sine * byQ)) / turn;
  const [slope, bend] = [-sine / 2, -cosine / 2];
  return {
    value: (1 + cosine) / 2,
    byU: slope * byU,
    byQ: slope * byQ,
    byUU: bend * byU ** 2 + slope * byUU,
    byUQ: bend * byU * byQ + slope * byUQ,
    byQQ: bend * byQ ** 2 + slope * byQQ,
  };
}
