import { atan2, Bug, cos, type Finding, hypot, type Point, point, sin } from '../../base/index.ts';
import type { PrintScale } from '../sheet/printScale.ts';
import { type Camera, projection } from './camera.ts';
import type { ScenePlane } from './scenePlane.ts';
import { cameraSlots, cardHeightSlot, type SceneUnknowns } from './sceneUnknowns.ts';
import { turnMatrix } from './turn.ts';
import type { CameraTrust } from './view.ts';

export interface SolvedCamera {
  readonly camera: Camera;
  /** Of the sheet that fixes the scene. */
  readonly printScale: PrintScale;
  readonly trust: CameraTrust;
  /** Of one coordinate, over the points kept. */
  readonly rmsPx: number;
  readonly rmsMm: number;
  readonly tiltRad: number;
  /** How high the projection centre stands over the paper. */
  readonly standMm: number;
  readonly pointsUsed: number;
  readonly findings: readonly Finding[];
}

/** How a sheet lies in the scene, with the ratios of its print. */
export interface PlacedSheet {
  readonly number: number;
  readonly at: Point<'scene'>;
  readonly turnRad: number;
  readonly printScale: PrintScale;
  /** Half interval (k = 2) of the print's ratio along x, as a share. */
  readonly printPlusMinus: number;
}

/** How a card stands in the scene; the height is over the sheet, with its half interval (k = 2). */
export interface PlacedCard {
  readonly number: number;
  readonly at: Point<'scene'>;
  readonly turnRad: number;
  readonly heightMm: number;
  readonly plusMinusMm: number;
}

/** Several photographs of one scene, solved together; the first sheet fixes the frame `scene`. */
export interface SolvedScene {
  readonly shots: readonly SolvedCamera[];
  readonly sheets: readonly PlacedSheet[];
  readonly cards: readonly PlacedCard[];
  readonly unknowns: SceneUnknowns;
  /** Of all unknowns, row by row. */
  readonly covariance: readonly Float64Array[];
  readonly findings: readonly Finding[];
}

/** Where a place on a sheet's plan lies in the scene, on the paper. */
export function sheetPlace(
  { at, turnRad, printScale }: PlacedSheet,
  { x, y }: Point<'sheet'>,
): Point<'scene'> {
  const [c, s] = [cos(turnRad), sin(turnRad)];
  const [a, b] = [x * printScale.x, y * printScale.y];
  return point(at.x + c * a - s * b, at.y + s * a + c * b);
}

/** The plane in which a card stands, tied to the shot's camera: what moves one moves the other. */
export function planeOfCard(scene: SolvedScene, shot: number, cardNumber: number): ScenePlane {
  const index = scene.unknowns.cardNumbers.indexOf(cardNumber);
  const card = scene.cards.find(({ number }) => number === cardNumber);
  if (!card) throw new Bug(`no card ${cardNumber} in the scene`);
  const height = cardHeightSlot(scene.unknowns, index);
  return {
    heightMm: card.heightMm,
    plusMinusMm: card.plusMinusMm,
    withCamera: cameraSlots(scene.unknowns, shot).map((slot) => scene.covariance[height][slot]),
  };
}

/** The covariance of chosen unknowns, row by row in one list. */
export function covarianceOf(covariance: readonly Float64Array[], slots: readonly number[]): number[] {
  return slots.flatMap((row) => slots.map((column) => covariance[row][column]));
}

/** Between the lens's axis and straight down. */
export function tiltOf(camera: Camera): number {
  const turn = turnMatrix(...camera.turnRad);
  return atan2(hypot(turn[6], turn[7]), turn[8]);
}

/** mm. How high the projection centre stands over the paper. */
export function standOf(camera: Camera): number {
  return projection(camera).stand.z;
}
