import { cos, type Point, point, sin } from '../../base/index.ts';
import type { PrintScale } from '../sheet/printScale.ts';
import { type Camera, projection } from './camera.ts';

/**
 * A correction from callipers: lengths in the direction `alongRad` (anticlockwise from scene x) are multiplied by
 * `along`, those square to it by `across`, about the scene's origin.
 */
export interface Stretch {
  readonly alongRad: number;
  readonly along: number;
  readonly across: number;
  /** Half intervals (k = 2) of lengths in the two directions after the correction, as shares. */
  readonly alongPlusMinus: number;
  readonly acrossPlusMinus: number;
}

/** Seen through a camera that the calibration sheet gave; the scene is the plane `planeHeightMm` above the paper. */
export interface CameraView {
  readonly kind: 'camera';
  readonly camera: Camera;
  readonly printScale: PrintScale;
  readonly planeHeightMm: number;
  /** Half interval (k = 2) of the height. */
  readonly planeHeightPlusMinusMm: number;
  /** How the height goes with the camera's unknowns, where both came from the same photographs; else it goes alone. */
  readonly heightWithCamera?: readonly number[];
  readonly stretch?: Stretch;
  readonly trust: CameraTrust;
}

/** What is not known for certain about a camera and its sheet; lengths take their ± from it. */
export interface CameraTrust {
  /** Covariance of the camera's unknowns in the order of `UNKNOWN`, the print's scale in it, row by row, 14 × 14. */
  readonly covariance: readonly number[];
  /** Half interval (k = 2) of the print's scale, as a share of a length; told for itself, it is in the covariance. */
  readonly printPlusMinus: number;
}

/** Taken square on, or a scan: one scale for the whole picture; the scene's origin is the photo's. */
export interface ScaleView {
  readonly kind: 'scale';
  readonly mmPerPixel: number;
  /** Half interval (k = 2) of the scale, as a share; what nothing checks is as wide as its source says. */
  readonly plusMinus: number;
  readonly stretch?: Stretch;
}

export type View = CameraView | ScaleView;

/** A view made ready for many points; the two ways undo each other. */
export interface ViewMap {
  readonly toScene: (photo: Point<'photo'>) => Point<'scene'>;
  readonly toPhoto: (scene: Point<'scene'>) => Point<'photo'>;
}

/** Scene x is right and y is up; for a camera they run along the sheet's sides. */
export function viewMap(view: View): ViewMap {
  const stretched = stretchMap(view.stretch);
  if (view.kind === 'scale')
    return {
      toScene: ({ x, y }) => stretched.forth(x * view.mmPerPixel, -y * view.mmPerPixel),
      toPhoto: (scene) => {
        const flat = stretched.back(scene);
        return point(flat.x / view.mmPerPixel, -flat.y / view.mmPerPixel);
      },
    };
  const seen = projection(view.camera);
  return {
    toScene: (photo) => {
      const { x, y } = seen.toPlane(photo, view.planeHeightMm);
      return stretched.forth(x, y);
    },
    toPhoto: (scene) => {
      const { x, y } = stretched.back(scene);
      return seen.toPhoto(x, y, view.planeHeightMm);
    },
  };
}

/** The place in the scene that shows at a photo point. */
export function toScene(view: View, photo: Point<'photo'>): Point<'scene'> {
  return viewMap(view).toScene(photo);
}

/** Where a place of the scene shows in the photograph. */
export function toPhoto(view: View, scene: Point<'scene'>): Point<'photo'> {
  return viewMap(view).toPhoto(scene);
}

/**
 * Where a place on the printed sheet shows in the scene: things that lie on the paper and things at the scene's height
 * do not line up, seen from one camera.
 */
export function sheetPlaceInScene(view: CameraView, place: Point<'sheet'>): Point<'scene'> {
  const { x, y } = view.printScale;
  return toScene(view, projection(view.camera).toPhoto(place.x * x, place.y * y, 0));
}

interface StretchMap {
  readonly forth: (x: number, y: number) => Point<'scene'>;
  readonly back: (scene: Point<'scene'>) => Point<'scene'>;
}

function stretchMap(stretch: Stretch | undefined): StretchMap {
  if (!stretch) return { forth: (x, y) => point(x, y), back: (scene) => scene };
  const apply = (along: number, across: number) => {
    const [c, s] = [cos(stretch.alongRad), sin(stretch.alongRad)];
    const xx = along * c * c + across * s * s;
    const xy = (along - across) * c * s;
    const yy = along * s * s + across * c * c;
    return (x: number, y: number) => point<'scene'>(xx * x + xy * y, xy * x + yy * y);
  };
  const undo = apply(1 / stretch.along, 1 / stretch.across);
  return { forth: apply(stretch.along, stretch.across), back: ({ x, y }) => undo(x, y) };
}
