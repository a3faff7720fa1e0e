import { SETTLED } from '../base/index.ts';

/**
 * The solution of a small dense linear system, or null when it has none (or many).
 * Method: elimination with row exchange; a pivot counts as none when it is SETTLED times the row it came from.
 */
export function solveDense(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | null {
  const size = right.length;
  const rows: Float64Array[] = matrix.map((row, index) => Float64Array.from([...row, right[index] ?? 0]));
  const scale = rows.map((row) =>
    row.subarray(0, size).reduce((most, value) => Math.max(most, Math.abs(value)), 0),
  );
  for (let step = 0; step < size; step++) {
    let best = step;
    const share = (index: number): number => Math.abs(rows[index]?.[step] ?? 0) / (scale[index] || 1);
    for (let index = step + 1; index < size; index++) if (share(index) > share(best)) best = index;
    if (!(share(best) > SETTLED)) return null;
    [rows[step], rows[best]] = [rows[best] as Float64Array, rows[step] as Float64Array];
    [scale[step], scale[best]] = [scale[best] as number, scale[step] as number];
    const pivot = rows[step] as Float64Array;
    for (let index = step + 1; index < size; index++) {
      const row = rows[index] as Float64Array;
      const factor = (row[step] as number) / (pivot[step] as number);
      if (factor === 0) continue;
      for (let column = step; column <= size; column++)
        row[column] = (row[column] as number) - factor * (pivot[column] as number);
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let step = size - 1; step >= 0; step--) {
    const row = rows[step] as Float64Array;
    let rest = row[size] as number;
    for (let column = step + 1; column < size; column++)
      rest -= (row[column] as number) * (solution[column] as number);
    solution[step] = rest / (row[step] as number);
  }
  return solution;
}
