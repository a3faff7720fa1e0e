import { atan2, cos, hypot, norm, sin } from '../../base/index.ts';
import type { Matrix3 } from '../../numeric/index.ts';

/** Rotation about the vector (rx, ry, rz) by its length in radians (Rodrigues' formula). */
export function turnMatrix(rx: number, ry: number, rz: number): Matrix3 {
  const angle = hypot(rx, ry, rz);
  const sine = angle > 0 ? sin(angle) / angle : 1;
  const half = angle > 0 ? sin(angle / 2) / angle : 1 / 2;
  const versine = 2 * half * half;
  const c = cos(angle);
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
  const sine = norm(w) / 2;
  const cosine = (m[0] + m[4] + m[8] - 1) / 2;
  const angle = atan2(sine, cosine);
  if (cosine > -1 / 2) {
    const scale = sine > 0 ? angle / (2 * sine) : 1 / 2;
    return [w[0] * scale, w[1] * scale, w[2] * scale];
  }
  return nearHalfTurn(m, angle, w);
}

/** Near a half turn the axis is read from the diagonal, and its sign from the small skew part. */
function nearHalfTurn(m: Matrix3, angle: number, w: readonly number[]): [number, number, number] {
  const cosine = cos(angle);
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

/** The product a · b: first turned by b, then by a. */
export function turnTwice(a: Matrix3, b: Matrix3): Matrix3 {
  const cell = (row: number, column: number) =>
    a[3 * row] * b[column] + a[3 * row + 1] * b[3 + column] + a[3 * row + 2] * b[6 + column];
  return [
    cell(0, 0),
    cell(0, 1),
    cell(0, 2),
    cell(1, 0),
    cell(1, 1),
    cell(1, 2),
    cell(2, 0),
    cell(2, 1),
    cell(2, 2),
  ];
}

/** The flip from y up, z toward the camera to y down, z away from it, before the turn `m`. */
export function flipped(m: Matrix3): Matrix3 {
  return [m[0], -m[1], -m[2], m[3], -m[4], -m[5], m[6], -m[7], -m[8]];
}

/** A vector turned: `turn` times `v`. */
export function turned(
  turn: Matrix3,
  [x, y, z]: readonly [number, number, number],
): [number, number, number] {
  return [
    turn[0] * x + turn[1] * y + turn[2] * z,
    turn[3] * x + turn[4] * y + turn[5] * z,
    turn[6] * x + turn[7] * y + turn[8] * z,
  ];
}

/** A vector turned back: the transpose of `turn` times `v`. */
export function turnedBack(turn: Matrix3, v: readonly [number, number, number]): [number, number, number] {
  const [x, y, z] = v;
  return [
    turn[0] * x + turn[3] * y + turn[6] * z,
    turn[1] * x + turn[4] * y + turn[7] * z,
    turn[2] * x + turn[5] * y + turn[8] * z,
  ];
}
