import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitCircle, fitLine } from './fitPlaces.ts';

test('three corners of a square lie on one circle, and on no line', () => {
  const corners = [
    { x: 3, y: 1 },
    { x: 5, y: 1 },
    { x: 5, y: 3 },
  ];
  const circle = fitCircle(corners);
  expect(circle?.x).toBeCloseTo(4, 12);
  expect(circle?.y).toBeCloseTo(2, 12);
  expect(circle?.radius).toBeCloseTo(Math.SQRT2, 12);
  expect(circle?.rms).toBeCloseTo(0, 12);
  expect(fitLine(corners).rms).toBeGreaterThan(0.5);
});

test('two places make no circle', () => {
  expect(
    fitCircle([
      { x: 0, y: 0 },
      { x: 1, y: 0 },
    ]),
  ).toBeNull();
});

test('however a circle and a line lie, places on them are on them', () => {
  const number = fc.double({ min: -50, max: 50, noNaN: true });
  fc.assert(
    fc.property(number, number, fc.double({ min: -3, max: 3, noNaN: true }), (x, y, headingRad) => {
      const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
      const line = fitLine([-3, 0, 1, 4].map((t) => ({ x: x + t * c, y: y + t * s })));
      expect(Math.abs(Math.sin(line.headingRad - headingRad))).toBeLessThan(1e-6);
      expect(line.rms).toBeLessThan(1e-6);
      const arc = [0, 0.4, 0.9, 1.5].map((turn) => ({
        x: x + 7 * Math.cos(turn),
        y: y + 7 * Math.sin(turn),
      }));
      const circle = fitCircle(arc);
      expect(circle?.radius).toBeCloseTo(7, 6);
      expect(circle?.x).toBeCloseTo(x, 6);
    }),
  );
});
