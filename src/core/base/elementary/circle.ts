/** A quarter turn in rad, in three parts: whole multiples of the first two, to 2^20, are exact. */
const QUARTER_A = 1.5707963267341256;
const QUARTER_B = 6.077100506303966e-11;
const QUARTER_C = 2.0222662487959506e-21;
const QUARTERS_PER_RAD = 0.6366197723675814;
const EIGHTH = Math.PI / 4;
/** rad. From here on whole turns are taken off first. */
const FAR_ROUND = 1_000_000;

/** Taylor's coefficients: from x^3 on and from x^4 on; the first one left out is below 2^-60 of the whole within an eighth of a turn. */
const S3 = -1 / 6;
const S5 = 1 / 120;
const S7 = -1 / 5040;
const S9 = 1 / 362_880;
const S11 = -1 / 39_916_800;
const S13 = 1 / 6_227_020_800;
const S15 = -1 / 1_307_674_368_000;
const S17 = 1 / 355_687_428_096_000;
const C4 = 1 / 24;
const C6 = -1 / 720;
const C8 = 1 / 40_320;
const C10 = -1 / 3_628_800;
const C12 = 1 / 479_001_600;
const C14 = -1 / 87_178_291_200;
const C16 = 1 / 20_922_789_888_000;
const C18 = -1 / 6_402_373_705_728_000;

/** What is left of an angle beside its whole quarters, and what rounding that lost: in a row of numbers, so that no call allocates. */
const rest = new Float64Array(2);
const LEFT = 0;
const LOST = 1;

/** Sine of an angle in rad, to one unit in the last place up to a million rad. */
export function sin(x: number): number {
  if (x <= EIGHTH && x >= -EIGHTH) return sineOf(x, 0);
  const quarter = withoutQuarters(x);
  const size =
    quarter & 1
      ? cosineOf(rest[LEFT] as number, rest[LOST] as number)
      : sineOf(rest[LEFT] as number, rest[LOST] as number);
  return quarter & 2 ? -size : size;
}

/** Cosine of an angle in rad, to one unit in the last place up to a million rad. */
export function cos(x: number): number {
  if (x <= EIGHTH && x >= -EIGHTH) return cosineOf(x, 0);
  const quarter = withoutQuarters(x);
  const size =
    quarter & 1
      ? sineOf(rest[LEFT] as number, rest[LOST] as number)
      : cosineOf(rest[LEFT] as number, rest[LOST] as number);
  return (quarter + 1) & 2 ? -size : size;
}

/** Tangent of an angle in rad, to two and a half units in the last place up to a million rad. */
export function tan(x: number): number {
  if (x <= EIGHTH && x >= -EIGHTH) return sineOf(x, 0) / cosineOf(x, 0);
  const quarter = withoutQuarters(x);
  const across = sineOf(rest[LEFT] as number, rest[LOST] as number);
  const along = cosineOf(rest[LEFT] as number, rest[LOST] as number);
  return quarter & 1 ? -along / across : across / along;
}

/** Takes the nearest whole quarters off an angle: sets `rest`, gives the quarters modulo 4. */
function withoutQuarters(angle: number): number {
  const x = angle > FAR_ROUND || angle < -FAR_ROUND ? angle % (2 * Math.PI) : angle;
  const quarters = Math.round(x * QUARTERS_PER_RAD);
  const coarse = x - quarters * QUARTER_A;
  const fine = quarters * QUARTER_B;
  const near = coarse - fine;
  const below = coarse - near - fine - quarters * QUARTER_C;
  const left = near + below;
  rest[LEFT] = left;
  rest[LOST] = near - left + below;
  return quarters & 3;
}

function sineOf(x: number, lost: number): number {
  const z = x * x;
  const w = z * z;
  const tail = S3 + z * S5 + w * (S7 + z * S9 + w * (S11 + z * S13 + w * (S15 + z * S17)));
  return lost === 0 ? x + x * z * tail : x + (x * z * tail + lost * (1 - z / 2));
}

function cosineOf(x: number, lost: number): number {
  const z = x * x;
  const half = z / 2;
  const near = 1 - half;
  const w = z * z;
  const tail = C4 + z * C6 + w * (C8 + z * C10 + w * (C12 + z * C14 + w * (C16 + z * C18)));
  return near + (1 - near - half + (z * z * tail - x * lost));
}
