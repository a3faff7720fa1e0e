import type { Finding, Point } from '../../base/index.ts';
import {
  type BodyTrace,
  type CalibrationSheet,
  type Rectified,
  rectifiedToScene,
  toPhoto,
  type View,
} from '../../photo/index.ts';
import type { Photograph } from './traceRequest.ts';

/** The body as it was traced in one photograph, with the way from where it was traced to the scene. */
export interface SeenBody {
  readonly photograph: Photograph;
  readonly trace: BodyTrace;
  readonly view: View;
  /** The square-on picture that was traced; none where the photograph itself was. */
  readonly rectified: Rectified | null;
  readonly sheet: CalibrationSheet | null;
  readonly mmPerPixel: number;
  readonly findings: readonly Finding[];
}

/** From the picture that was traced to the scene, through a view that may have been corrected since. */
export function sceneWay(seen: SeenBody, map: (photo: Point<'photo'>) => Point<'scene'>) {
  const { rectified, view } = seen;
  if (rectified === null) return map;
  return (at: Point<'photo'>): Point<'scene'> => map(toPhoto(view, rectifiedToScene(rectified, at)));
}
