import { exp } from '../../base/index.ts';
import { addRow, clearEquations, emptyEquations, solveEquations } from '../../numeric/index.ts';

/** Where a blurred step lies along a profile. */
export interface ProfileEdge {
  /** px from the profile's zero, outwards. */
  readonly atPx: number;
  readonly sigmaPx: number;
  readonly blurPx: number;
  /** Level inside at the edge, as a share of the step; near 0 for a clean profile. */
  readonly roughness: number;
}

const UNKNOWNS = 6;
const ITERATIONS = 30;
/** px. A step of the edge's place below this is at rest: a hundredth of what a photograph can show. */
const AT_REST_PX = 0.0005;
const LEAST_BLUR_PX = 0.25;
/** Beyond this damping a step is too small to matter. */
const MOST_DAMPING = 1000000;
/** Share of the difference between the profile's two ends below which its step is none. */
const LEAST_STEP = 0.2;

/**
 * The place of the edge in a profile of brightness: a step blurred by a Gaussian, with a straight ramp on either
 * side for shading inside and soft shadow outside. Unlike a threshold, it is not drawn aside by the shadow.
 * `samples[i]` stands at `fromPx + i · stepPx`; the search starts at zero. Null when it does not settle inside the
 * profile. Method: Levenberg-Marquardt on six unknowns: two levels, place, blur, two slopes.
 */
export function fitEdgeProfile(samples: Float64Array, fromPx: number, stepPx: number): ProfileEdge | null {
  const count = samples.length;
  const inside = mean(samples, 0, Math.max(2, count >> 2));
  const outside = mean(samples, count - Math.max(2, count >> 2), count);
  const height = outside - inside;
  if (height === 0) return null;
  const profile: Profile = {
    scaled: samples.map((value) => (value - inside) / height),
    fromPx,
    stepPx,
    rows: emptyEquations(UNKNOWNS),
  };
  const toPx = fromPx + (count - 1) * stepPx;
  let now = lookAt(profile, new Float64Array([0, 1, 0, 1, 0, 0]));
  let damping = 0.01;
  let settled = false;
  for (let turn = 0; turn < ITERATIONS && !settled; turn++) {
    fillRows(profile, now, damping);
    if (!solveEquations(profile.rows)) return null;
    const trial = now.state.map((value, j) => value + profile.rows.right[j]);
    trial[2] = Math.min(toPx - 1, Math.max(fromPx + 1, trial[2]));
    trial[3] = Math.min(toPx, Math.max(LEAST_BLUR_PX, trial[3]));
    const tried = lookAt(profile, trial);
    if (tried.cost > now.cost) {
      damping *= 8;
      settled = damping > MOST_DAMPING;
      continue;
    }
    settled = Math.abs(trial[2] - now.state[2]) < AT_REST_PX;
    now = tried;
    damping = Math.max(damping / 6, 0.0001);
  }
  return settled ? edgeOf(profile, now, toPx) : null;
}

interface Profile {
  readonly scaled: Float64Array;
  readonly fromPx: number;
  readonly stepPx: number;
  readonly rows: ReturnType<typeof emptyEquations>;
}

/** The model under one state, sample by sample: how much lies beyond the edge, the bell over it, and what is left over. */
interface Look {
  readonly state: Float64Array;
  readonly share: Float64Array;
  readonly bell: Float64Array;
  readonly left: Float64Array;
  readonly cost: number;
}

function lookAt({ scaled, fromPx, stepPx }: Profile, state: Float64Array): Look {
  const [low, high, place, blur, slopeIn, slopeOut] = state;
  const count = scaled.length;
  const share = new Float64Array(count);
  const bell = new Float64Array(count);
  const left = new Float64Array(count);
  let cost = 0;
  for (let i = 0; i < count; i++) {
    const away = fromPx + i * stepPx - place;
    const u = away / blur;
    const beyond = normalShare(u);
    const density = exp(-0.5 * u * u) * DENSITY;
    const spread = blur * density;
    const model =
      low * (1 - beyond) +
      high * beyond +
      slopeIn * (away * (1 - beyond) - spread) +
      slopeOut * (away * beyond + spread);
    share[i] = beyond;
    bell[i] = density;
    left[i] = scaled[i] - model;
    cost += left[i] * left[i];
  }
  return { state, share, bell, left, cost };
}

const DENSITY = 1 / Math.sqrt(2 * Math.PI);

function edgeOf(profile: Profile, now: Look, toPx: number): ProfileEdge | null {
  const [low, high, at, blur] = now.state;
  const step = high - low;
  if (at <= profile.fromPx + 1.01 || at >= toPx - 1.01 || !(step > LEAST_STEP)) return null;
  const spread = Math.sqrt(now.cost / Math.max(1, profile.scaled.length - UNKNOWNS));
  const { rows } = profile;
  fillRows(profile, now, 0);
  rows.right.fill(0);
  rows.right[2] = 1;
  if (!solveEquations(rows)) return null;
  const variance = Math.max(0, rows.right[2]);
  // Neighbouring samples stand half a pixel apart and share pixels, so they tell about half as much.
  return { atPx: at, blurPx: blur, sigmaPx: spread * Math.sqrt(2 * variance), roughness: spread / step };
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / (to - from);
}

function fillRows({ fromPx, stepPx, rows }: Profile, now: Look, damping: number): void {
  const row = new Float64Array(UNKNOWNS);
  clearEquations(rows);
  const [low, high, place, blur, slopeIn, slopeOut] = now.state;
  for (let i = 0; i < now.left.length; i++) {
    const away = fromPx + i * stepPx - place;
    const share = now.share[i];
    const bell = now.bell[i];
    const steep = (-(high - low) * bell) / blur;
    row[0] = 1 - share;
    row[1] = share;
    row[2] = steep - slopeIn * (1 - share) - slopeOut * share;
    row[3] = (steep * away) / blur - slopeIn * bell + slopeOut * bell;
    row[4] = away * (1 - share) - blur * bell;
    row[5] = away * share + blur * bell;
    addRow(rows, row, now.left[i], 1);
  }
  for (let j = 0; j < UNKNOWNS; j++) rows.matrix[j * UNKNOWNS + j] *= 1 + damping;
}

/** Share of the normal distribution below u. Formula 7.1.26 of Abramowitz and Stegun, Handbook of Mathematical Functions, 1964. */
function normalShare(u: number): number {
  const x = Math.abs(u) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    exp(-x * x);
  return u < 0 ? 0.5 * tail : 1 - 0.5 * tail;
}
