import { Bug, type Point, point } from '../../base/index.ts';
import { bend, type Lens, unbend } from './lens.ts';
import { flipped, turnedBack, turnMatrix } from './turn.ts';

/**
 * One camera over the scene: a lens and its pose.
 *
 * A place of the scene (x, y, z up out of the paper, mm) is turned and shifted into the camera (x right, y down, z
 * forward), divided by its depth, and drawn by the lens.
 */
export interface Camera extends Lens {
  /** rad. Turn from a camera that looks straight down with the sheet upright in its picture. */
  readonly turnRad: readonly [number, number, number];
  /** mm. Where the scene's origin lies, seen from the camera. */
  readonly shiftMm: readonly [number, number, number];
}

/** A place over the scene's plane with its height above the paper, mm. */
export interface SheetPlace {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The camera made ready for many points. */
export interface Projection {
  /** Where a place over the sheet shows in the photograph. */
  readonly toPhoto: (x: number, y: number, z: number) => Point<'photo'>;
  /**
   * The place seen at a photo point on the plane `z` mm above the paper. A promise of `solveCamera` is that every
   * point of its picture has one; a point that has none is a `Bug`.
   */
  readonly toPlane: (photo: Point<'photo'>, z: number) => { readonly x: number; readonly y: number };
  /** mm. Where the projection centre stands over the sheet. */
  readonly stand: SheetPlace;
}

export function projection(camera: Camera): Projection {
  const turn = flipped(turnMatrix(...camera.turnRad));
  const { focalPx, centre, shiftMm: t } = camera;
  const stand = turnedBack(turn, [0 - t[0], 0 - t[1], 0 - t[2]]);
  return {
    stand: { x: stand[0], y: stand[1], z: stand[2] },
    toPhoto: (x, y, z) => {
      const depth = turn[6] * x + turn[7] * y + turn[8] * z + t[2];
      const u = (turn[0] * x + turn[1] * y + turn[2] * z + t[0]) / depth;
      const v = (turn[3] * x + turn[4] * y + turn[5] * z + t[1]) / depth;
      const bent = bend(camera, u, v);
      return point(centre.x + focalPx * bent.u, centre.y + focalPx * bent.v);
    },
    toPlane: (photo, z) => {
      const direction = unbend(camera, (photo.x - centre.x) / focalPx, (photo.y - centre.y) / focalPx);
      if (direction === null) throw new Bug(`no ray through photo point (${photo.x}, ${photo.y})`);
      const ray = turnedBack(turn, [direction[0], direction[1], 1]);
      const reach = (z - stand[2]) / ray[2];
      if (!(reach > 0)) throw new Bug(`photo point (${photo.x}, ${photo.y}) looks past the plane`);
      return { x: stand[0] + reach * ray[0], y: stand[1] + reach * ray[1] };
    },
  };
}
