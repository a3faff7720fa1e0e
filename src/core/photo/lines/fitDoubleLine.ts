import { exp } from '../../base/index.ts';
import { solveDefinite, zeroMatrix } from '../../numeric/index.ts';

/** Two dark lines on a sloping ground, as fitted to a profile; mm from the profile's zero. */
export interface DoubleLine {
  readonly middleMm: number;
  /** One standard deviation of the middle, from what the model leaves over. */
  readonly sigmaMm: number;
  /** Middle of one dark line to middle of the other, and the spread of each. */
  readonly widthMm: number;
  readonly blurMm: number;
  /** How much darker the paler of the two is than the ground, as a share of it. */
  readonly contrast: number;
}

/** What is known beforehand of the two lines; both free in a first fit. */
export interface LineShape {
  readonly widthMm: number;
  readonly blurMm: number;
}

const ROUNDS = 40;
/** mm. Moves of middle, width and blur below this are at rest. */
const AT_REST_MM = 0.0005;
const FARTHEST_MM = 0.6;
const [LEAST_BLUR_MM, MOST_BLUR_MM] = [0.06, 0.6];
const [LEAST_WIDTH_MM, MOST_WIDTH_MM] = [0.3, 3];
/** Neighbouring samples share pixels, so they tell about half as much. */
const SHARED_PIXELS = 2;

/**
 * The two dark lines in a profile `samples[i]` at `fromMm + i · stepMm`; null where they do not settle or either is not
 * dark. Their distance and blur stay as `shape` says unless `free`. Method: Gauss-Newton on level, slope, two depths,
 * the light of the strip between them, middle, and where free width and blur.
 */
export function fitDoubleLine(
  samples: Float64Array,
  fromMm: number,
  stepMm: number,
  shape: LineShape,
  free: boolean,
): DoubleLine | null {
  const unknowns = free ? 8 : 6;
  const state = startState(samples, shape);
  let settled = false;
  for (let round = 0; round < ROUNDS && !settled; round++) {
    const { matrix, right } = equations(samples, fromMm, stepMm, state, unknowns);
    for (let k = 0; k < unknowns; k++) matrix[k][k] *= 1 + DAMPING;
    const step = solveDefinite(matrix, right);
    if (step === undefined) return null;
    for (let k = 0; k < unknowns; k++) state[k] += step[k];
    state[6] = Math.min(MOST_WIDTH_MM, Math.max(LEAST_WIDTH_MM, state[6]));
    state[7] = Math.min(MOST_BLUR_MM, Math.max(LEAST_BLUR_MM, state[7]));
    settled = step.subarray(5).every((move) => Math.abs(move) < AT_REST_MM);
    if (!(Math.abs(state[5]) < FARTHEST_MM)) return null;
  }
  return settled && state[2] > 0 && state[3] > 0 && state[0] > 0
    ? lineOf(samples, fromMm, stepMm, state, unknowns)
    : null;
}

const DAMPING = 0.001;
/** The strip between the dark lines is a bell whose spread is the lines' distance over this. */
const STRIP_SHARE = 4;

function startState(samples: Float64Array, shape: LineShape): Float64Array {
  const level = (samples[0] + samples[samples.length - 1]) / 2;
  const depth = Math.max(level / 10, level - samples.reduce((least, value) => Math.min(least, value)));
  return Float64Array.of(level, 0, depth, depth, 0, 0, shape.widthMm, shape.blurMm);
}

function lineOf(
  samples: Float64Array,
  fromMm: number,
  stepMm: number,
  state: Float64Array,
  unknowns: number,
): DoubleLine | null {
  const { matrix, squares } = equations(samples, fromMm, stepMm, state, unknowns);
  const unit = new Float64Array(unknowns);
  unit[5] = 1;
  const column = solveDefinite(matrix, unit);
  if (column === undefined) return null;
  const variance = (SHARED_PIXELS * squares * column[5]) / Math.max(1, samples.length - unknowns);
  return {
    middleMm: state[5],
    sigmaMm: Math.sqrt(Math.max(0, variance)),
    widthMm: state[6],
    blurMm: state[7],
    contrast: Math.min(state[2], state[3]) / state[0],
  };
}

function equations(
  samples: Float64Array,
  fromMm: number,
  stepMm: number,
  state: Float64Array,
  unknowns: number,
): { matrix: Float64Array[]; right: Float64Array; squares: number } {
  const [level, slope, outer, inner, strip, middle, width, blur] = state;
  const matrix = zeroMatrix(unknowns, unknowns);
  const right = new Float64Array(unknowns);
  const row = new Float64Array(8);
  const narrow = Math.max(blur, width / STRIP_SHARE);
  let squares = 0;
  for (let i = 0; i < samples.length; i++) {
    const u = fromMm + i * stepMm;
    const a = (u - middle + width / 2) / blur;
    const b = (u - middle - width / 2) / blur;
    const bellA = exp(-(a * a) / 2);
    const bellB = exp(-(b * b) / 2);
    const c = (u - middle) / narrow;
    const bellC = exp(-(c * c) / 2);
    const rest = samples[i] - (level + slope * u - outer * bellA - inner * bellB + strip * bellC);
    const slopeA = (outer * bellA * a) / blur;
    const slopeB = (inner * bellB * b) / blur;
    const slopeC = (strip * bellC * c) / narrow;
    row[0] = 1;
    row[1] = u;
    row[2] = -bellA;
    row[3] = -bellB;
    row[4] = bellC;
    row[5] = slopeC - slopeA - slopeB;
    row[6] = (slopeA - slopeB) / 2;
    row[7] = -a * slopeA - b * slopeB;
    squares += rest * rest;
    for (let k = 0; k < unknowns; k++) {
      right[k] += row[k] * rest;
      for (let l = 0; l < unknowns; l++) matrix[k][l] += row[k] * row[l];
    }
  }
  return { matrix, right, squares };
}
