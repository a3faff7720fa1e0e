import { distanceBetween, type Point } from '../../base/index.ts';
import { projection } from './camera.ts';
import { cameraOf, parametersOf, slopeSteps } from './cameraParameters.ts';
import { type CameraView, type Stretch, toPhoto, toScene, type View } from './view.ts';

/** A length in the scene with its half interval (k = 2). */
export interface SceneLength {
  readonly mm: number;
  readonly plusMinusMm: number;
}

/**
 * The length between two photo points in the scene. Its ± holds what is not known about camera, print and height of
 * the plane, or what the callipers leave once they have corrected the scale; not the spread of the two points.
 */
export function lengthBetween(view: View, from: Point<'photo'>, to: Point<'photo'>): SceneLength {
  const [a, b] = [toScene(view, from), toScene(view, to)];
  const mm = distanceBetween(a, b);
  if (view.stretch) return { mm, plusMinusMm: mm * stretchPlusMinus(view.stretch, a, b) };
  if (view.kind === 'scale') return { mm, plusMinusMm: mm * view.plusMinus };
  const parts = cameraParts(view, from, to);
  return { mm, plusMinusMm: Math.hypot(parts.cameraMm, parts.heightMm, mm * view.trust.printPlusMinus) };
}

/** The same length's ± from the camera alone: what the focal length and the stand leave open. */
export function cameraPlusMinus(view: CameraView, from: Point<'scene'>, to: Point<'scene'>): number {
  return cameraParts(view, toPhoto(view, from), toPhoto(view, to)).cameraMm;
}

function cameraParts(view: CameraView, from: Point<'photo'>, to: Point<'photo'>) {
  const lengthAt = (camera: CameraView['camera'], heightMm: number) => {
    const seen = projection(camera);
    const [a, b] = [seen.toPlane(from, heightMm), seen.toPlane(to, heightMm)];
    return Math.hypot(b.x - a.x, b.y - a.y);
  };
  const parameters = parametersOf(view.camera);
  const far = Math.max(
    ...[from, to].map((one) => Math.hypot(one.x - view.camera.centre.x, one.y - view.camera.centre.y)),
  );
  const slopes = slopeSteps(view.camera, far / view.camera.focalPx).map((step, place) => {
    const shifted = (by: number) => parameters.map((one, other) => (other === place ? one + by : one));
    const lengths = [step, -step].map((by) => lengthAt(cameraOf(shifted(by)), view.planeHeightMm));
    return (lengths[0] - lengths[1]) / (2 * step);
  });
  const size = slopes.length;
  let variance = 0;
  slopes.forEach((one, i) => {
    slopes.forEach((other, j) => {
      variance += one * other * view.trust.covariance[i * size + j];
    });
  });
  const above = lengthAt(view.camera, view.planeHeightMm + view.planeHeightPlusMinusMm);
  return {
    cameraMm: 2 * Math.sqrt(Math.max(0, variance)),
    heightMm: Math.abs(above - lengthAt(view.camera, view.planeHeightMm)),
  };
}

function stretchPlusMinus(stretch: Stretch, a: Point<'scene'>, b: Point<'scene'>): number {
  const turn = Math.atan2(b.y - a.y, b.x - a.x) - stretch.alongRad;
  return Math.hypot(
    stretch.alongPlusMinus * Math.cos(turn) ** 2,
    stretch.acrossPlusMinus * Math.sin(turn) ** 2,
  );
}
