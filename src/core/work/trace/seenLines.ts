import type { Finding, Keeper, Point } from '../../base/index.ts';
import {
  type CentreJoint,
  type JointOffAxis,
  jointOffAxis,
  type PlacedSoundHole,
  purflingPlane,
  type RestoredOutline,
  rectifiedToScene,
  type SoundHolesTrace,
  soundHoleOnPlane,
  traceCentreJoint,
  traceSoundHoles,
  usualHoleHeight,
  type View,
  viewMap,
} from '../../photo/index.ts';
import { bodyWay } from './bodyWay.ts';
import { type SeenBody, sceneWay } from './seenBody.ts';

/** What lies on the plate besides its edge, in the body frame. */
export interface SeenLines {
  /** Middle of the purfling, from the lower end up; empty where none is seen. */
  readonly purfling: {
    readonly bass: readonly Point<'body'>[];
    readonly treble: readonly Point<'body'>[];
    readonly widthMm: number | null;
  };
  readonly soundHoles: {
    readonly bass: PlacedSoundHole<'body'> | null;
    readonly treble: PlacedSoundHole<'body'> | null;
    readonly clearer: 'bass' | 'treble' | null;
  } | null;
  /** The joint of a two-piece plate from end to end, and how far it lies off the mirror axis, to the treble side. */
  readonly centreJoint: {
    readonly ends: readonly [Point<'body'>, Point<'body'>];
    readonly offAxis: JointOffAxis;
  } | null;
  readonly findings: readonly Finding[];
}

/** Purfling, sound holes and centre joint of the first photograph, through the view as it was corrected. */
export function seenLines(
  seen: SeenBody,
  view: View,
  restored: RestoredOutline,
  face: 'top' | 'back',
  keeper: Keeper,
): SeenLines {
  const toBody = bodyWay(restored, face);
  const way = sceneWay(seen, viewMap(view).toScene);
  const purflingWay = sceneWay(seen, viewMap(purflingPlane(view)).toScene);
  const side = (name: 'bass' | 'treble') =>
    (seen.purfling?.places ?? [])
      .filter((place) => place.side === name)
      .map((place) => toBody(purflingWay(place.point)));
  const { trace } = seen;
  const holes =
    face === 'top' ? keeper(trace, 'holes', null, () => traceSoundHoles(pictureOf(seen), trace)) : null;
  const joint = keeper(trace.pose, 'joint', null, () => traceCentreJoint(pictureOf(seen), trace.pose));
  const width = seen.purfling?.widthPx ?? null;
  return {
    purfling: {
      bass: side('bass'),
      treble: side('treble'),
      widthMm: width && width.value * seen.mmPerPixel,
    },
    soundHoles: holes && holesInBody(seen, view, restored, holes, toBody),
    centreJoint: joint.joint && jointInBody(seen, joint.joint, restored, way, toBody, face),
    findings: [...(seen.purfling?.findings ?? []), ...(holes?.findings ?? []), ...joint.findings],
  };
}

function jointInBody(
  { mmPerPixel }: SeenBody,
  { lower, upper, plusMinusPx }: CentreJoint,
  { axis }: RestoredOutline,
  way: (at: Point<'photo'>) => Point<'scene'>,
  toBody: (at: Point<'scene'>) => Point<'body'>,
  face: 'top' | 'back',
): SeenLines['centreJoint'] {
  const scene = { lower: way(lower), upper: way(upper) };
  const own = { lower: plusMinusPx.lower * mmPerPixel, upper: plusMinusPx.upper * mmPerPixel };
  const right = jointOffAxis(scene, own, axis);
  const side = face === 'top' ? 1 : -1;
  return {
    ends: [toBody(scene.lower), toBody(scene.upper)],
    offAxis: { ...right, lowerMm: side * right.lowerMm, upperMm: side * right.upperMm },
  };
}

function pictureOf({ rectified, photograph }: SeenBody) {
  return rectified?.picture ?? photograph.picture;
}

/** A hole lies on the arch: it is looked at through the same view, higher by what is usual. */
function holesInBody(
  seen: SeenBody,
  view: View,
  restored: RestoredOutline,
  holes: SoundHolesTrace,
  toBody: (at: Point<'scene'>) => Point<'body'>,
): SeenLines['soundHoles'] {
  const edgeHeightMm = view.kind === 'camera' ? view.planeHeightMm : 0;
  const height = usualHoleHeight(edgeHeightMm, restored.bodyLengthMm);
  const atHeight = (at: Point<'photo'>, heightMm: number): Point<'body'> =>
    toBody(wayAt(seen, view, heightMm)(at));
  const placed = (side: 'bass' | 'treble') => {
    const hole = holes[side];
    return hole && soundHoleOnPlane(hole, atHeight, height);
  };
  return { bass: placed('bass'), treble: placed('treble'), clearer: holes.clearer };
}

function wayAt(seen: SeenBody, view: View, heightMm: number) {
  const raised: View = view.kind === 'camera' ? { ...view, planeHeightMm: heightMm } : view;
  const { toScene } = viewMap(raised);
  const { rectified, tracedView } = seen;
  if (rectified === null) return toScene;
  const { toPhoto } = viewMap(tracedView);
  return (at: Point<'photo'>) => toScene(toPhoto(rectifiedToScene(rectified, at)));
}
