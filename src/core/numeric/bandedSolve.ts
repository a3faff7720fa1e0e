/** A symmetric banded matrix, its lower half by rows: entry (row, row − k) stands at row × (band + 1) + band − k. */
export interface BandedMatrix {
  readonly size: number;
  readonly band: number;
  readonly entries: Float64Array;
}

/** A symmetric matrix of zeros with `band` diagonals beside the main one. */
export function zeroBanded(size: number, band: number): BandedMatrix {
  return { size, band, entries: new Float64Array(size * (band + 1)) };
}

/** A banded matrix taken apart once, to be solved for any number of right sides. */
export interface BandedFactor {
  readonly size: number;
  readonly band: number;
  /** Lower factor, laid out as the matrix. */
  readonly factor: Float64Array;
}

/**
 * The factor of a symmetric positive definite banded matrix, or undefined when it is not positive definite.
 * Method: Cholesky inside the band; the matrix is left as it was.
 */
export function factorBanded(matrix: BandedMatrix): BandedFactor | undefined {
  return factorInPlace({ ...matrix, entries: matrix.entries.slice() });
}

/** {@link factorBanded} for a matrix that nobody needs any more: the factor takes the place of its entries. */
export function factorInPlace({ size, band, entries: factor }: BandedMatrix): BandedFactor | undefined {
  const width = band + 1;
  for (let row = 0; row < size; row++) {
    const first = Math.max(0, row - band);
    const base = row * width + band - row;
    for (let column = first; column <= row; column++) {
      const other = column * width + band - column;
      let rest = factor[base + column];
      for (let k = Math.max(first, column - band); k < column; k++)
        rest -= factor[base + k] * factor[other + k];
      if (column < row) factor[base + column] = rest / factor[other + column];
      else if (rest > 0) factor[base + row] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return { size, band, factor };
}

/** The solution for one right side. */
export function solveFactored({ size, band, factor }: BandedFactor, right: Float64Array): Float64Array {
  const width = band + 1;
  const solution = right.slice();
  for (let row = 0; row < size; row++) {
    const base = row * width + band - row;
    let rest = solution[row];
    for (let k = Math.max(0, row - band); k < row; k++) rest -= factor[base + k] * solution[k];
    solution[row] = rest / factor[base + row];
  }
  for (let row = size - 1; row >= 0; row--) {
    const base = row * width + band - row;
    const value = solution[row] / factor[base + row];
    solution[row] = value;
    for (let k = Math.max(0, row - band); k < row; k++) solution[k] = solution[k] - factor[base + k] * value;
  }
  return solution;
}

/** The solution of a symmetric positive definite banded system, or undefined when the matrix is not positive definite. */
export function solveBanded(matrix: BandedMatrix, right: Float64Array): Float64Array | undefined {
  const factored = factorBanded(matrix);
  return factored && solveFactored(factored, right);
}
