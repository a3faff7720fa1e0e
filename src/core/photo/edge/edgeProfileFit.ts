import { addRow, clearEquations, emptyEquations, solveEquations } from '../body/normalEquations.ts';

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

/**
 * The place of the edge in a profile of brightness: a step blurred by a Gaussian, with a straight ramp on either
 * side for shading inside and soft shadow outside. Unlike a threshold, it is not drawn aside by the shadow.
 * `samples[i]` stands at `fromPx + i · stepPx`. Null when it does not settle inside the profile.
 * Method: Levenberg-Marquardt on six unknowns: two levels, place, blur, two slopes.
 */
export function fitEdgeProfile(samples: Float64Array, fromPx: number, stepPx: number): ProfileEdge | null {
  const count = samples.length;
  const inside = mean(samples, 0, Math.max(2, count >> 2));
  const outside = mean(samples, count - Math.max(2, count >> 2), count);
  const height = outside - inside;
  if (height === 0) return null;
  const scaled = samples.map((value) => (value - inside) / height);
  const state = new Float64Array([0, 1, 0, 1, 0, 0]);
  const reachIn = -fromPx;
  const reachOut = fromPx + (count - 1) * stepPx;
  const rows = emptyEquations(UNKNOWNS);
  const trial = new Float64Array(UNKNOWNS);
  let damping = 0.01;
  let cost = costOf(scaled, fromPx, stepPx, state);
  let settled = false;
  for (let turn = 0; turn < ITERATIONS && !settled; turn++) {
    fillRows(scaled, fromPx, stepPx, state, rows, damping);
    if (!solveEquations(rows)) return null;
    for (let j = 0; j < UNKNOWNS; j++) trial[j] = (state[j] as number) + (rows.right[j] as number);
    trial[2] = Math.min(reachOut - 1, Math.max(1 - reachIn, trial[2] as number));
    trial[3] = Math.min(reachOut, Math.max(LEAST_BLUR_PX, trial[3] as number));
    const tried = costOf(scaled, fromPx, stepPx, trial);
    if (tried > cost) {
      damping *= 8;
      settled = damping > 1000000;
      continue;
    }
    settled = Math.abs((trial[2] as number) - (state[2] as number)) < AT_REST_PX;
    state.set(trial);
    cost = tried;
    damping = Math.max(damping / 6, 0.0001);
  }
  return settled ? edgeOf(scaled, fromPx, stepPx, state, cost, rows, reachIn, reachOut) : null;
}

function edgeOf(
  scaled: Float64Array,
  fromPx: number,
  stepPx: number,
  state: Float64Array,
  cost: number,
  rows: ReturnType<typeof emptyEquations>,
  reachIn: number,
  reachOut: number,
): ProfileEdge | null {
  const at = state[2] as number;
  const blur = state[3] as number;
  const step = (state[1] as number) - (state[0] as number);
  if (at <= 1.01 - reachIn || at >= reachOut - 1.01 || !(step > 0.2)) return null;
  const spread = Math.sqrt(cost / Math.max(1, scaled.length - UNKNOWNS));
  fillRows(scaled, fromPx, stepPx, state, rows, 0);
  rows.right.fill(0);
  rows.right[2] = 1;
  if (!solveEquations(rows)) return null;
  const variance = Math.max(0, rows.right[2] as number);
  // Neighbouring samples stand half a pixel apart and share pixels, so they tell about half as much.
  return { atPx: at, blurPx: blur, sigmaPx: spread * Math.sqrt(2 * variance), roughness: spread / step };
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] as number;
  return sum / (to - from);
}

function costOf(scaled: Float64Array, fromPx: number, stepPx: number, state: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < scaled.length; i++) {
    const off = (scaled[i] as number) - modelAt(state, fromPx + i * stepPx);
    sum += off * off;
  }
  return sum;
}

function modelAt(state: Float64Array, t: number): number {
  const blur = state[3] as number;
  const away = t - (state[2] as number);
  const u = away / blur;
  const share = normalShare(u);
  const bell = blur * density(u);
  return (
    (state[0] as number) * (1 - share) +
    (state[1] as number) * share +
    (state[4] as number) * (away * (1 - share) - bell) +
    (state[5] as number) * (away * share + bell)
  );
}

function fillRows(
  scaled: Float64Array,
  fromPx: number,
  stepPx: number,
  state: Float64Array,
  rows: ReturnType<typeof emptyEquations>,
  damping: number,
): void {
  const row = new Float64Array(UNKNOWNS);
  clearEquations(rows);
  const [low, high, place, blur, slopeIn, slopeOut] = state as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let i = 0; i < scaled.length; i++) {
    const away = fromPx + i * stepPx - place;
    const u = away / blur;
    const share = normalShare(u);
    const bell = density(u);
    row[0] = 1 - share;
    row[1] = share;
    row[2] = (-(high - low) * bell) / blur - slopeIn * (1 - share) - slopeOut * share;
    row[3] = (-(high - low) * bell * u) / blur - slopeIn * bell + slopeOut * bell;
    row[4] = away * (1 - share) - blur * bell;
    row[5] = away * share + blur * bell;
    addRow(rows, row, (scaled[i] as number) - modelAt(state, fromPx + i * stepPx), 1);
  }
  for (let j = 0; j < UNKNOWNS; j++) {
    const at = j * UNKNOWNS + j;
    rows.matrix[at] = (rows.matrix[at] as number) * (1 + damping);
  }
}

function density(u: number): number {
  return Math.exp(-0.5 * u * u) / Math.sqrt(2 * Math.PI);
}

/** Share of the normal distribution below u. Formula 7.1.26 of Abramowitz and Stegun, Handbook of Mathematical Functions, 1964. */
function normalShare(u: number): number {
  const x = Math.abs(u) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-x * x);
  return u < 0 ? 0.5 * tail : 1 - 0.5 * tail;
}
