import { Bug, type Point, point, SETTLED } from '../../base/index.ts';

/**
 * One camera over the calibration sheet: square pixels, radial distortion in two terms.
 *
 * A point of the sheet (x, y, z up out of the paper, mm) is turned and shifted into the camera (x right, y down, z
 * forward), divided by its depth, stretched by 1 + k1 r² + k2 r⁴, and scaled by the focal length about `centre`.
 */
export interface Camera {
  readonly focalPx: number;
  readonly centre: Point<'photo'>;
  readonly k1: number;
  readonly k2: number;
  /** rad. Turn from a camera that looks straight down with the sheet upright in its picture. */
  readonly turnRad: readonly [number, number, number];
  /** mm. Where the sheet's origin lies, seen from the camera. */
  readonly shiftMm: readonly [number, number, number];
}

/** A place over the sheet: frame `sheet` with the height above the paper, mm. */
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
  const turn = downTurn(camera.turnRad);
  const { focalPx, centre, k1, k2, shiftMm: t } = camera;
  const stand = back(
    turn,
    t.map((one) => 0 - one),
  );
  return {
    stand: { x: stand[0], y: stand[1], z: stand[2] },
    toPhoto: (x, y, z) => {
      const depth = turn[6] * x + turn[7] * y + turn[8] * z + t[2];
      const across = (turn[0] * x + turn[1] * y + turn[2] * z + t[0]) / depth;
      const down = (turn[3] * x + turn[4] * y + turn[5] * z + t[1]) / depth;
      const square = across * across + down * down;
      const stretch = focalPx * (1 + square * (k1 + square * k2));
      return point(centre.x + across * stretch, centre.y + down * stretch);
    },
    toPlane: (photo, z) => {
      const [seenX, seenY] = [(photo.x - centre.x) / focalPx, (photo.y - centre.y) / focalPx];
      const seen = Math.hypot(seenX, seenY);
      const radius = undistortedRadius(seen, k1, k2);
      if (radius === null) throw new Bug(`no ray through photo point (${photo.x}, ${photo.y})`);
      const share = seen > 0 ? radius / seen : 1;
      const ray = back(turn, [seenX * share, seenY * share, 1]);
      const reach = (z - stand[2]) / ray[2];
      if (!(reach > 0)) throw new Bug(`photo point (${photo.x}, ${photo.y}) looks past the plane`);
      return { x: stand[0] + reach * ray[0], y: stand[1] + reach * ray[1] };
    },
  };
}

const MOST_STEPS = 60;

/** The radius that the lens stretches to `seen`, both over the focal length; null where the model folds back. */
export function undistortedRadius(seen: number, k1: number, k2: number): number | null {
  let radius = seen;
  for (let step = 0; step < MOST_STEPS; step++) {
    const square = radius * radius;
    const slope = 1 + square * (3 * k1 + square * 5 * k2);
    if (!(slope > 0)) return null;
    const excess = radius * (1 + square * (k1 + square * k2)) - seen;
    radius -= excess / slope;
    if (Math.abs(excess) <= SETTLED * (1 + seen)) return radius >= 0 ? radius : null;
  }
  return null;
}

export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/** Turn by a rotation vector, after the flip from y up, z toward the camera to y down, z away from it. */
function downTurn([rx, ry, rz]: readonly [number, number, number]): Matrix3 {
  const m = turnMatrix(rx, ry, rz);
  return [m[0], -m[1], -m[2], m[3], -m[4], -m[5], m[6], -m[7], -m[8]];
}

/** Rotation about the vector (rx, ry, rz) by its length in radians, row by row (Rodrigues' formula). */
export function turnMatrix(rx: number, ry: number, rz: number): Matrix3 {
  const angle = Math.hypot(rx, ry, rz);
  const sine = angle > 0 ? Math.sin(angle) / angle : 1;
  const half = angle > 0 ? Math.sin(angle / 2) / angle : 1 / 2;
  const versine = 2 * half * half;
  const c = Math.cos(angle);
  return [
    c + versine * rx * rx,
    versine * rx * ry - sine * rz,
    versine * rx * rz + sine * ry,
    versine * rx * ry + sine * rz,
    c + versine * ry * ry,
    versine * ry * rz - sine * rx,
    versine * rx * rz - sine * ry,
    versine * ry * rz + sine * rx,
    c + versine * rz * rz,
  ];
}

/** The rotation vector of a rotation matrix; length at most π. */
export function turnVector(m: Matrix3): [number, number, number] {
  const w = [m[7] - m[5], m[2] - m[6], m[3] - m[1]] as const;
  const sine = Math.hypot(...w) / 2;
  const cosine = (m[0] + m[4] + m[8] - 1) / 2;
  const angle = Math.atan2(sine, cosine);
  if (cosine > -1 / 2) {
    const scale = sine > 0 ? angle / (2 * sine) : 1 / 2;
    return [w[0] * scale, w[1] * scale, w[2] * scale];
  }
  return nearHalfTurn(m, angle, w);
}

/** Near a half turn the axis is read from the diagonal, and its sign from the small skew part. */
function nearHalfTurn(m: Matrix3, angle: number, w: readonly number[]): [number, number, number] {
  const cosine = Math.cos(angle);
  const square = [m[0], m[4], m[8]].map((one) => Math.max(0, (one - cosine) / (1 - cosine)));
  const largest = square.indexOf(Math.max(...square));
  const lead = Math.sqrt(square[largest] ?? 0);
  const at = (row: number, column: number) => m[3 * row + column] ?? 0;
  const axis = [0, 1, 2].map((place) =>
    place === largest ? lead : (at(place, largest) + at(largest, place)) / (2 * (1 - cosine) * lead),
  );
  const sign = (w[largest] ?? 0) < 0 ? -1 : 1;
  return axis.map((one) => sign * one * angle) as [number, number, number];
}

function back(turn: Matrix3, v: readonly number[]): [number, number, number] {
  const [x = 0, y = 0, z = 0] = v;
  return [
    turn[0] * x + turn[3] * y + turn[6] * z,
    turn[1] * x + turn[4] * y + turn[7] * z,
    turn[2] * x + turn[5] * y + turn[8] * z,
  ];
}
