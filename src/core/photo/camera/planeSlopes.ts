import type { Point } from '../../base/index.ts';
import { type Camera, projection } from './camera.ts';
import { CAMERA_UNKNOWNS, emptySight, look, poseOf } from './sight.ts';

/** The place that a photo point shows on a plane, and how it moves. */
export interface Slopes {
  readonly at: { readonly x: number; readonly y: number };
  /** Slopes by the camera's unknowns in their order and, last, by the height of the plane. */
  readonly xBy: Float64Array;
  readonly yBy: Float64Array;
  /** Slopes by the photo point: x by x, x by y, y by x, y by y; mm a px. */
  readonly byPhoto: readonly [number, number, number, number];
}

/** The slopes of the place at a photo point on the plane `heightMm` over the paper, from those of what shows there. */
export function slopesOnPlane(camera: Camera, photo: Point<'photo'>, heightMm: number): Slopes {
  const at = projection(camera).toPlane(photo, heightMm);
  const sight = emptySight();
  look(camera, poseOf(camera), at.x, at.y, heightMm, sight);
  const [a, b, height] = sight.xByPlace;
  const [c, d, heightY] = sight.yByPlace;
  const determinant = a * d - b * c;
  const byPhoto = [d / determinant, -b / determinant, -c / determinant, a / determinant] as const;
  const xBy = new Float64Array(CAMERA_UNKNOWNS + 1);
  const yBy = new Float64Array(CAMERA_UNKNOWNS + 1);
  const set = (place: number, dx: number, dy: number): void => {
    xBy[place] = -(byPhoto[0] * dx + byPhoto[1] * dy);
    yBy[place] = -(byPhoto[2] * dx + byPhoto[3] * dy);
  };
  for (let place = 0; place < CAMERA_UNKNOWNS; place++) set(place, sight.xBy[place], sight.yBy[place]);
  set(CAMERA_UNKNOWNS, height, heightY);
  return { at, xBy, yBy, byPhoto };
}
