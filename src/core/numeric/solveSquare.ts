/**
 * The solution of a square system, or undefined when it has none to rounding. The matrix may be indefinite;
 * it and the right side are left as they are. Method: elimination with partial pivoting.
 */
export function solveSquare(matrix: readonly Float64Array[], right: Float64Array): Float64Array | undefined {
  const size = right.length;
  const rows = matrix.map((row) => Float64Array.from(row));
  const solution = Float64Array.from(right);
  for (let column = 0; column < size; column++) {
    const pivot = largestBelow(rows, column);
    const lead = rows[pivot];
    const swapped = rows[column];
    if (!lead || !swapped || lead[column] === 0) return undefined;
    rows[pivot] = swapped;
    rows[column] = lead;
    const value = solution[pivot];
    solution[pivot] = solution[column];
    solution[column] = value;
    for (let below = column + 1; below < size; below++) {
      const row = rows[below];
      const factor = row[column] / lead[column];
      if (factor === 0) continue;
      for (let index = column; index < size; index++) row[index] -= factor * lead[index];
      solution[below] -= factor * value;
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

function largestBelow(rows: readonly Float64Array[], column: number): number {
  let best = column;
  for (let row = column + 1; row < rows.length; row++) {
    if (Math.abs(rows[row][column]) > Math.abs(rows[best][column])) best = row;
  }
  return best;
}
