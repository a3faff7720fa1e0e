import { Bug } from '../base/index.ts';

/** A dense matrix, row by row. */
export type Matrix = readonly Float64Array[];

export function zeroMatrix(rows: number, columns: number): Float64Array[] {
  return Array.from({ length: rows }, () => new Float64Array(columns));
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i] * b[i];
  return sum;
}

/** Adds `factor · step` to `target`. */
export function addScaled(target: Float64Array, step: Float64Array, factor: number): void {
  for (let i = 0; i < target.length; i += 1) target[i] += factor * step[i];
}

/**
 * The lower triangle whose product with its own transpose is the symmetric matrix `a`, or undefined where
 * `a` is not positive definite. Method: Cholesky.
 */
export function lowerFactor(a: Matrix): Float64Array[] | undefined {
  const size = a.length;
  const factor = zeroMatrix(size, size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let rest = a[i][j];
      for (let k = 0; k < j; k += 1) rest -= factor[i][k] * factor[j][k];
      if (i !== j) factor[i][j] = rest / factor[j][j];
      else if (rest > 0) factor[i][i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return factor;
}

/** Solves `factor · x = b` for a lower triangle. */
export function forwardSolve(factor: Matrix, b: Float64Array): Float64Array {
  const x = new Float64Array(b.length);
  for (let i = 0; i < b.length; i += 1) {
    let rest = b[i];
    for (let k = 0; k < i; k += 1) rest -= factor[i][k] * x[k];
    x[i] = rest / factor[i][i];
  }
  return x;
}

/** Solves `transpose(factor) · x = b` for a lower triangle. */
export function backwardSolve(factor: Matrix, b: Float64Array): Float64Array {
  const x = new Float64Array(b.length);
  for (let i = b.length - 1; i >= 0; i -= 1) {
    let rest = b[i];
    for (let k = i + 1; k < b.length; k += 1) rest -= factor[k][i] * x[k];
    x[i] = rest / factor[i][i];
  }
  return x;
}

/** Solves `a · x = b` for a symmetric, positive definite `a`; undefined where `a` is not. */
export function solveDefinite(a: Matrix, b: Float64Array): Float64Array | undefined {
  if (a.length !== b.length) throw new Bug(`${a.length} rows against ${b.length} right-hand sides`);
  const factor = lowerFactor(a);
  return factor && backwardSolve(factor, forwardSolve(factor, b));
}
