import fc from 'fast-check';
import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { nearestInGrid, pointGrid } from './nearestOfPoints.ts';

const place = fc.tuple(
  fc.double({ min: -60, max: 60, noNaN: true }),
  fc.double({ min: -60, max: 60, noNaN: true }),
);

test('the grid names the nearest of all points, for every place that it reaches', () => {
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 60 }), place, (given, [x, y]) => {
      const points = given.map(([a, b]) => point<'body'>(a, b));
      const found = nearestInGrid(pointGrid(points), x, y);
      const least = Math.min(...points.map((at) => (at.x - x) ** 2 + (at.y - y) ** 2));
      if (found === null) return;
      const chosen = points[found];
      expect(chosen && (chosen.x - x) ** 2 + (chosen.y - y) ** 2).toBe(least);
    }),
  );
});

test('a place far from all points is off the grid', () => {
  const points = [point<'body'>(0, 0)];
  expect(nearestInGrid(pointGrid(points), 100, 0)).toBeNull();
  expect(nearestInGrid(pointGrid(points), 3, -2)).toBe(0);
});
