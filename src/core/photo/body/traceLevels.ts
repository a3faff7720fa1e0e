import { KEEP_NOTHING, letGo } from '../../base/index.ts';
import { shrinkLinear, shrinkToLinear } from '../picture/linearPicture.ts';
import type { Picture } from '../picture/picture.ts';
import type { TraceOptions } from './bodyTrace.ts';
import type { FitKnowledge } from './fitRows.ts';
import { levelOf, type PictureLevel } from './pictureLevel.ts';
import type { LengthRange } from './poseSearch.ts';
import { alongStrokes } from './strokes.ts';

const FINISH_PIXELS = 1500000;
const FIT_PIXELS = 250000;
const COARSE_PIXELS = 100000;
const POSE_SIDE_PX = 180;

/** The picture in four sizes: to finish, to fit, for the coarse passes, and to look for poses. Nothing of an earlier trace is left in them. */
export interface TraceLevels {
  readonly finish: PictureLevel;
  readonly fit: PictureLevel;
  readonly coarse: PictureLevel;
  readonly pose: PictureLevel;
}

export function traceLevels(picture: Picture, options: TraceOptions): TraceLevels {
  const masked = [...(options.masked ?? []), ...(options.hints?.excluded ?? [])];
  const keeper = options.keeper ?? KEEP_NOTHING;
  return keeper(picture, 'levels', masked, () => newLevels(picture, masked));
}

/** A trace is done with them: nothing of it is left in what may be kept for the next one. */
export function forgetBodies({ finish, fit, coarse, pose }: TraceLevels): void {
  for (const level of [finish, fit, coarse, pose]) level.forgetBodies();
}

function newLevels(picture: Picture, masked: Parameters<typeof levelOf>[2]): TraceLevels {
  const pixels = picture.widthPx * picture.heightPx;
  const factorTo = (count: number) => Math.min(1, Math.sqrt(count / pixels));
  const finish = factorTo(FINISH_PIXELS);
  const fit = factorTo(FIT_PIXELS);
  const coarse = factorTo(COARSE_PIXELS);
  const pose = Math.min(1, POSE_SIDE_PX / Math.max(picture.widthPx, picture.heightPx));
  const large = shrinkToLinear(picture, finish);
  const middle = shrinkLinear(large, fit / finish);
  const rough = shrinkLinear(middle, coarse / fit);
  const small = shrinkLinear(rough, pose / coarse);
  const levels = {
    finish: levelOf(large, finish, masked),
    fit: levelOf(middle, fit, masked),
    coarse: levelOf(rough, coarse, masked),
    pose: levelOf(small, pose, masked),
  };
  // A level holds its own colours, made from these planes. Where a size is that of another the two are one picture, let go of once.
  letGo(...[large, middle, rough, small].flatMap(({ planes }) => planes));
  return levels;
}

/** What the maker told, in px of a level. */
export function knowledgeAt(level: PictureLevel, options: TraceOptions): FitKnowledge {
  const { factor } = level;
  const place = (p: { readonly x: number; readonly y: number }) => ({
    x: (p.x + 0.5) * factor - 0.5,
    y: (p.y + 0.5) * factor - 0.5,
  });
  const { lengthPx, hints } = options;
  return {
    lengthPx: lengthPx && { value: lengthPx.value * factor, sigma: lengthPx.sigma * factor },
    onEdge: (hints?.onEdge ?? []).map(place),
    inside: [...(hints?.inside ?? []), ...alongStrokes(hints?.insideStrokes)].map(place),
    outside: [...(hints?.outside ?? []), ...alongStrokes(hints?.outsideStrokes)].map(place),
  };
}

/** mm. The bodies looked for where only the scale is known: from small violins to large violas, and cellos (published sizes). */
const SMALL_BODIES_MM = [300, 460] as const;
const LONGEST_BODY_MM = 810;
/** Shares of the picture's long side that a body's length may have where nothing is known. */
const SHORTEST_SHARE = 0.22;
const LONGEST_SHARE = 1.05;
const LEAST_SPREAD = 0.06;

/** Body lengths to look for, px of the pose level. */
export function lengthRange({ pose }: TraceLevels, { lengthPx, mmPerPixel }: TraceOptions): LengthRange {
  const side = Math.max(pose.lab.widthPx, pose.lab.heightPx);
  if (lengthPx) {
    const middle = lengthPx.value * pose.factor;
    const spread = Math.max(LEAST_SPREAD, (2 * lengthPx.sigma) / lengthPx.value);
    return { fromPx: middle * (1 - spread), toPx: middle * (1 + spread) };
  }
  const whole = { fromPx: SHORTEST_SHARE * side, toPx: LONGEST_SHARE * side };
  if (mmPerPixel === undefined) return whole;
  const pxPerMm = pose.factor / mmPerPixel;
  const [least, most] = SMALL_BODIES_MM;
  const longest = side > LONGEST_BODY_MM * pxPerMm ? LONGEST_BODY_MM : most;
  return {
    fromPx: least * pxPerMm,
    toPx: Math.max(least * pxPerMm, Math.min(whole.toPx, longest * pxPerMm)),
  };
}
