import { hypot, type Point, SETTLED } from '../../base/index.ts';

/**
 * How a lens draws: square pixels, bending along the radius in up to three terms and across it in two.
 *
 * A direction (u, v) is a place at depth 1 before the camera, u right and v down. With r² = u² + v² it is drawn at
 * u (1 + k1 r² + k2 r⁴ + k3 r⁶) + 2 p1 u v + p2 (r² + 2 u²), v alike with p1 (r² + 2 v²) + 2 p2 u v, times the focal
 * length, from `centre`. Source of the model: D. C. Brown, "Decentering distortion of lenses", 1966.
 */
export interface Lens {
  readonly focalPx: number;
  readonly centre: Point<'photo'>;
  readonly k1: number;
  readonly k2: number;
  readonly k3: number;
  readonly p1: number;
  readonly p2: number;
}

/** What bends a direction; a lens without its focal length and centre. */
export type Bending = Pick<Lens, 'k1' | 'k2' | 'k3' | 'p1' | 'p2'>;

/** A bent direction with its slopes; the slope of u by v is that of v by u. */
export interface Bent {
  readonly u: number;
  readonly v: number;
  readonly uByU: number;
  readonly uByV: number;
  readonly vByV: number;
}

export function bend({ k1, k2, k3, p1, p2 }: Bending, u: number, v: number): Bent {
  const square = u * u + v * v;
  const stretch = 1 + square * (k1 + square * (k2 + square * k3));
  const growth = k1 + square * (2 * k2 + square * 3 * k3);
  return {
    u: u * stretch + 2 * p1 * u * v + p2 * (square + 2 * u * u),
    v: v * stretch + p1 * (square + 2 * v * v) + 2 * p2 * u * v,
    uByU: stretch + 2 * u * u * growth + 2 * p1 * v + 6 * p2 * u,
    uByV: 2 * (u * v * growth + p1 * u + p2 * v),
    vByV: stretch + 2 * v * v * growth + 6 * p1 * v + 2 * p2 * u,
  };
}

const MOST_STEPS = 60;

/** The radius that the lens stretches to `seen`, both at depth 1; null where the model folds back. */
export function undistortedRadius(
  seen: number,
  { k1, k2, k3 }: Pick<Bending, 'k1' | 'k2' | 'k3'>,
): number | null {
  let radius = seen;
  for (let step = 0; step < MOST_STEPS; step++) {
    const square = radius * radius;
    const slope = 1 + square * (3 * k1 + square * (5 * k2 + square * 7 * k3));
    if (!(slope > 0)) return null;
    const excess = radius * (1 + square * (k1 + square * (k2 + square * k3))) - seen;
    radius -= excess / slope;
    if (Math.abs(excess) <= SETTLED * (1 + seen)) return radius >= 0 ? radius : null;
  }
  return null;
}

/** The direction that the lens bends to (bentU, bentV); null where the model folds back. Method: Newton. */
export function unbend(bending: Bending, bentU: number, bentV: number): readonly [number, number] | null {
  const seen = hypot(bentU, bentV);
  const radius = undistortedRadius(seen, bending);
  if (radius === null) return null;
  const share = seen > 0 ? radius / seen : 1;
  let [u, v] = [bentU * share, bentV * share];
  for (let step = 0; step < MOST_STEPS; step++) {
    const bent = bend(bending, u, v);
    const [du, dv] = [bentU - bent.u, bentV - bent.v];
    if (hypot(du, dv) <= SETTLED * (1 + seen)) return [u, v];
    const determinant = bent.uByU * bent.vByV - bent.uByV * bent.uByV;
    if (!(determinant > 0)) return null;
    u += (bent.vByV * du - bent.uByV * dv) / determinant;
    v += (bent.uByU * dv - bent.uByV * du) / determinant;
  }
  return null;
}
