/**
 * Where places over a table show to cameras with a known truth. Written on its own: it shares no code with the solver
 * that is tested with it. A place is turned by an orthonormal base of the camera's own, not by a rotation vector, and
 * bent by the five numbers of the usual lens model.
 */
import { type Point, point } from '../../src/core/base/index.ts';

export interface TrueCamera {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  /** How far the lens's axis misses the middle of the picture. */
  readonly offsetPx: readonly [number, number];
  /** k1, k2, p1, p2, k3. */
  readonly bending: readonly [number, number, number, number, number];
  readonly eye: Vector;
  readonly target: Vector;
  readonly rollRad: number;
}

export type Vector = readonly [number, number, number];

/** Where a place shows, in pixels whose centres have whole numbers. */
export function truePhoto(camera: TrueCamera, place: Vector): Point<'photo'> {
  const forward = unit(less(camera.target, camera.eye));
  const level = unit(cross(forward, [0, 1, 0]));
  const lower = cross(forward, level);
  const [c, s] = [Math.cos(camera.rollRad), Math.sin(camera.rollRad)];
  const ray = less(place, camera.eye);
  const depth = dot(ray, forward);
  const [p, q] = [dot(ray, level) / depth, dot(ray, lower) / depth];
  const [u, v] = [c * p + s * q, c * q - s * p];
  const [k1, k2, p1, p2, k3] = camera.bending;
  const rr = u ** 2 + v ** 2;
  const radial = 1 + k1 * rr + k2 * rr ** 2 + k3 * rr ** 3;
  const x = u * radial + 2 * p1 * u * v + p2 * (rr + 2 * u ** 2);
  const y = v * radial + p1 * (rr + 2 * v ** 2) + 2 * p2 * u * v;
  return point(
    (camera.widthPx - 1) / 2 + camera.offsetPx[0] + camera.focalPx * x,
    (camera.heightPx - 1) / 2 + camera.offsetPx[1] + camera.focalPx * y,
  );
}

/** A place on a plan that lies in the scene at (x, y), turned anticlockwise and printed in the ratios given, at a height. */
export function laidOut(
  plan: { readonly x: number; readonly y: number },
  lies: {
    readonly x: number;
    readonly y: number;
    readonly turnRad: number;
    readonly ratioX: number;
    readonly ratioY: number;
    readonly z: number;
  },
): Vector {
  const [a, b] = [plan.x * lies.ratioX, plan.y * lies.ratioY];
  const [c, s] = [Math.cos(lies.turnRad), Math.sin(lies.turnRad)];
  return [lies.x + a * c - b * s, lies.y + a * s + b * c, lies.z];
}

function less(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(v: Vector): Vector {
  const size = Math.sqrt(dot(v, v));
  return [v[0] / size, v[1] / size, v[2] / size];
}
