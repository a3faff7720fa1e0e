/** A camera over the table: where each pixel's ray meets a level plane. World: mm, x right, y up, z toward the camera. */
export interface Lens {
  /** The point of the ray of the pixel on the plane at height z. */
  onPlane(xPx: number, yPx: number, z: number): readonly [number, number];
}

export interface LensSettings {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  /** Offset of the optical axis from the picture's middle, px. */
  readonly centreOffsetPx: readonly [number, number];
  readonly k1: number;
  readonly k2: number;
  readonly eye: readonly [number, number, number];
  readonly target: readonly [number, number, number];
  /** Turn of the picture about the line of sight. */
  readonly rollRad: number;
}

type Vector = readonly [number, number, number];

export function makeLens(s: LensSettings): Lens {
  const forward = unit(minus(s.target, s.eye));
  const right0 = unit(cross(forward, [0, 1, 0]));
  const up0 = cross(right0, forward);
  const right = plus(times(right0, Math.cos(s.rollRad)), times(up0, Math.sin(s.rollRad)));
  const up = cross(right, forward);
  const cx = (s.widthPx - 1) / 2 + s.centreOffsetPx[0];
  const cy = (s.heightPx - 1) / 2 + s.centreOffsetPx[1];
  return {
    onPlane(xPx, yPx, z) {
      const dx = (xPx - cx) / s.focalPx;
      const dy = (yPx - cy) / s.focalPx;
      const shrink = undistortion(Math.hypot(dx, dy), s.k1, s.k2);
      const a = dx * shrink;
      const b = -dy * shrink;
      const rayX = forward[0] + a * right[0] + b * up[0];
      const rayY = forward[1] + a * right[1] + b * up[1];
      const rayZ = forward[2] + a * right[2] + b * up[2];
      const t = (z - s.eye[2]) / rayZ;
      return [s.eye[0] + t * rayX, s.eye[1] + t * rayY];
    },
  };
}

/** Ratio of the true radius to the seen one: seen = r (1 + k1 r² + k2 r⁴), solved by repeated division. */
function undistortion(seen: number, k1: number, k2: number): number {
  let r = seen;
  for (let i = 0; i < 6; i++) r = seen / (1 + k1 * r * r + k2 * r * r * r * r);
  return seen > 0 ? r / seen : 1;
}

function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function times(a: Vector, k: number): Vector {
  return [a[0] * k, a[1] * k, a[2] * k];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(a: Vector): Vector {
  return times(a, 1 / Math.hypot(a[0], a[1], a[2]));
}
