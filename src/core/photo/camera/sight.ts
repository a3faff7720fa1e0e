import type { Matrix3 } from '../../numeric/index.ts';
import type { Camera } from './camera.ts';
import { bend, type Lens } from './lens.ts';
import { flipped, turnMatrix } from './turn.ts';

/**
 * The order of a camera's unknowns: log focal length, centre x and y, k1, k2, k3, p1, p2, a further small turn
 * of the camera about itself (3) and the shift (3).
 */
export const UNKNOWN = {
  logFocal: 0,
  centreX: 1,
  centreY: 2,
  k1: 3,
  k2: 4,
  k3: 5,
  p1: 6,
  p2: 7,
  turn: 8,
  shift: 11,
} as const;
export const LENS_UNKNOWNS = 8;
export const POSE_UNKNOWNS = 6;
export const CAMERA_UNKNOWNS = LENS_UNKNOWNS + POSE_UNKNOWNS;

/** A camera as the adjustment holds it: the lens, the whole turn as a matrix (flip included), the shift. */
export interface Pose {
  readonly turn: Matrix3;
  readonly shift: readonly [number, number, number];
}

export function poseOf(camera: Camera): Pose {
  return { turn: flipped(turnMatrix(...camera.turnRad)), shift: camera.shiftMm };
}

/** Where a place shows, with slopes; written anew by every look so that many looks cost no memory. */
export interface Sight {
  x: number;
  y: number;
  depth: number;
  /** Slopes of x and of y by the camera's unknowns. */
  readonly xBy: Float64Array;
  readonly yBy: Float64Array;
  /** Slopes of x and of y by the place's three coordinates. */
  readonly xByPlace: Float64Array;
  readonly yByPlace: Float64Array;
}

export function emptySight(): Sight {
  return {
    x: 0,
    y: 0,
    depth: 0,
    xBy: new Float64Array(CAMERA_UNKNOWNS),
    yBy: new Float64Array(CAMERA_UNKNOWNS),
    xByPlace: new Float64Array(3),
    yByPlace: new Float64Array(3),
  };
}

/** Looks at a place of the scene and writes what it sees into `sight`. */
export function look(
  lens: Lens,
  { turn: r, shift: t }: Pose,
  x: number,
  y: number,
  z: number,
  sight: Sight,
): void {
  const ax = r[0] * x + r[1] * y + r[2] * z + t[0];
  const ay = r[3] * x + r[4] * y + r[5] * z + t[1];
  const depth = r[6] * x + r[7] * y + r[8] * z + t[2];
  const [u, v] = [ax / depth, ay / depth];
  const f = lens.focalPx;
  const bent = bend(lens, u, v);
  sight.x = lens.centre.x + f * bent.u;
  sight.y = lens.centre.y + f * bent.v;
  sight.depth = depth;
  const near = f / depth;
  const [ux, uy, vy] = [near * bent.uByU, near * bent.uByV, near * bent.vByV];
  slopesOfLens(sight, f, u, v, bent);
  slopesOfPose(sight.xBy, ux, uy, -(u * ux + v * uy), ax, ay, depth);
  slopesOfPose(sight.yBy, uy, vy, -(u * uy + v * vy), ax, ay, depth);
  slopesOfPlace(sight.xByPlace, sight.xBy, r);
  slopesOfPlace(sight.yByPlace, sight.yBy, r);
}

function slopesOfLens(
  { xBy, yBy }: Sight,
  f: number,
  u: number,
  v: number,
  bent: { readonly u: number; readonly v: number },
): void {
  const square = u * u + v * v;
  let stretch = f;
  xBy[UNKNOWN.logFocal] = f * bent.u;
  yBy[UNKNOWN.logFocal] = f * bent.v;
  xBy[UNKNOWN.centreX] = 1;
  yBy[UNKNOWN.centreX] = 0;
  xBy[UNKNOWN.centreY] = 0;
  yBy[UNKNOWN.centreY] = 1;
  for (let term = UNKNOWN.k1; term <= UNKNOWN.k3; term++) {
    stretch *= square;
    xBy[term] = stretch * u;
    yBy[term] = stretch * v;
  }
  xBy[UNKNOWN.p1] = f * 2 * u * v;
  yBy[UNKNOWN.p1] = f * (square + 2 * v * v);
  xBy[UNKNOWN.p2] = f * (square + 2 * u * u);
  yBy[UNKNOWN.p2] = f * 2 * u * v;
}

/** Slopes by a small turn and by the shift, from those by the place in the camera's frame. */
function slopesOfPose(
  by: Float64Array,
  gx: number,
  gy: number,
  gz: number,
  ax: number,
  ay: number,
  az: number,
): void {
  by[UNKNOWN.turn] = gz * ay - gy * az;
  by[UNKNOWN.turn + 1] = gx * az - gz * ax;
  by[UNKNOWN.turn + 2] = gy * ax - gx * ay;
  by[UNKNOWN.shift] = gx;
  by[UNKNOWN.shift + 1] = gy;
  by[UNKNOWN.shift + 2] = gz;
}

/** Slopes by the place in the scene: those by the shift, turned back. */
function slopesOfPlace(byPlace: Float64Array, by: Float64Array, r: Matrix3): void {
  const gx = by[UNKNOWN.shift];
  const gy = by[UNKNOWN.shift + 1];
  const gz = by[UNKNOWN.shift + 2];
  byPlace[0] = gx * r[0] + gy * r[3] + gz * r[6];
  byPlace[1] = gx * r[1] + gy * r[4] + gz * r[7];
  byPlace[2] = gx * r[2] + gy * r[5] + gz * r[8];
}
