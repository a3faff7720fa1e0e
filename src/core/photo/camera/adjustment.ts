import { SETTLED } from '../../base/index.ts';
import { backwardSolve, forwardSolve, lowerFactor, solveDefinite, zeroMatrix } from '../../numeric/index.ts';
import type { MeasuredPair } from '../sheet/sheetReading.ts';
import {
  cameraSlots,
  cardHeightSlot,
  cardSlot,
  lensAt,
  lensSlot,
  moved,
  placeSlot,
  poseAt,
  printSlot,
  type SceneState,
  type SceneUnknowns,
} from './sceneUnknowns.ts';
import { CAMERA_UNKNOWNS, emptySight, look, type Sight } from './sight.ts';

/** The points of one sheet or card in one shot. */
export interface Sighting {
  readonly shot: number;
  /** Place of the sheet in the list of sheets, or of the card in the list of cards. */
  readonly item: { readonly kind: 'sheet' | 'card'; readonly index: number };
  readonly pairs: readonly MeasuredPair[];
}

/** Something believed beforehand: the sum of `factors` times unknowns is `value`, give or take `sigma`. */
export interface Belief {
  readonly slots: readonly number[];
  readonly factors: readonly number[];
  readonly value: number;
  readonly sigma: number;
}

/** A sum of squares to make least: residuals in units of their spread, weighed down where they stray, and beliefs. */
export interface Adjustment {
  readonly unknowns: SceneUnknowns;
  readonly sightings: readonly Sighting[];
  readonly beliefs: readonly Belief[];
  /** Per shot, by how much the spreads that its points came with are too small. */
  readonly scales: readonly number[];
}

export interface Adjusted {
  readonly state: SceneState;
  readonly cost: number;
  readonly settled: boolean;
}

const MOST_STEPS = 80;
/** A step this much damped is none: the cost cannot be made less at this precision. */
const MOST_DAMPING = 1_000_000_000_000;
/** Spreads beyond which a residual pulls no harder: Huber's usual choice is 1.345; 2.5 keeps nearly all good points. */
const HUBER = 2.5;

/** Method: Levenberg and Marquardt with exact slopes, summed block by block; Huber weights. Null without a slope. */
export function adjust(adjustment: Adjustment, start: SceneState, mostSteps = MOST_STEPS): Adjusted | null {
  let state = start;
  let here = assess(adjustment, state);
  let damping = 1 / 1000;
  let settled = false;
  for (let step = 0; step < mostSteps && !settled; step++) {
    let taken = false;
    while (!taken && damping < MOST_DAMPING) {
      const damped = here.matrix.map((row, i) => {
        const copy = row.slice();
        copy[i] *= 1 + damping;
        return copy;
      });
      const move = solveDefinite(damped, here.right);
      if (!move) return null;
      const next = moved(adjustment.unknowns, state, move);
      const there = assess(adjustment, next);
      taken = there.cost <= here.cost;
      if (taken) {
        settled = here.cost - there.cost <= SETTLED * (1 + here.cost);
        [state, here] = [next, there];
      }
      damping *= taken ? 1 / 10 : 10;
    }
    if (!taken) settled = true;
  }
  return { state, cost: here.cost, settled };
}

/** The covariance of all unknowns at a state, row by row; null where something is not told at all. */
export function covarianceAt(adjustment: Adjustment, state: SceneState): readonly Float64Array[] | null {
  const factor = lowerFactor(assess(adjustment, state).matrix);
  if (!factor) return null;
  return factor.map((_, place) => {
    const unit = new Float64Array(factor.length);
    unit[place] = 1;
    return backwardSolve(factor, forwardSolve(factor, unit));
  });
}

/** What each pair of a sighting misses by, px, x and y in turn. */
export function missesOf(unknowns: SceneUnknowns, state: SceneState, sighting: Sighting): Float64Array {
  const frame = frameOf(unknowns, state, sighting);
  const sight = emptySight();
  const out = new Float64Array(2 * sighting.pairs.length);
  sighting.pairs.forEach(({ sheet, photo }, place) => {
    lookAt(frame, sheet.x, sheet.y, sight);
    out[2 * place] = sight.x - photo.x;
    out[2 * place + 1] = sight.y - photo.y;
  });
  return out;
}

interface Assessed {
  readonly cost: number;
  readonly matrix: Float64Array[];
  readonly right: Float64Array;
}

function assess({ unknowns, sightings, beliefs, scales }: Adjustment, state: SceneState): Assessed {
  const matrix = zeroMatrix(unknowns.size, unknowns.size);
  const right = new Float64Array(unknowns.size);
  let cost = 0;
  for (const sighting of sightings)
    cost += addSighting(unknowns, state, sighting, scales[sighting.shot], matrix, right);
  for (const { slots, factors, value, sigma } of beliefs) {
    const weight = 1 / sigma ** 2;
    const off = slots.reduce((sum, slot, i) => sum + factors[i] * state.values[slot], -value);
    cost += (off * off * weight) / 2;
    slots.forEach((slot, i) => {
      right[slot] -= weight * factors[i] * off;
      slots.forEach((other, j) => {
        matrix[slot][other] += weight * factors[i] * factors[j];
      });
    });
  }
  return { cost: Number.isFinite(cost) ? cost : Number.POSITIVE_INFINITY, matrix, right };
}

/** Unknowns that one point depends on: the camera's, print x and y, place x, y and turn, height. */
const LOCAL = CAMERA_UNKNOWNS + 6;

interface Frame {
  readonly lens: ReturnType<typeof lensAt>;
  readonly pose: ReturnType<typeof poseAt>;
  readonly slots: readonly number[];
  readonly print: readonly [number, number];
  readonly at: readonly [number, number];
  readonly cosine: number;
  readonly sine: number;
  readonly heightMm: number;
}

/** A slot that a sheet has not: its height is nought. */
const NONE = -1;

function frameOf(unknowns: SceneUnknowns, state: SceneState, { shot, item }: Sighting): Frame {
  const { values } = state;
  const isCard = item.kind === 'card';
  const print = printSlot(unknowns, isCard ? 0 : item.index);
  const place = isCard ? cardSlot(unknowns, item.index) : placeSlot(unknowns, item.index);
  const height = isCard ? cardHeightSlot(unknowns, item.index) : NONE;
  const turn = values[place + 2];
  return {
    lens: lensAt(state, lensSlot(unknowns, unknowns.lensOfShot[shot])),
    pose: poseAt(unknowns, state, shot),
    slots: [...cameraSlots(unknowns, shot), print, print + 1, place, place + 1, place + 2, height],
    print: [values[print], values[print + 1]],
    at: [values[place], values[place + 1]],
    cosine: Math.cos(turn),
    sine: Math.sin(turn),
    heightMm: isCard ? values[height] : 0,
  };
}

function lookAt(frame: Frame, planX: number, planY: number, sight: Sight): void {
  const { print, at, cosine: c, sine: s } = frame;
  const [a, b] = [print[0] * planX, print[1] * planY];
  look(frame.lens, frame.pose, at[0] + c * a - s * b, at[1] + s * a + c * b, frame.heightMm, sight);
}

function slopesAt(
  frame: Frame,
  planX: number,
  planY: number,
  by: Float64Array,
  byPlace: Float64Array,
  out: Float64Array,
): void {
  const { print, cosine: c, sine: s } = frame;
  const [gx, gy] = byPlace;
  const [along, across] = [c * gx + s * gy, c * gy - s * gx];
  out.set(by);
  out[CAMERA_UNKNOWNS] = planX * along;
  out[CAMERA_UNKNOWNS + 1] = planY * across;
  out[CAMERA_UNKNOWNS + 2] = gx;
  out[CAMERA_UNKNOWNS + 3] = gy;
  out[CAMERA_UNKNOWNS + 4] = print[0] * planX * across - print[1] * planY * along;
  out[CAMERA_UNKNOWNS + 5] = byPlace[2];
}

function addSighting(
  unknowns: SceneUnknowns,
  state: SceneState,
  sighting: Sighting,
  scale: number,
  matrix: Float64Array[],
  right: Float64Array,
): number {
  const frame = frameOf(unknowns, state, sighting);
  const sight = emptySight();
  const [slopes, sums, pull] = [
    new Float64Array(LOCAL),
    new Float64Array(LOCAL * LOCAL),
    new Float64Array(LOCAL),
  ];
  let cost = 0;
  const addRow = (miss: number, sigma: number): void => {
    const size = Math.abs(miss) / sigma;
    cost += size <= HUBER ? (size * size) / 2 : HUBER * (size - HUBER / 2);
    const weight = (size <= HUBER ? 1 : HUBER / size) / (sigma * sigma);
    for (let i = 0; i < LOCAL; i++) {
      const weighed = weight * slopes[i];
      pull[i] -= weighed * miss;
      for (let j = i; j < LOCAL; j++) sums[i * LOCAL + j] += weighed * slopes[j];
    }
  };
  for (const { sheet, photo, sigmaPx } of sighting.pairs) {
    lookAt(frame, sheet.x, sheet.y, sight);
    if (!(sight.depth > 0)) return Number.POSITIVE_INFINITY;
    slopesAt(frame, sheet.x, sheet.y, sight.xBy, sight.xByPlace, slopes);
    addRow(sight.x - photo.x, sigmaPx * scale);
    slopesAt(frame, sheet.x, sheet.y, sight.yBy, sight.yByPlace, slopes);
    addRow(sight.y - photo.y, sigmaPx * scale);
  }
  scatter(frame.slots, sums, pull, matrix, right);
  return cost;
}

function scatter(
  slots: readonly number[],
  sums: Float64Array,
  pull: Float64Array,
  matrix: Float64Array[],
  right: Float64Array,
): void {
  for (let i = 0; i < LOCAL; i++) {
    if (slots[i] === NONE) continue;
    right[slots[i]] += pull[i];
    for (let j = i; j < LOCAL; j++) {
      if (slots[j] === NONE) continue;
      matrix[slots[i]][slots[j]] += sums[i * LOCAL + j];
      if (i !== j) matrix[slots[j]][slots[i]] += sums[i * LOCAL + j];
    }
  }
}
