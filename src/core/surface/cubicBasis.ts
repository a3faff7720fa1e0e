/**
 * The four pieces of the uniform cubic B-spline basis that live in one span, t from 0 to 1 across it, or their first
 * or second derivatives by t.
 */
export function cubicBasis(t: number, derivative: 0 | 1 | 2): readonly [number, number, number, number] {
  const s = 1 - t;
  if (derivative === 0)
    return [
      (s * s * s) / 6,
      (3 * t * t * t - 6 * t * t + 4) / 6,
      (3 * s * s * s - 6 * s * s + 4) / 6,
      (t * t * t) / 6,
    ];
  if (derivative === 1) return [(-s * s) / 2, (3 * t * t - 4 * t) / 2, (4 * s - 3 * s * s) / 2, (t * t) / 2];
  return [s, 3 * t - 2, 3 * s - 2, t];
}
