import { describe, expect, test } from 'vitest';
import { flatPlace, flattenPatch, heightField } from '../src/core/surface/index.ts';

/**
 * A cylinder unrolls without strain, whichever way it lies to the grid: exact. A spherical cap cannot: pressed flat, a shallow disc of
 * radius a from a sphere of radius R has A. Föppl's membrane stresses (Vorlesungen über Technische Mechanik 5, 1907):
 * radial −(E / 16 R²)(a² − r²) and round −(E / 16 R²)(a² − 3 r²). In its middle both directions are pressed by (1 − ν) a² / 16 R², at its
 * rim it is stretched round by a² / 8 R². The formula from memory; it solves Δ Δ F = −E / R² with a free rim.
 */
describe('a cylinder', () => {
  const RADIUS = 60;
  test.each([0, 0.3, 1, Math.PI / 2])('turned by %s rad unrolls to true lengths', (turnRad) => {
    const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
    const field = heightField(
      { fromXMm: -24, fromYMm: -40, stepMm: 2, columns: 25, rows: 41 },
      (x, y) => Math.sqrt(RADIUS ** 2 - (cos * x + sin * y) ** 2) - RADIUS,
    );
    const patch = flattenPatch(field);
    expect(patch.strainMost).toBeLessThan(0.0001);
    const unrolled = (x: number, y: number) => {
      const across = cos * x + sin * y;
      const arc = RADIUS * Math.asin(across / RADIUS);
      return { u: x + cos * (arc - across), v: y + sin * (arc - across) };
    };
    for (const [x, y] of [
      [-20.3, -33],
      [3.1, 12.7],
      [22, 36.2],
      [-11, 25.5],
    ] as const)
      for (const [p, q] of [
        [0, 0],
        [-9.7, 8.8],
      ] as const) {
        const [one, other] = [flatPlace(patch, x, y), flatPlace(patch, p, q)];
        if (!one || !other) throw new Error('off the patch');
        const [a, b] = [unrolled(x, y), unrolled(p, q)];
        const trueMm = Math.hypot(a.u - b.u, a.v - b.v);
        expect(Math.abs(Math.hypot(one.uMm - other.uMm, one.vMm - other.vMm) / trueMm - 1)).toBeLessThan(
          0.0001,
        );
      }
  });
});

describe('a spherical cap', () => {
  const [R, A, STEP] = [200, 30, 1];
  const count = 2 * Math.ceil(A / STEP) + 1;
  const field = heightField(
    { fromXMm: -A, fromYMm: -A, stepMm: STEP, columns: count, rows: count },
    (x, y) => (Math.hypot(x, y) <= A ? Math.sqrt(R * R - x * x - y * y) - R : Number.NaN),
  );
  const patch = flattenPatch(field);
  const flat = (x: number, y: number) => {
    const place = flatPlace(patch, x, y);
    if (!place) throw new Error('off the patch');
    return place;
  };
  const POISSON = 1 / 3;

  test('is pressed in its middle and stretched round at its rim as a membrane is', () => {
    const middle = ((1 - POISSON) * (A / R) ** 2) / 16;
    const [left, right] = [flat(-4, 0), flat(4, 0)];
    const arc = 2 * R * Math.asin(4 / R);
    const pressed = 1 - (right.uMm - left.uMm) / arc;
    expect(pressed / middle).toBeGreaterThan(0.95);
    expect(pressed / middle).toBeLessThan(1.05);
    const r = 27;
    const round = ((A / R) ** 2 / 16) * (-(1 - 3 * (r / A) ** 2) + POISSON * (1 - (r / A) ** 2));
    const rim = flat(r, 0);
    const other = flat(-r, 0);
    // A circle on the sphere is as long as in plan: what its flat radius is more, it is stretched by.
    const stretched = (rim.uMm - other.uMm) / 2 / r - 1;
    expect(stretched / round).toBeGreaterThan(0.93);
    expect(stretched / round).toBeLessThan(1.07);
  });

  test('a finer grid gives the same', () => {
    const coarse = flattenPatch(
      heightField({ fromXMm: -20, fromYMm: -20, stepMm: 2, columns: 21, rows: 21 }, (x, y) =>
        Math.sqrt(R * R - x * x - y * y),
      ),
    );
    const fine = flattenPatch(
      heightField({ fromXMm: -20, fromYMm: -20, stepMm: 1, columns: 41, rows: 41 }, (x, y) =>
        Math.sqrt(R * R - x * x - y * y),
      ),
    );
    for (const [x, y] of [
      [15, 15],
      [-17, 3],
      [1, 1],
    ] as const) {
      const [one, other] = [flatPlace(coarse, x, y), flatPlace(fine, x, y)];
      if (!one || !other) throw new Error('off the patch');
      expect(Math.hypot(one.uMm - other.uMm, one.vMm - other.vMm)).toBeLessThan(0.002);
    }
  });
});
