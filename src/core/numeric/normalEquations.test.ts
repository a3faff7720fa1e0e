import { expect, test } from 'vitest';
import { addHold, addRow, clearEquations, emptyEquations, solveEquations } from './normalEquations.ts';

test('rows that agree are met, and of two that do not the heavier pulls more', () => {
  const equations = emptyEquations(2);
  addRow(equations, Float64Array.of(1, 1), 3, 1);
  addRow(equations, Float64Array.of(1, -1), 1, 1);
  expect(solveEquations(equations)).toBe(true);
  expect([...equations.right]).toEqual([expect.closeTo(2, 12), expect.closeTo(1, 12)]);
  clearEquations(equations);
  addHold(equations, 0, 0, 1);
  addHold(equations, 0, 4, 3);
  addHold(equations, 1, 5, 1);
  expect(solveEquations(equations)).toBe(true);
  expect([...equations.right]).toEqual([expect.closeTo(3, 12), expect.closeTo(5, 12)]);
});

test('rows that leave a number open have no solution', () => {
  const equations = emptyEquations(2);
  addRow(equations, Float64Array.of(1, 0), 3, 1);
  expect(solveEquations(equations)).toBe(false);
});
