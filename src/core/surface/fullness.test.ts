import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FULLNESS_LIMIT, fullnessGain, withFullness } from './fullness.ts';

const fullness = fc.double({ min: -FULLNESS_LIMIT, max: FULLNESS_LIMIT, noNaN: true });
const zeta = fc.double({ min: 0, max: 1, noNaN: true });

test('at half height a fullness of 0.05 lifts the arch by a twentieth of its rise', () => {
  expect(withFullness(0.5, 0.05)).toBeCloseTo(0.55, 15);
});

test('crest and channel stay where they are, whatever the fullness', () => {
  fc.assert(
    fc.property(fullness, (f) => {
      expect(withFullness(0, f)).toBe(0);
      expect(withFullness(1, f)).toBe(1);
    }),
  );
});

test('within its limit the arch never turns back on its way up', () => {
  fc.assert(
    fc.property(zeta, fullness, (z, f) => {
      expect(fullnessGain(z, f)).toBeGreaterThanOrEqual(0);
    }),
  );
  expect(fullnessGain(0, -FULLNESS_LIMIT - 0.01)).toBeLessThan(0);
});
