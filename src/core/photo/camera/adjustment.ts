import { cos, log, sin } from '../../base/index.ts';
import {
  backwardSolve,
  dot,
  forwardSolve,
  lowerFactor,
  solveDefinite,
  zeroMatrix,
} from '../../numeric/index.ts';
import type { MeasuredPair } from '../sheet/sheetReading.ts';
import {
  BOWS,
  bowSlot,
  cameraSlots,
  cardHeightSlot,
  cardSlot,
  lensAt,
  lensSlot,
  moved,
  type PlanBox,
  placeSlot,
  poseAt,
  printSlot,
  type SceneState,
  type SceneUnknowns,
} from './sceneUnknowns.ts';
import { CAMERA_UNKNOWNS, emptySight, look, type Sight } from './sight.ts';
import { addStandBeliefs } from './standBelief.ts';

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
  /** Whether cameras are believed to stand where people usually do. */
  readonly withStands: boolean;
  /** Per shot, by how much the spreads that its points came with are too small. */
  readonly scales: readonly number[];
  /** How far each unknown may usually go in one step; a step is damped in these units. */
  readonly strides: readonly number[];
}

export interface Adjusted {
  readonly state: SceneState;
  readonly cost: number;
  readonly settled: boolean;
}

/** Steps taken or refused. */
const MOST_STEPS = 120;
/** Share of the cost that a step must promise: one that promises less moves no unknown by a thousandth of its spread. */
const SETTLED_COST = 1 / 1_000_000_000;
/** A step this much damped is none: the cost cannot be made less at this precision. */
const MOST_DAMPING = 1_000_000_000_000;
/** Spreads beyond which a residual pulls no harder: Huber's usual choice is 1.345; 2.5 keeps nearly all good points. */
const HUBER = 2.5;

/**
 * Method: Levenberg and Marquardt with exact slopes, summed block by block; Huber weights. Focal length, tilt, centre and
 * stand lie in a long bent valley, where a step along it climbs its wall: such a step is followed by stiffly damped ones
 * back to the floor before it is given up. Null without a slope.
 */
export function adjust(adjustment: Adjustment, start: SceneState, mostSteps = MOST_STEPS): Adjusted | null {
  let here = standAt(adjustment, start);
  let damping = 1;
  for (let step = 0; step < mostSteps && damping < MOST_DAMPING; step++) {
    const move = dampedMove(adjustment, here, damping);
    if (!move) return null;
    const isLow = damping <= 1 && dot(move, here.right) <= SETTLED_COST * (1 + here.cost);
    if (isLow) return { state: here.state, cost: here.cost, settled: true };
    const next = lowerStand(adjustment, here, move, damping);
    if (next) here = next;
    damping *= next ? 1 / 10 : 10;
  }
  return Number.isFinite(here.cost) ? { state: here.state, cost: here.cost, settled: false } : null;
}

interface Stand extends Assessed {
  readonly state: SceneState;
}

function standAt(adjustment: Adjustment, state: SceneState): Stand {
  return { state, ...assess(adjustment, state) };
}

/** Steps back to the floor of the valley from one that climbed. */
const FOLLOWED = 2;
/** A step that climbs to more than so many times the cost is not followed. */
const WALL = 1000;
/** How much more the steps back are damped: they are to undo the climb, not the way along the valley. */
const RESTORING = 1000;

/** A state of no greater cost, one step away or a few; null where the damping is too weak for one. */
function lowerStand(adjustment: Adjustment, here: Stand, first: Float64Array, damping: number): Stand | null {
  let move: Float64Array | null = first;
  let there = here;
  for (let step = 0; step <= FOLLOWED && move; step++) {
    there = standAt(adjustment, moved(adjustment.unknowns, there.state, move));
    if (there.cost <= here.cost) return there;
    if (!(there.cost < WALL * here.cost)) return null;
    move = dampedMove(adjustment, there, damping * RESTORING);
  }
  return null;
}

function dampedMove({ strides }: Adjustment, { matrix, right }: Stand, damping: number): Float64Array | null {
  const damped = matrix.map((row, i) => {
    const copy = row.slice();
    copy[i] += damping / strides[i] ** 2;
    return copy;
  });
  return solveDefinite(damped, right) ?? null;
}

/**
 * How well a model with these unknowns and beliefs explains what was seen, as a logarithm: what it misses by, and how much
 * of what was believed beforehand it had to give up for that. Null where something is not told at all.
 * Method: Laplace. Models are compared by it only on the same points with the same spreads.
 */
export function evidenceAt(adjustment: Adjustment, { state, cost }: Adjusted): number | null {
  const factor = lowerFactor(assess(adjustment, state).matrix);
  if (!factor) return null;
  const narrowed = factor.reduce((sum, row, place) => sum + log(row[place]), 0);
  const believed = adjustment.beliefs.reduce((sum, { sigma }) => sum + log(sigma), 0);
  return -cost - narrowed - believed;
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
  const shares = new Float64Array(BOWS);
  const out = new Float64Array(2 * sighting.pairs.length);
  sighting.pairs.forEach(({ sheet, photo }, place) => {
    lookAt(frame, sheet.x, sheet.y, shares, sight);
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

function assess(
  { unknowns, sightings, beliefs, withStands, scales }: Adjustment,
  state: SceneState,
): Assessed {
  const matrix = zeroMatrix(unknowns.size, unknowns.size);
  const right = new Float64Array(unknowns.size);
  let cost = 0;
  for (const sighting of sightings)
    cost += addSighting(unknowns, state, sighting, scales[sighting.shot], matrix, right);
  if (withStands) cost += addStandBeliefs(unknowns, state, matrix, right);
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

/** Unknowns that one point depends on: the camera's, print x and y, place x, y and turn, three that lift it. */
const LOCAL = CAMERA_UNKNOWNS + 5 + BOWS;

interface Frame {
  readonly lens: ReturnType<typeof lensAt>;
  readonly pose: ReturnType<typeof poseAt>;
  readonly slots: readonly number[];
  readonly print: readonly [number, number];
  readonly at: readonly [number, number];
  readonly cosine: number;
  readonly sine: number;
  /** What lifts a point, mm, times the shares that `raised` writes. */
  readonly lifts: readonly [number, number, number];
  /** Null for a card, which is level. */
  readonly box: PlanBox | null;
}

/** A slot that a card has not: it does not bow. */
const NONE = -1;

function frameOf(unknowns: SceneUnknowns, state: SceneState, { shot, item }: Sighting): Frame {
  const { values } = state;
  const isCard = item.kind === 'card';
  const print = printSlot(unknowns, isCard ? 0 : item.index);
  const place = isCard ? cardSlot(unknowns, item.index) : placeSlot(unknowns, item.index);
  const lift = isCard ? cardHeightSlot(unknowns, item.index) : bowSlot(unknowns, item.index);
  const liftSlots = isCard ? [lift, NONE, NONE] : [lift, lift + 1, lift + 2];
  const turn = values[place + 2];
  return {
    lens: lensAt(state, lensSlot(unknowns, unknowns.lensOfShot[shot])),
    pose: poseAt(unknowns, state, shot),
    slots: [...cameraSlots(unknowns, shot), print, print + 1, place, place + 1, place + 2, ...liftSlots],
    print: [values[print], values[print + 1]],
    at: [values[place], values[place + 1]],
    cosine: cos(turn),
    sine: sin(turn),
    lifts: isCard ? [values[lift], 0, 0] : [values[lift], values[lift + 1], values[lift + 2]],
    box: isCard ? null : unknowns.planBoxes[item.index],
  };
}

/** Writes the shares in which the three lifts raise a point of the plan. */
function raised(box: PlanBox | null, planX: number, planY: number, shares: Float64Array): void {
  const u = box === null ? 1 : (planX - box.x) / box.halfX;
  const v = box === null ? 0 : (planY - box.y) / box.halfY;
  shares[0] = u * u;
  shares[1] = v * v;
  shares[2] = u * v;
}

function lookAt(frame: Frame, planX: number, planY: number, shares: Float64Array, sight: Sight): void {
  const { print, at, cosine: c, sine: s, lifts } = frame;
  const [a, b] = [print[0] * planX, print[1] * planY];
  raised(frame.box, planX, planY, shares);
  const z = shares[0] * lifts[0] + shares[1] * lifts[1] + shares[2] * lifts[2];
  look(frame.lens, frame.pose, at[0] + c * a - s * b, at[1] + s * a + c * b, z, sight);
}

/** Slopes of one photo coordinate by the unknowns of its frame, from those by the camera and by the place. */
function slopesAt(
  { print, cosine: c, sine: s }: Frame,
  planX: number,
  planY: number,
  shares: Float64Array,
  by: Float64Array,
  byPlace: Float64Array,
  out: Float64Array,
): void {
  const along = c * byPlace[0] + s * byPlace[1];
  const across = c * byPlace[1] - s * byPlace[0];
  for (let place = 0; place < CAMERA_UNKNOWNS; place++) out[place] = by[place];
  out[CAMERA_UNKNOWNS] = planX * along;
  out[CAMERA_UNKNOWNS + 1] = planY * across;
  out[CAMERA_UNKNOWNS + 2] = byPlace[0];
  out[CAMERA_UNKNOWNS + 3] = byPlace[1];
  out[CAMERA_UNKNOWNS + 4] = print[0] * planX * across - print[1] * planY * along;
  for (let bow = 0; bow < BOWS; bow++) out[CAMERA_UNKNOWNS + 5 + bow] = shares[bow] * byPlace[2];
}

/** Cost of a residual in units of its spread. */
function costOf(size: number): number {
  return size <= HUBER ? (size * size) / 2 : HUBER * (size - HUBER / 2);
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
  const shares = new Float64Array(BOWS);
  const [xBy, yBy] = [new Float64Array(LOCAL), new Float64Array(LOCAL)];
  const [sums, pull] = [new Float64Array(LOCAL * LOCAL), new Float64Array(LOCAL)];
  let cost = 0;
  for (const { sheet, photo, sigmaPx } of sighting.pairs) {
    lookAt(frame, sheet.x, sheet.y, shares, sight);
    if (!(sight.depth > 0)) return Number.POSITIVE_INFINITY;
    slopesAt(frame, sheet.x, sheet.y, shares, sight.xBy, sight.xByPlace, xBy);
    slopesAt(frame, sheet.x, sheet.y, shares, sight.yBy, sight.yByPlace, yBy);
    const sigma = sigmaPx * scale;
    const [missX, missY] = [sight.x - photo.x, sight.y - photo.y];
    const [sizeX, sizeY] = [Math.abs(missX) / sigma, Math.abs(missY) / sigma];
    cost += costOf(sizeX) + costOf(sizeY);
    const weightX = (sizeX <= HUBER ? 1 : HUBER / sizeX) / (sigma * sigma);
    const weightY = (sizeY <= HUBER ? 1 : HUBER / sizeY) / (sigma * sigma);
    for (let i = 0; i < LOCAL; i++) {
      const x = weightX * xBy[i];
      const y = weightY * yBy[i];
      pull[i] -= x * missX + y * missY;
      const row = i * LOCAL;
      for (let j = i; j < LOCAL; j++) sums[row + j] += x * xBy[j] + y * yBy[j];
    }
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
