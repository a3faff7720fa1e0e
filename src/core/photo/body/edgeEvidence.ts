import { COLOUR_GRID } from './colourModel.ts';
import { type EdgeMap, valueAt } from './edgeMap.ts';
import { percentile } from './poseSearch.ts';

/** Places on every normal where an edge is looked for, from `−reach` (inside) to `+reach` (outside). */
export const SAMPLES = 41;

/** Places and unit outward normals in photo px: [x, y, nx, ny] each. */
export type PhotoPlaces = Float64Array;

/** What was seen along the normals of `count` places. */
export interface Evidence {
  readonly count: number;
  /** Edge strength 0 to 1, SAMPLES a place. */
  readonly strength: Float32Array;
  /** 1 where the place lies in the picture and is not masked. */
  readonly visible: Uint8Array;
}

export interface EvidenceInput {
  readonly map: EdgeMap;
  /** On the colour grid of the same picture. */
  readonly posterior: Float32Array;
  readonly masked?: Uint8Array | undefined;
  readonly reachPx: number;
  readonly pxPerMm: number;
  /** How far a line is believed although the colours on its two sides are alike, 0 to 1. */
  readonly lineBelief: number;
}

/** mm. Width of the strips on both sides of a line whose colours are compared. */
const STRIP_MM = 3;

export function emptyEvidence(count: number): Evidence {
  return { count, strength: new Float32Array(count * SAMPLES), visible: new Uint8Array(count) };
}

/**
 * Fills `evidence` with edge strengths along the normals of `places`. Method: |gradient along the normal| against
 * the 75th percentile of all such values here (so bright and dark grounds work alike), times the fall of the
 * body's colour odds from inside to outside.
 */
export function gatherEvidence(places: PhotoPlaces, input: EvidenceInput, evidence: Evidence): void {
  const { strength, visible, count } = evidence;
  gatherGradients(places, input, evidence);
  const reference = 0.7 * percentile(everyThird(strength), 0.75) + 0.15;
  const step = (2 * input.reachPx) / (SAMPLES - 1);
  const strip = Math.max(2, Math.ceil((STRIP_MM * input.pxPerMm) / step));
  const sums = new Float64Array(SAMPLES + 2 * strip + 1);
  for (let i = 0; i < count; i++) {
    if (!visible[i]) continue;
    sumColours(places, i, input, step, strip, sums);
    for (let j = 0; j < SAMPLES; j++) {
      const at = j + strip;
      const inside = ((sums[at] as number) - (sums[at - strip] as number)) / strip;
      const outside = ((sums[at + strip + 1] as number) - (sums[at + 1] as number)) / strip;
      const fall = Math.min(1, Math.max(0, inside - outside));
      const g = strength[i * SAMPLES + j] as number;
      strength[i * SAMPLES + j] = (g / (g + reference)) * (input.lineBelief + (1 - input.lineBelief) * fall);
    }
  }
}

function gatherGradients(places: PhotoPlaces, input: EvidenceInput, evidence: Evidence): void {
  const { map, masked, reachPx } = input;
  const { widthPx, heightPx } = map;
  const step = (2 * reachPx) / (SAMPLES - 1);
  for (let i = 0; i < evidence.count; i++) {
    const x0 = places[4 * i] as number;
    const y0 = places[4 * i + 1] as number;
    const nx = places[4 * i + 2] as number;
    const ny = places[4 * i + 3] as number;
    const inPicture = x0 >= 1 && y0 >= 1 && x0 <= widthPx - 2 && y0 <= heightPx - 2;
    const hidden =
      inPicture && masked !== undefined && masked[Math.round(y0) * widthPx + Math.round(x0)] === 1;
    evidence.visible[i] = inPicture && !hidden ? 1 : 0;
    const to = i * SAMPLES;
    evidence.strength.fill(0, to, to + SAMPLES);
    if (!evidence.visible[i]) continue;
    for (let j = 0; j < SAMPLES; j++) {
      const t = j * step - reachPx;
      const x = x0 + t * nx;
      const y = y0 + t * ny;
      if (x >= 0 && y >= 0 && x <= widthPx - 1 && y <= heightPx - 1)
        evidence.strength[to + j] = Math.abs(slopeAlong(map, x, y, nx, ny));
    }
  }
}

/** The gradient at (x, y) along (nx, ny), between the four nearest pixels. */
function slopeAlong(
  { widthPx, heightPx, gx, gy, look }: EdgeMap,
  x: number,
  y: number,
  nx: number,
  ny: number,
): number {
  const left = Math.min(widthPx - 2, x | 0);
  const upper = Math.min(heightPx - 2, y | 0);
  look(left, upper);
  const right = x - left;
  const down = y - upper;
  const at = upper * widthPx + left;
  const below = at + widthPx;
  const high = (nx * gx[at] + ny * gy[at]) * (1 - right) + (nx * gx[at + 1] + ny * gy[at + 1]) * right;
  const low =
    (nx * gx[below] + ny * gy[below]) * (1 - right) + (nx * gx[below + 1] + ny * gy[below + 1]) * right;
  return high * (1 - down) + low * down;
}

/** Running sums of the body's colour odds along one normal, from `strip` samples inside to `strip` outside. */
function sumColours(
  places: PhotoPlaces,
  i: number,
  input: EvidenceInput,
  step: number,
  strip: number,
  sums: Float64Array,
): void {
  const gridWidth = Math.ceil(input.map.widthPx / COLOUR_GRID);
  const gridHeight = Math.ceil(input.map.heightPx / COLOUR_GRID);
  const middle = (COLOUR_GRID - 1) / 2;
  const x0 = ((places[4 * i] as number) - middle) / COLOUR_GRID;
  const y0 = ((places[4 * i + 1] as number) - middle) / COLOUR_GRID;
  const nx = (places[4 * i + 2] as number) / COLOUR_GRID;
  const ny = (places[4 * i + 3] as number) / COLOUR_GRID;
  const total = SAMPLES + 2 * strip;
  for (let k = 0; k < total; k++) {
    const t = (k - strip) * step - input.reachPx;
    const x = Math.min(gridWidth - 1, Math.max(0, x0 + t * nx));
    const y = Math.min(gridHeight - 1, Math.max(0, y0 + t * ny));
    sums[k + 1] = (sums[k] as number) + valueAt(input.posterior, gridWidth, gridHeight, x, y);
  }
}

function everyThird(values: Float32Array): Float32Array {
  const out = new Float32Array(Math.floor(values.length / 3));
  for (let i = 0; i < out.length; i++) out[i] = values[3 * i] as number;
  return out;
}

const JUMP_COST = 0.02;
/** The longest jump, in samples, that costs less than the cap, and the cap: its next square. */
const NEAR_JUMP = 5;
const JUMP_CAP = (NEAR_JUMP + 1) ** 2;
const AWAY_COST = 0.25;
const AWAY = Array.from({ length: SAMPLES }, (_, j) => AWAY_COST * (2 * (j / (SAMPLES - 1)) - 1) ** 2);

/**
 * The most coherent edge along a run of places, as sample indices into `chosen` from `from` to `to` (excluded).
 * Method: dynamic programming over offsets, cost −strength + ¼ (offset / reach)² + jumps, capped so that a true
 * step (a corner, a chin rest) costs no more than a few samples.
 */
export function chooseEdge(evidence: Evidence, from: number, to: number, chosen: Int16Array): void {
  const run = to - from;
  const { strength } = evidence;
  const back = new Uint8Array(run * SAMPLES);
  const cost = new Float64Array(SAMPLES);
  const next = new Float64Array(SAMPLES);
  for (let row = 0; row < run; row++) {
    const least = smallest(cost);
    const longest = cost[least] + JUMP_COST * JUMP_CAP;
    for (let j = 0; j < SAMPLES; j++) {
      let best = longest;
      let source = least;
      if (row === 0) source = j;
      else {
        const last = Math.min(SAMPLES - 1, j + NEAR_JUMP);
        for (let k = Math.max(0, j - NEAR_JUMP); k <= last; k++) {
          const reached = cost[k] + JUMP_COST * (j - k) * (j - k);
          if (reached < best) {
            best = reached;
            source = k;
          }
        }
      }
      next[j] = (row === 0 ? 0 : best) + AWAY[j] - strength[(from + row) * SAMPLES + j];
      back[row * SAMPLES + j] = source;
    }
    cost.set(next);
  }
  let at = smallest(cost);
  for (let row = run - 1; row >= 0; row--) {
    chosen[from + row] = at;
    at = back[row * SAMPLES + at];
  }
}

function smallest(values: Float64Array): number {
  let at = 0;
  for (let i = 1; i < values.length; i++) if (values[i] < values[at]) at = i;
  return at;
}
