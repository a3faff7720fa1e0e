import { expect, test } from 'vitest';
import { seededRandom } from '../base/index.ts';
import { solveBanded, zeroBanded } from './bandedSolve.ts';
import { solveDefinite, zeroMatrix } from './denseSolve.ts';

test('inside its band a matrix gives what it gives in full', () => {
  const random = seededRandom(3);
  const [size, band] = [12, 3];
  const banded = zeroBanded(size, band);
  const full = zeroMatrix(size, size);
  for (let row = 0; row < size; row++)
    for (let k = 0; k <= Math.min(band, row); k++) {
      const value = k === 0 ? 8 : random() - 0.5;
      banded.entries[row * (band + 1) + band - k] = value;
      full[row][row - k] = value;
      full[row - k][row] = value;
    }
  const right = Float64Array.from({ length: size }, () => random());
  const inFull = solveDefinite(full, right) ?? [];
  const inBand = solveBanded(banded, right) ?? [];
  expect(inBand).toHaveLength(size);
  inBand.forEach((value, i) => {
    expect(value).toBeCloseTo(inFull[i], 12);
  });
});

test('a matrix that is not positive definite has no solution', () => {
  expect(solveBanded(zeroBanded(3, 1), new Float64Array(3))).toBeUndefined();
});
