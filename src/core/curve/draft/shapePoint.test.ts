import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outlineHabit } from '../../knowledge/index.ts';
import { usualNumbers } from './shapeNumbers.ts';
import { cornerEndPoint, FIT_AT, FIT_NUMBERS, type ShapePoint, shapePoint } from './shapePoint.ts';

const habit = outlineHabit('violin');

function usual(): Float64Array {
  const { value } = usualNumbers(habit, habit.usualSizes, FIT_NUMBERS);
  value[FIT_AT.lowerEndWidth] = 6.7;
  value[FIT_AT.lowerEndY] = 3;
  value[FIT_AT.lengthMm] = 355;
  return value;
}

const place = fc.oneof(
  fc.record({
    stretch: fc.constantFrom('lowerBout' as const, 'upperBout' as const),
    arc: fc.integer({ min: 0, max: 4 }),
  }),
  fc.record({ stretch: fc.constant('cBout' as const), arc: fc.integer({ min: 0, max: 2 }) }),
  fc.record({
    stretch: fc.constantFrom('lowerCorner' as const, 'upperCorner' as const),
    arc: fc.constant(0),
  }),
);

test('every point answers to every number as its own small change says', () => {
  fc.assert(
    fc.property(place, fc.double({ min: 0, max: 1, noNaN: true }), ({ stretch, arc }, share) => {
      const at = (u: Float64Array): ShapePoint =>
        stretch === 'lowerCorner' || stretch === 'upperCorner'
          ? cornerEndPoint(stretch, u, share)
          : shapePoint(stretch, u, arc, share);
      const here = at(usual());
      expect(Math.hypot(here.normalX, here.normalY)).toBeCloseTo(1, 12);
      for (let index = 0; index < FIT_NUMBERS; index += 1) {
        const moved = (by: number) => at(usual().map((value, i) => (i === index ? value + by : value)));
        const more = moved(1e-5);
        const less = moved(-1e-5);
        expect(here.gradient.x[index]).toBeCloseTo((more.x - less.x) / 2e-5, 4);
        expect(here.gradient.y[index]).toBeCloseTo((more.y - less.y) / 2e-5, 4);
      }
    }),
    { numRuns: 60 },
  );
});

test('normals point out of the body', () => {
  const u = usual();
  expect(shapePoint('lowerBout', u, 0, 0)).toMatchObject({ x: 0, y: 3, normalX: 0, normalY: -1 });
  expect(shapePoint('upperBout', u, 0, 0)).toMatchObject({ x: 0, y: 358, normalX: 0, normalY: 1 });
  expect(shapePoint('cBout', u, 1, 0.5).normalX).toBeGreaterThan(0.9);
});
