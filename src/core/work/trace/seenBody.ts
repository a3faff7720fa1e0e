import type { Finding, Point } from '../../base/index.ts';
import {
  type BodyTrace,
  type PurflingTrace,
  type Rectified,
  rectifiedToScene,
  type View,
  viewMap,
} from '../../photo/index.ts';
import type { Photograph } from './traceRequest.ts';

/** The body as it was traced in one photograph, with the way from where it was traced to the scene. */
export interface SeenBody {
  readonly photograph: Photograph;
  readonly trace: BodyTrace;
  /**
   * As it was traced before it was looked for again from its own restored outline: a height that was wrongly given takes part in
   * that outline, so that the second look would bear it out. Absent where there was one look.
   */
  readonly firstTrace?: BodyTrace;
  /** The view through which the square-on picture was made. */
  readonly tracedView: View;
  /** The view that is measured through: the same, or at the height that several photographs told. */
  readonly view: View;
  /** The square-on picture that was traced; none where the photograph itself was. */
  readonly rectified: Rectified | null;
  readonly onSheet: boolean;
  readonly mmPerPixel: number;
  /** The purfling as it lies in the traced picture; null where it was not looked for. */
  readonly purfling: PurflingTrace | null;
  readonly findings: readonly Finding[];
  /** Of the first photograph: what concerns the sheets and cameras of all. */
  readonly sceneFindings?: readonly Finding[];
  /** What the view alone leaves unsure. */
  readonly viewFindings: readonly Finding[];
}

/** From the picture that was traced to where `map` carries the photograph: to the scene, through a view that may have been corrected since. */
export function sceneWay<To>(seen: SeenBody, map: (photo: Point<'photo'>) => To) {
  const { rectified, tracedView } = seen;
  if (rectified === null) return map;
  const { toPhoto } = viewMap(tracedView);
  return (at: Point<'photo'>): To => map(toPhoto(rectifiedToScene(rectified, at)));
}
