/** The logarithm of 2 in two parts: whole multiples of the first, as far as exponents go, are exact. */
const LN2_A = 0.6931471803691238;
const LN2_B = 1.9082149292705877e-10;
const LARGEST_LOG = 709.782712893384;
const SMALLEST_LOG = -745.1332191019412;
const LEAST_EXPONENT = -1074;
/** What is smaller holds its exponent in fewer digits; raised by so many twos it does not. */
const LEAST_NORMAL = 2.2250738585072014e-308;
const LIFT = 54;
/** Below this, e^x - 1 is summed without its 1. */
const NEAR_ZERO = 0.35;
/** From here on the hyperbolic tangent is 1 to the last place. */
const FLAT_TANH = 22;
/** Whole powers up to this are multiplied out. */
const MULTIPLIED = 64;
const HALVES_THREE = 1.5;

/** 2 to the -1074th … 1023rd, by doubling. */
const POWERS_OF_TWO = powersOfTwo();

const number = new Float64Array(1);
const words = new Uint32Array(number.buffer);
number[0] = 1;
/** Which of the two words holds sign and exponent. */
const UPPER = words[1] === 0 ? 0 : 1;

/** e to the `x`, to one unit in the last place. */
export function exp(x: number): number {
  if (x > LARGEST_LOG) return Number.POSITIVE_INFINITY;
  if (x < SMALLEST_LOG) return 0;
  const twos = Math.round(x * Math.LOG2E);
  const coarse = x - twos * LN2_A;
  const fine = twos * LN2_B;
  const r = coarse - fine;
  return timesTwos(1 + (r + (r * r * beyondLinear(r) + (coarse - r - fine))), twos);
}

/** e to the `x`, less 1: to four units in the last place, where `x` is small, too. */
export function expm1(x: number): number {
  return x < NEAR_ZERO && x > -NEAR_ZERO ? x + x * x * beyondLinear(x) : exp(x) - 1;
}

/** The natural logarithm, to one unit in the last place; NaN of what is below 0. */
export function log(x: number): number {
  if (!(x > 0) || x === Number.POSITIVE_INFINITY)
    return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  const lift = x < LEAST_NORMAL ? LIFT : 0;
  const whole = lift === 0 ? x : timesTwos(x, lift);
  number[0] = whole;
  let twos = ((words[UPPER] as number) >>> 20) - 1023;
  let share = whole * (POWERS_OF_TWO[-twos - LEAST_EXPONENT] as number);
  twos -= lift;
  if (share > Math.SQRT2) {
    share /= 2;
    twos += 1;
  }
  const f = share - 1;
  const s = f / (2 + f);
  const half = (f * f) / 2;
  return twos * LN2_A - (half - (s * (half + logTail(s * s)) + twos * LN2_B) - f);
}

/** The hyperbolic tangent, to three units in the last place. */
export function tanh(x: number): number {
  const size = x < 0 ? -x : x;
  const grown = size > FLAT_TANH ? 0 : expm1(2 * size);
  const risen = size > FLAT_TANH ? 1 : grown / (grown + 2);
  return x < 0 ? -risen : risen;
}

/** The cube root, to one unit in the last place. */
export function cbrt(x: number): number {
  if (x === 0 || !Number.isFinite(x)) return x;
  const size = x < 0 ? -x : x;
  const near = exp(log(size) / 3);
  const root = near - (near - size / (near * near)) / 3;
  return x < 0 ? -root : root;
}

/**
 * `base` to a power. Whole powers up to the 64th are multiplied out, and so exact where their products are; others are of a
 * base of 0 or more (NaN below) and lose a last place and a quarter for each factor of e in the result, and two more.
 */
export function power(base: number, exponent: number): number {
  if (Number.isInteger(exponent) && Math.abs(exponent) <= MULTIPLIED) {
    const whole = multiplied(base, Math.abs(exponent));
    return exponent < 0 ? 1 / whole : whole;
  }
  if (exponent === HALVES_THREE) return base * Math.sqrt(base);
  return base === 0 ? (exponent > 0 ? 0 : Number.POSITIVE_INFINITY) : exp(exponent * log(base));
}

function multiplied(base: number, times: number): number {
  if (times < 2) return times === 0 ? 1 : base;
  if (times === 3) return base * base * base;
  const root = multiplied(base * base, times >> 1);
  return times & 1 ? root * base : root;
}

/** (e^r - 1 - r) / r², by Taylor's series, for `r` within 0.35 either way: the first term left out is below 2^-60. */
function beyondLinear(r: number): number {
  const q = r * r;
  const far =
    1 / 40_320 +
    r * (1 / 362_880) +
    q *
      (1 / 3_628_800 +
        r * (1 / 39_916_800) +
        q * (1 / 479_001_600 + r * (1 / 6_227_020_800) + q * (1 / 87_178_291_200)));
  return 1 / 2 + r * (1 / 6) + q * (1 / 24 + r * (1 / 120) + q * (1 / 720 + r * (1 / 5040) + q * far));
}

/** The series of 2 artanh(s) / s - 2, by z = s², for `s` up to 0.172. */
function logTail(z: number): number {
  const w = z * z;
  const far = 2 / 15 + z * (2 / 17) + w * (2 / 19 + z * (2 / 21) + w * (2 / 23));
  return z * (2 / 3 + z * (2 / 5) + w * (2 / 7 + z * (2 / 9) + w * (2 / 11 + z * (2 / 13) + w * far)));
}

/** In two steps where one power of two does not reach. */
function timesTwos(value: number, twos: number): number {
  const first = twos > 1000 || twos < -1000 ? Math.trunc(twos / 2) : twos;
  const scaled = value * (POWERS_OF_TWO[first - LEAST_EXPONENT] as number);
  return first === twos ? scaled : scaled * (POWERS_OF_TWO[twos - first - LEAST_EXPONENT] as number);
}

function powersOfTwo(): Float64Array {
  const powers = new Float64Array(1024 - LEAST_EXPONENT);
  powers[0] = Number.MIN_VALUE;
  for (let i = 1; i < powers.length; i++) powers[i] = 2 * (powers[i - 1] as number);
  return powers;
}
