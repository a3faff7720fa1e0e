import { point } from '../../base/index.ts';
import type { Camera } from './camera.ts';

/** The order of a camera's unknowns: log focal length, centre x, y, k1, k2, turn (3), shift (3). */
export const PARAMETERS = { logFocal: 0, centreX: 1, centreY: 2, k1: 3, k2: 4, turn: 5, shift: 8 } as const;

export function parametersOf(camera: Camera): Float64Array {
  const { focalPx, centre, k1, k2, turnRad, shiftMm } = camera;
  return Float64Array.of(Math.log(focalPx), centre.x, centre.y, k1, k2, ...turnRad, ...shiftMm);
}

export function cameraOf(p: ArrayLike<number>): Camera {
  return {
    focalPx: Math.exp(p[0]),
    centre: point(p[1], p[2]),
    k1: p[3],
    k2: p[4],
    turnRad: [p[5], p[6], p[7]],
    shiftMm: [p[8], p[9], p[10]],
  };
}

/** A step of each unknown that moves a picture by a fraction of a pixel: small enough for slopes, above rounding. */
export function slopeSteps(camera: Camera, cornerRadius: number): number[] {
  const angle = 1 / 4 / camera.focalPx;
  const [k1, k2] = [angle / cornerRadius ** 3, angle / cornerRadius ** 5];
  const shift = angle * Math.abs(camera.shiftMm[2]);
  return [angle, 1 / 4, 1 / 4, k1, k2, angle, angle, angle, shift, shift, shift];
}
