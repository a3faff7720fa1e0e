import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dot, zeroMatrix } from './denseSolve.ts';
import { solveQuadraticProgram } from './quadraticProgram.ts';

const rows = (...given: number[][]) =>
  given.map((row) => ({ row: Float64Array.from(row.slice(0, -1)), bound: row.at(-1) as number }));

const IDENTITY = [Float64Array.of(1, 0), Float64Array.of(0, 1)];
const plain = { hessian: IDENTITY, gradient: new Float64Array(2) };

test('the point of a line nearest to the origin is the foot of the perpendicular', () => {
  const found = solveQuadraticProgram({ ...plain, equalities: rows([1, 1, 2]), inequalities: [] });
  expect(found).toMatchObject({ solved: true, equalityPressure: [1] });
  if (found.solved) expect([...found.x]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
});

test('a wall in the way is touched, a wall out of the way is not felt', () => {
  const found = solveQuadraticProgram({
    ...plain,
    equalities: [],
    inequalities: rows([1, 0, 3], [0, 1, -5]),
  });
  expect(found).toMatchObject({ solved: true, inequalityPressure: [3, 0] });
  if (found.solved) expect([...found.x]).toEqual([3, 0]);
});

test('walls that leave no room are told as a contradiction', () => {
  const shut = { ...plain, equalities: [], inequalities: rows([1, 0, 3], [-1, 0, -2]) };
  expect(solveQuadraticProgram(shut)).toEqual({ solved: false, because: 'contradiction' });
  const twice = { ...plain, equalities: rows([1, 0, 3], [2, 0, 5]), inequalities: [] };
  expect(solveQuadraticProgram(twice)).toEqual({ solved: false, because: 'contradiction' });
});

test('at the answer all rows are kept and the pull is made up of pressing rows alone', () => {
  const number = fc.double({ min: -2, max: 2, noNaN: true });
  const vector = fc.array(number, { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(
      fc.array(vector, { minLength: 6, maxLength: 6 }),
      vector,
      fc.array(vector, { minLength: 1, maxLength: 2 }),
      fc.array(vector, { minLength: 1, maxLength: 9 }),
      vector,
      (form, pull, level, wall, inside) => {
        const hessian = zeroMatrix(6, 6);
        for (let i = 0; i < 6; i += 1)
          for (let j = 0; j < 6; j += 1)
            hessian[i][j] = (i === j ? 1 : 0) + form.reduce((sum, row) => sum + row[i] * row[j], 0);
        const at = Float64Array.from(inside);
        const through = level.map((row) => ({
          row: Float64Array.from(row),
          bound: dot(Float64Array.from(row), at),
        }));
        const beside = wall.map((row) => ({
          row: Float64Array.from(row),
          bound: dot(Float64Array.from(row), at) - 0.1,
        }));
        const found = solveQuadraticProgram({
          hessian,
          gradient: Float64Array.from(pull),
          equalities: through,
          inequalities: beside,
        });
        expect(found.solved).toBe(true);
        if (!found.solved) return;
        for (const { row, bound } of through) expect(Math.abs(dot(row, found.x) - bound)).toBeLessThan(1e-7);
        for (const { row, bound } of beside) expect(dot(row, found.x) - bound).toBeGreaterThan(-1e-7);
        for (const pressure of found.inequalityPressure) expect(pressure).toBeGreaterThanOrEqual(-1e-9);
        for (let i = 0; i < 6; i += 1) {
          const slope = dot(hessian[i], found.x) + pull[i];
          const pressed =
            through.reduce((sum, { row }, k) => sum + found.equalityPressure[k] * row[i], 0) +
            beside.reduce((sum, { row }, k) => sum + found.inequalityPressure[k] * row[i], 0);
          expect(Math.abs(slope - pressed)).toBeLessThan(1e-6 * (1 + Math.abs(slope)));
        }
      },
    ),
  );
});
