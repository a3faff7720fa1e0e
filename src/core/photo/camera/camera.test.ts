import fc from 'fast-check';
import { expect, test } from 'vitest';
import { STRAIGHT_DOWN } from '../../../../test/fixtures/straightDown.ts';
import { point } from '../../base/index.ts';
import { projection } from './camera.ts';
import { undistortedRadius } from './lens.ts';
import { turnMatrix, turnVector } from './turn.ts';

test('a camera a metre over the paper with 1000 px focal length sees a millimetre as a pixel', () => {
  const seen = projection(STRAIGHT_DOWN);
  expect(seen.stand).toEqual({ x: 0, y: 0, z: 1000 });
  expect(seen.toPhoto(0, 0, 0)).toEqual({ x: 500, y: 400 });
  expect(seen.toPhoto(100, 50, 0)).toEqual({ x: 600, y: 350 });
});

test('a plane half way up to the camera looks twice as large', () => {
  expect(projection(STRAIGHT_DOWN).toPhoto(100, 50, 500)).toEqual({ x: 700, y: 300 });
});

const cameras = fc.record({
  focalPx: fc.double({ min: 2800, max: 4000, noNaN: true }),
  centre: fc.record({
    x: fc.double({ min: 1900, max: 2100, noNaN: true }),
    y: fc.double({ min: 1400, max: 1600, noNaN: true }),
  }),
  k1: fc.double({ min: -0.12, max: 0.15, noNaN: true }),
  k2: fc.double({ min: -0.02, max: 0.02, noNaN: true }),
  k3: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  p1: fc.double({ min: -0.002, max: 0.002, noNaN: true }),
  p2: fc.double({ min: -0.002, max: 0.002, noNaN: true }),
  turnRad: fc.tuple(
    fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    fc.double({ min: -3.1, max: 3.1, noNaN: true }),
  ),
  shiftMm: fc.tuple(
    fc.double({ min: -250, max: 250, noNaN: true }),
    fc.double({ min: -250, max: 250, noNaN: true }),
    fc.double({ min: 800, max: 1500, noNaN: true }),
  ),
});

test('a photo point goes to its plane and back to itself', () => {
  fc.assert(
    fc.property(
      cameras,
      fc.double({ min: 0, max: 4000, noNaN: true }),
      fc.double({ min: 0, max: 3000, noNaN: true }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (camera, x, y, z) => {
        const seen = projection({ ...camera, turnRad: [camera.turnRad[0], camera.turnRad[1], 0] });
        const place = seen.toPlane(point(x, y), z);
        const again = seen.toPhoto(place.x, place.y, z);
        expect(Math.hypot(again.x - x, again.y - y)).toBeLessThan(1e-6);
      },
    ),
  );
});

test('a rotation vector survives the matrix, half turns included', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.constantFrom(0, 0.001, 1, 2, 3, 3.14159, Math.PI),
      (x, y, z, angle) => {
        const length = Math.hypot(x, y, z);
        fc.pre(length > 0.01);
        const matrix = turnMatrix((x / length) * angle, (y / length) * angle, (z / length) * angle);
        const again = turnMatrix(...turnVector(matrix));
        matrix.forEach((one, place) => {
          expect(again[place]).toBeCloseTo(one, 9);
        });
      },
    ),
  );
});

test('a lens that folds the picture back has no ray beyond the fold', () => {
  expect(undistortedRadius(0.5, { k1: -1, k2: 0, k3: 0 })).toBeNull();
  expect(undistortedRadius(0.2, { k1: -0.1, k2: 0, k3: 0 })).toBeCloseTo(0.20082, 4);
});
