import { expect, test } from 'vitest';
import { seededRandom } from '../base/index.ts';
import { solveSquare } from './solveSquare.ts';

test('an indefinite system with a zero on its diagonal is solved', () => {
  const found = solveSquare([Float64Array.of(0, 2), Float64Array.of(4, 1)], Float64Array.of(6, 11));
  expect([...(found ?? [])]).toEqual([2, 3]);
});

test('put back into its system, the solution gives the right side', () => {
  const random = seededRandom(7);
  const matrix = Array.from({ length: 30 }, () => Float64Array.from({ length: 30 }, () => random() - 0.5));
  const right = Float64Array.from({ length: 30 }, () => random());
  const found = solveSquare(matrix, right) ?? new Float64Array(30);
  matrix.forEach((row, index) => {
    const sum = row.reduce((total, value, column) => total + value * (found[column] ?? 0), 0);
    expect(sum).toBeCloseTo(right[index] ?? 0, 9);
  });
});

test('a system without a solution has none', () => {
  expect(solveSquare([Float64Array.of(1, 2), Float64Array.of(2, 4)], Float64Array.of(1, 3))).toBeUndefined();
});

test('rows in other units do not change what is found, nor that two rows say the same', () => {
  const scaled = [Float64Array.of(1e9, 2e9), Float64Array.of(3, 1)];
  const found = solveSquare(scaled, Float64Array.of(5e9, 5));
  expect([...(found ?? [])]).toEqual([expect.closeTo(1, 12), expect.closeTo(2, 12)]);
  expect(
    solveSquare([Float64Array.of(1e9, 2e9), Float64Array.of(1 / 3, 2 / 3)], Float64Array.of(1, 1)),
  ).toBeUndefined();
});
