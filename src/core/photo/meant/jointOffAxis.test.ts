import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { jointOffAxis } from './jointOffAxis.ts';

test('a joint to the right of an upright axis counts as positive, both intervals together', () => {
  const off = jointOffAxis(
    { lower: point<'scene'>(101, 0), upper: point<'scene'>(100.5, 350) },
    { lower: 0.3, upper: 0.3 },
    {
      through: point(100, 0),
      headingRad: Math.PI / 2,
      plusMinus: { acrossMm: 0.4, headingRad: 0, correlation: 0 },
      spreadMm: 0.1,
      rounds: 1,
    },
  );
  expect(off.lowerMm).toBeCloseTo(1, 9);
  expect(off.upperMm).toBeCloseTo(0.5, 9);
  expect(off.plusMinusMm).toBeCloseTo(0.5, 9);
});
