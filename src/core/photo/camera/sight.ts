import type { Camera } from './camera.ts';
import { bend, type Lens } from './lens.ts';
import { flipped, type Matrix3, turnMatrix } from './turn.ts';

/**
 * The order of a camera's unknowns: log focal length, centre x and y, k1, k2, k3, p1, p2, a further small turn in the
 * camera's own frame (3) and the shift (3).
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
export function look(lens: Lens, { turn: r, shift: t }: Pose, x: number, y: number, z: number, sight: Sight) {
  const qx = r[0] * x + r[1] * y + r[2] * z;
  const qy = r[3] * x + r[4] * y + r[5] * z;
  const qz = r[6] * x + r[7] * y + r[8] * z;
  const depth = qz + t[2];
  const [u, v] = [(qx + t[0]) / depth, (qy + t[1]) / depth];
  const f = lens.focalPx;
  const bent = bend(lens, u, v);
  sight.x = lens.centre.x + f * bent.u;
  sight.y = lens.centre.y + f * bent.v;
  sight.depth = depth;
  const near = f / depth;
  const [ux, uy] = [near * bent.uByU, near * bent.uByV];
  const [vx, vy] = [uy, near * bent.vByV];
  slopesOfLens(sight, f, u, v, bent);
  slopesOfPose(sight.xBy, sight.xByPlace, [ux, uy, -(u * ux + v * uy)], [qx, qy, qz], r);
  slopesOfPose(sight.yBy, sight.yByPlace, [vx, vy, -(u * vx + v * vy)], [qx, qy, qz], r);
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

/** From the slopes by the place in the camera's frame: those by a small turn, by the shift, and by the place itself. */
function slopesOfPose(
  by: Float64Array,
  byPlace: Float64Array,
  [gx, gy, gz]: readonly [number, number, number],
  [qx, qy, qz]: readonly [number, number, number],
  r: Matrix3,
): void {
  by[UNKNOWN.turn] = gz * qy - gy * qz;
  by[UNKNOWN.turn + 1] = gx * qz - gz * qx;
  by[UNKNOWN.turn + 2] = gy * qx - gx * qy;
  by[UNKNOWN.shift] = gx;
  by[UNKNOWN.shift + 1] = gy;
  by[UNKNOWN.shift + 2] = gz;
  byPlace[0] = gx * r[0] + gy * r[3] + gz * r[6];
  byPlace[1] = gx * r[1] + gy * r[4] + gz * r[7];
  byPlace[2] = gx * r[2] + gy * r[5] + gz * r[8];
}
