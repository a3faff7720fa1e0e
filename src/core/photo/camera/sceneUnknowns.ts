import { Bug, exp, point } from '../../base/index.ts';
import type { Matrix3 } from '../../numeric/index.ts';
import type { Camera } from './camera.ts';
import type { Lens } from './lens.ts';
import type { Shot } from './shot.ts';
import { LENS_UNKNOWNS, POSE_UNKNOWNS, type Pose, UNKNOWN } from './sight.ts';
import { flipped, turned, turnMatrix, turnTwice, turnVector } from './turn.ts';

/** Where each unknown of a scene stands in one list: lenses, poses, then print, place and height of what is seen. */
export interface SceneUnknowns {
  readonly size: number;
  /** Which lens took each shot. */
  readonly lensOfShot: readonly number[];
  readonly lensCount: number;
  readonly sheetNumbers: readonly number[];
  readonly cardNumbers: readonly number[];
  /** The part of each sheet's plan that was seen; its bow is told in shares of it. */
  readonly planBoxes: readonly PlanBox[];
}

/** Middle and half sides, mm of the plan. */
export interface PlanBox {
  readonly x: number;
  readonly y: number;
  readonly halfX: number;
  readonly halfY: number;
}

/** The values of all unknowns. Turns are kept whole, apart: their unknowns are small further turns. */
export interface SceneState {
  readonly values: Float64Array;
  readonly turns: readonly Matrix3[];
}

const PRINT = 2;
const PLACE = 3;
/** Lifts at the rim along x, along y, and twisted. */
export const BOWS = 3;
const SHEET = PRINT + PLACE + BOWS;
const CARD = 4;

/** The unknowns of the shots when `lensOfShot` says which share a lens. */
export function unknownsOf(shots: readonly Shot[], lensOfShot: readonly number[]): SceneUnknowns {
  const numbers = (all: readonly { readonly number: number }[]) =>
    [...new Set(all.map(({ number }) => number))].sort((a, b) => a - b);
  const sheetNumbers = numbers(shots.flatMap(({ sheets }) => sheets));
  const cardNumbers = numbers(shots.flatMap(({ cards }) => cards ?? []));
  const lensCount = Math.max(...lensOfShot) + 1;
  const size =
    lensCount * LENS_UNKNOWNS +
    shots.length * POSE_UNKNOWNS +
    sheetNumbers.length * SHEET +
    cardNumbers.length * CARD;
  const planBoxes = sheetNumbers.map((number) =>
    planBoxOf(
      shots
        .flatMap(({ sheets }) => sheets.filter((one) => one.number === number))
        .flatMap(({ pairs }) => pairs.map(({ sheet }) => sheet)),
    ),
  );
  return { size, lensOfShot, lensCount, sheetNumbers, cardNumbers, planBoxes };
}

function planBoxOf(places: readonly { readonly x: number; readonly y: number }[]): PlanBox {
  const range = (values: readonly number[]) => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return [(low + high) / 2, Math.max((high - low) / 2, 1)] as const;
  };
  const [x, halfX] = range(places.map((place) => place.x));
  const [y, halfY] = range(places.map((place) => place.y));
  return { x, y, halfX, halfY };
}

export function lensSlot(_: SceneUnknowns, lens: number): number {
  return lens * LENS_UNKNOWNS;
}

export function poseSlot({ lensCount }: SceneUnknowns, shot: number): number {
  return lensCount * LENS_UNKNOWNS + shot * POSE_UNKNOWNS;
}

/** Ratio of the print along the sheet's x; that along y follows. */
export function printSlot(unknowns: SceneUnknowns, sheet: number): number {
  return poseSlot(unknowns, unknowns.lensOfShot.length) + sheet * SHEET;
}

/** Place x, y and turn of a sheet in the scene; those of the first sheet are held at nought. */
export function placeSlot(unknowns: SceneUnknowns, sheet: number): number {
  return printSlot(unknowns, sheet) + PRINT;
}

/** How far a sheet lifts at its rim, mm: along x, along y, and twisted; in its middle it lies on the table. */
export function bowSlot(unknowns: SceneUnknowns, sheet: number): number {
  return placeSlot(unknowns, sheet) + PLACE;
}

/** Place x, y, turn, and height of a card. */
export function cardSlot(unknowns: SceneUnknowns, card: number): number {
  return printSlot(unknowns, unknowns.sheetNumbers.length) + card * CARD;
}

export function cardHeightSlot(unknowns: SceneUnknowns, card: number): number {
  return cardSlot(unknowns, card) + PLACE;
}

/** The slots of one shot's camera in the order of `UNKNOWN`. */
export function cameraSlots(unknowns: SceneUnknowns, shot: number): readonly number[] {
  const lens = lensSlot(unknowns, unknowns.lensOfShot[shot]);
  const pose = poseSlot(unknowns, shot);
  return [
    ...Array.from({ length: LENS_UNKNOWNS }, (_, place) => lens + place),
    ...Array.from({ length: POSE_UNKNOWNS }, (_, place) => pose + place),
  ];
}

export function lensAt({ values }: SceneState, slot: number): Lens {
  return {
    focalPx: exp(values[slot + UNKNOWN.logFocal]),
    centre: point(values[slot + UNKNOWN.centreX], values[slot + UNKNOWN.centreY]),
    k1: values[slot + UNKNOWN.k1],
    k2: values[slot + UNKNOWN.k2],
    k3: values[slot + UNKNOWN.k3],
    p1: values[slot + UNKNOWN.p1],
    p2: values[slot + UNKNOWN.p2],
  };
}

export function poseAt(unknowns: SceneUnknowns, { values, turns }: SceneState, shot: number): Pose {
  const slot = poseSlot(unknowns, shot) + POSE_UNKNOWNS / 2;
  return { turn: turns[shot], shift: [values[slot], values[slot + 1], values[slot + 2]] };
}

export function cameraAt(unknowns: SceneUnknowns, state: SceneState, shot: number): Camera {
  const { turn, shift } = poseAt(unknowns, state, shot);
  const lens = lensAt(state, lensSlot(unknowns, unknowns.lensOfShot[shot]));
  return { ...lens, turnRad: turnVector(flipped(turn)), shiftMm: shift };
}

/**
 * The state a step further. The small turns, about the cameras themselves, go into the whole ones and the shifts; depths
 * grow by shares, as focal lengths do, since the two go together.
 */
export function moved(unknowns: SceneUnknowns, state: SceneState, step: ArrayLike<number>): SceneState {
  if (step.length !== unknowns.size) throw new Bug(`${step.length} steps for ${unknowns.size} unknowns`);
  const values = state.values.map((one, place) => one + step[place]);
  const turns = state.turns.map((turn, shot) => {
    const slot = poseSlot(unknowns, shot);
    const shift = slot + POSE_UNKNOWNS / 2;
    const further = turnMatrix(step[slot], step[slot + 1], step[slot + 2]);
    values.fill(0, slot, shift);
    const depth = state.values[shift + 2];
    values[shift + 2] = depth * exp(step[shift + 2] / depth);
    values.set(turned(further, [values[shift], values[shift + 1], values[shift + 2]]), shift);
    return turnTwice(further, turn);
  });
  return { values, turns };
}

/**
 * How far an unknown may usually go in one step of an adjustment: logarithm and shares, px, rad, mm. Weak unknowns move
 * together by far more than each alone could be told to, so that the strides are of the things themselves.
 */
const STRIDE = {
  lens: [0.1, 50, 50, 0.1, 0.2, 0.2, 0.001, 0.001],
  pose: [0.02, 0.02, 0.02, 50, 50, 50],
  sheet: [0.01, 0.01, 20, 20, 0.1, 1, 1, 1],
  card: [20, 20, 0.1, 20],
} as const;

export function stridesOf({
  lensCount,
  lensOfShot,
  sheetNumbers,
  cardNumbers,
}: SceneUnknowns): readonly number[] {
  return [
    ...Array.from({ length: lensCount }, () => STRIDE.lens).flat(),
    ...lensOfShot.flatMap(() => STRIDE.pose),
    ...sheetNumbers.flatMap(() => STRIDE.sheet),
    ...cardNumbers.flatMap(() => STRIDE.card),
  ];
}
