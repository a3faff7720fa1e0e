const QUARTER = Math.PI / 2;
/** What Math.PI / 2 lacks of a quarter turn. */
const QUARTER_REST = 6.123233995736766e-17;

/** Arctangents of 0, 1/8 … 8/8, and what rounding them lost. */
const STEPS = 8;
const STEP_ARCS = new Float64Array([
  0, 0.12435499454676144, 0.24497866312686414, 0.35877067027057225, 0.4636476090008061, 0.5585993153435624,
  0.6435011087932844, 0.7188299996216245, 0.7853981633974483,
]);
const STEP_RESTS = new Float64Array([
  0, -3.1253241424539383e-18, 1.0698755618734451e-17, -2.4623815582638635e-17, 2.2698777452961687e-17,
  -5.4556305485916264e-18, 1.5834785051444286e-17, -2.1478388444456983e-17, 3.061616997868383e-17,
]);

/** The angle in rad, from a quarter turn back to a quarter turn on, whose tangent is `x`, to one and a half units in the last place. */
export function atan(x: number): number {
  if (x < 0) return -arcOf(-x);
  return x === 0 ? x : arcOf(x);
}

/**
 * The direction of a place, in rad from the x axis, within half a turn either way; signs of zeros count as
 * `Math.atan2` has them. To two units in the last place.
 */
export function atan2(y: number, x: number): number {
  const over = y < 0 ? -y : y;
  const beside = x < 0 ? -x : x;
  const isSteep = over > beside;
  const within = withinEighth(over === beside ? Math.sign(over) : isSteep ? beside / over : over / beside);
  const isBack = x < 0 || Object.is(x, -0);
  const arc = isSteep ? fromQuarter(within, isBack) : isBack ? Math.PI - (within - 2 * QUARTER_REST) : within;
  return y < 0 || Object.is(y, -0) ? -arc : arc;
}

/** The angle in rad, within a quarter turn either way, whose sine is `x`, to three units in the last place; NaN where there is none. */
export function asin(x: number): number {
  return atan2(x, Math.sqrt((1 - x) * (1 + x)));
}

/** The angle in rad, from none to half a turn, whose cosine is `x`, to three units in the last place; NaN where there is none. */
export function acos(x: number): number {
  return atan2(Math.sqrt((1 - x) * (1 + x)), x);
}

/** For `x` of 0 or more. */
function arcOf(x: number): number {
  return x > 1 ? fromQuarter(withinEighth(1 / x), false) : withinEighth(x);
}

function fromQuarter(arc: number, isBack: boolean): number {
  return isBack ? QUARTER + (arc + QUARTER_REST) : QUARTER - (arc - QUARTER_REST);
}

/** For `x` from 0 to 1: the nearest step's arc, and a short series for what lies between. */
function withinEighth(x: number): number {
  const step = Math.round(STEPS * x);
  const tangent = step / STEPS;
  const t = (x - tangent) / (1 + x * tangent);
  const z = t * t;
  const w = z * z;
  const far = -1 / 11 + z * (1 / 13) + w * (-1 / 15);
  const tail = z * (-1 / 3 + z * (1 / 5) + w * (-1 / 7 + z * (1 / 9) + w * far));
  return (STEP_ARCS[step] as number) + ((STEP_RESTS[step] as number) + t * tail + t);
}
