import { SETTLED } from '../base/index.ts';

/**
 * The solution of a square system, or undefined when it has none, or many, to rounding. The matrix may be indefinite;
 * it and the right side are left as they are.
 * Method: elimination, the row that is largest for its own size first; a pivot SETTLED times its row's size is none.
 */
export function solveSquare(matrix: readonly Float64Array[], right: Float64Array): Float64Array | undefined {
  const size = right.length;
  const rows = matrix.map((row) => row.slice());
  const sizes = rows.map((row) => row.reduce((most, value) => Math.max(most, Math.abs(value)), 0));
  const solution = right.slice();
  for (let column = 0; column < size; column++) {
    const pivot = bestBelow(rows, sizes, column);
    if (!(Math.abs(rows[pivot][column]) > SETTLED * sizes[pivot])) return undefined;
    [rows[column], rows[pivot]] = [rows[pivot], rows[column]];
    [sizes[column], sizes[pivot]] = [sizes[pivot], sizes[column]];
    [solution[column], solution[pivot]] = [solution[pivot], solution[column]];
    const lead = rows[column];
    for (let below = column + 1; below < size; below++) {
      const row = rows[below];
      const factor = row[column] / lead[column];
      if (factor === 0) continue;
      for (let index = column; index < size; index++) row[index] -= factor * lead[index];
      solution[below] -= factor * solution[column];
    }
  }
  for (let column = size - 1; column >= 0; column--) {
    const row = rows[column];
    let sum = solution[column];
    for (let index = column + 1; index < size; index++) sum -= row[index] * solution[index];
    solution[column] = sum / row[column];
  }
  return solution.every(Number.isFinite) ? solution : undefined;
}

function bestBelow(rows: readonly Float64Array[], sizes: readonly number[], column: number): number {
  const share = (row: number): number => (sizes[row] > 0 ? Math.abs(rows[row][column]) / sizes[row] : 0);
  let best = column;
  for (let row = column + 1; row < rows.length; row++) if (share(row) > share(best)) best = row;
  return best;
}
