import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dot, lowerFactor, solveDefinite, zeroMatrix } from './denseSolve.ts';

test('two equations that can be checked by hand', () => {
  // 4x + 2y = 10, 2x + 3y = 9: x = 1.5, y = 2.
  const x = solveDefinite([Float64Array.of(4, 2), Float64Array.of(2, 3)], Float64Array.of(10, 9));
  expect([...(x ?? [])]).toEqual([expect.closeTo(1.5, 12), expect.closeTo(2, 12)]);
});

test('a form that is not positive definite has no factor', () => {
  expect(lowerFactor([Float64Array.of(1, 2), Float64Array.of(2, 1)])).toBeUndefined();
  expect(solveDefinite([Float64Array.of(0)], Float64Array.of(1))).toBeUndefined();
});

test('what comes out, put back in, gives the right-hand side', () => {
  const row = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 5, maxLength: 5 });
  fc.assert(
    fc.property(fc.array(row, { minLength: 5, maxLength: 5 }), row, (form, right) => {
      const a = zeroMatrix(5, 5);
      for (let i = 0; i < 5; i += 1)
        for (let j = 0; j < 5; j += 1)
          a[i][j] = (i === j ? 1 : 0) + form.reduce((sum, one) => sum + one[i] * one[j], 0);
      const x = solveDefinite(a, Float64Array.from(right)) ?? new Float64Array(5).fill(Number.NaN);
      right.forEach((value, i) => {
        expect(Math.abs(dot(a[i], x) - value)).toBeLessThan(1e-9);
      });
    }),
  );
});
