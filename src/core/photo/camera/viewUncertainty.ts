import { atan2, cos, distanceBetween, hypot, norm, type Point, sin } from '../../base/index.ts';
import { type Slopes, slopesOnPlane } from './planeSlopes.ts';
import { CAMERA_UNKNOWNS } from './sight.ts';
import { type CameraView, type Stretch, toPhoto, toScene, type View } from './view.ts';

/** A length in the scene with its half interval (k = 2). */
export interface SceneLength {
  readonly mm: number;
  readonly plusMinusMm: number;
}

/** A place in the scene with half intervals (k = 2) of both coordinates. */
export interface PlaceInScene {
  readonly at: Point<'scene'>;
  readonly xPlusMinusMm: number;
  readonly yPlusMinusMm: number;
}

/**
 * The length between two photo points in the scene. Its ± holds what is not known about camera, print and height of
 * the plane, or what the callipers leave once they have corrected the scale; and the spread of the two points where it
 * is given (px, one standard deviation of one coordinate).
 */
export function lengthBetween(
  view: View,
  from: Point<'photo'>,
  to: Point<'photo'>,
  sigmaPx = 0,
): SceneLength {
  const [a, b] = [toScene(view, from), toScene(view, to)];
  const mm = distanceBetween(a, b);
  if (view.kind === 'scale') {
    const share = view.stretch ? stretchPlusMinus(view.stretch, a, b) : view.plusMinus;
    return { mm, plusMinusMm: hypot(mm * share, 2 * Math.SQRT2 * sigmaPx * view.mmPerPixel) };
  }
  const along = mm > 0 ? { x: (b.x - a.x) / mm, y: (b.y - a.y) / mm } : { x: 1, y: 0 };
  const ends = [from, to].map((photo) => slopesOnPlane(view.camera, photo, view.planeHeightMm));
  const points = 2 * sigmaPx * norm(ends.map((end) => noiseAlong(end, along)));
  const rest = view.stretch
    ? mm * stretchPlusMinus(view.stretch, a, b)
    : 2 * spreadOf(difference(slopesAlong(ends[1], along), slopesAlong(ends[0], along)), trustOf(view));
  return { mm, plusMinusMm: hypot(rest, points) };
}

/** The place in the scene at a photo point, with ± from camera, print, height and the point's own spread in px. */
export function placeInScene(view: View, photo: Point<'photo'>, sigmaPx = 0): PlaceInScene {
  const at = toScene(view, photo);
  if (view.kind === 'scale') {
    const noise = 2 * sigmaPx * view.mmPerPixel;
    const [x, y] = [at.x * view.plusMinus, at.y * view.plusMinus];
    return { at, xPlusMinusMm: hypot(x, noise), yPlusMinusMm: hypot(y, noise) };
  }
  const slopes = slopesOnPlane(view.camera, photo, view.planeHeightMm);
  const trust = trustOf(view);
  const plusMinus = (along: Along) =>
    2 * hypot(spreadOf(slopesAlong(slopes, along), trust), sigmaPx * noiseAlong(slopes, along));
  return { at, xPlusMinusMm: plusMinus({ x: 1, y: 0 }), yPlusMinusMm: plusMinus({ x: 0, y: 1 }) };
}

/**
 * How far a length at the height of the plane may be off against one on the paper, mm (k = 2): what the focal length
 * and the stand leave open, without the print and without the height itself where a ruler gave it.
 */
export function cameraPlusMinus(view: CameraView, from: Point<'scene'>, to: Point<'scene'>): number {
  const photos = [toPhoto(view, from), toPhoto(view, to)];
  const shareAt = (heightMm: number): readonly number[] => {
    const ends = photos.map((photo) => slopesOnPlane(view.camera, photo, heightMm));
    const [x, y] = [ends[1].at.x - ends[0].at.x, ends[1].at.y - ends[0].at.y];
    const mm = hypot(x, y);
    const along = { x: x / mm, y: y / mm };
    const slopes = difference(slopesAlong(ends[1], along), slopesAlong(ends[0], along));
    return slopes.map((one) => one / mm);
  };
  const [low, high] = [shareAt(0), shareAt(view.planeHeightMm)];
  const apart = high.map((one, place) => one - (place < CAMERA_UNKNOWNS ? low[place] : 0));
  const trust = trustOf(view, view.heightWithCamera === undefined ? 0 : view.planeHeightPlusMinusMm);
  return 2 * distanceBetween(from, to) * spreadOf(apart, trust);
}

interface Along {
  readonly x: number;
  readonly y: number;
}

/** Slopes of a coordinate along a direction, by the camera's unknowns and by the height. */
function slopesAlong({ xBy, yBy }: Slopes, { x, y }: Along): readonly number[] {
  return Array.from(xBy, (one, place) => x * one + y * yBy[place]);
}

function noiseAlong({ byPhoto: [xx, xy, yx, yy] }: Slopes, { x, y }: Along): number {
  return hypot(x * xx + y * yx, x * xy + y * yy);
}

function difference(a: readonly number[], b: readonly number[]): readonly number[] {
  return a.map((one, place) => one - b[place]);
}

type Trust = (row: number, column: number) => number;

/** Covariance of the camera's unknowns with the height of the plane as one more. */
function trustOf(view: CameraView, heightPlusMinusMm = view.planeHeightPlusMinusMm): Trust {
  const { covariance } = view.trust;
  return (row, column) => {
    const [low, high] = row < column ? [row, column] : [column, row];
    if (high < CAMERA_UNKNOWNS) return covariance[low * CAMERA_UNKNOWNS + high];
    return low === high ? (heightPlusMinusMm / 2) ** 2 : (view.heightWithCamera?.[low] ?? 0);
  };
}

function spreadOf(slopes: readonly number[], trust: Trust): number {
  let variance = 0;
  slopes.forEach((one, i) => {
    slopes.forEach((other, j) => {
      variance += one * other * trust(i, j);
    });
  });
  return Math.sqrt(Math.max(0, variance));
}

function stretchPlusMinus(stretch: Stretch, a: Point<'scene'>, b: Point<'scene'>): number {
  const turn = atan2(b.y - a.y, b.x - a.x) - stretch.alongRad;
  return hypot(stretch.alongPlusMinus * cos(turn) ** 2, stretch.acrossPlusMinus * sin(turn) ** 2);
}
