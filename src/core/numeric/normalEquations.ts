/**
 * Sums of weighted rows of a linear least-squares problem: `matrix` (size²) and `right` (size). Kept flat and solved in
 * place, since fits to pictures do so thousands of times.
 */
export interface NormalEquations {
  readonly size: number;
  readonly matrix: Float64Array;
  readonly right: Float64Array;
}

export function emptyEquations(size: number): NormalEquations {
  return { size, matrix: new Float64Array(size * size), right: new Float64Array(size) };
}

export function clearEquations(equations: NormalEquations): void {
  equations.matrix.fill(0);
  equations.right.fill(0);
}

/** Adds the row `row · step = target` with the given weight (of the squared residual); lower triangle only. */
export function addRow(equations: NormalEquations, row: Float64Array, target: number, weight: number): void {
  const { size, matrix, right } = equations;
  for (let i = 0; i < size; i++) {
    const scaled = weight * row[i];
    if (scaled === 0) continue;
    right[i] += scaled * target;
    const at = i * size;
    for (let j = 0; j <= i; j++) matrix[at + j] += scaled * row[j];
  }
}

/** Adds `weight · (step[index] − target)²`. */
export function addHold(equations: NormalEquations, index: number, target: number, weight: number): void {
  const { size, matrix, right } = equations;
  matrix[index * size + index] += weight;
  right[index] += weight * target;
}

/** Solves in place by Cholesky; the step stands in `right`. False when the matrix is not positive definite. */
export function solveEquations(equations: NormalEquations): boolean {
  const { size, matrix, right } = equations;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * size + k] * matrix[j * size + k];
      if (i !== j) {
        matrix[i * size + j] = sum / matrix[j * size + j];
        continue;
      }
      if (!(sum > 0)) return false;
      matrix[i * size + i] = Math.sqrt(sum);
    }
  }
  for (let i = 0; i < size; i++) {
    let sum = right[i];
    for (let k = 0; k < i; k++) sum -= matrix[i * size + k] * right[k];
    right[i] = sum / matrix[i * size + i];
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = right[i];
    for (let k = i + 1; k < size; k++) sum -= matrix[k * size + i] * right[k];
    right[i] = sum / matrix[i * size + i];
  }
  return true;
}
