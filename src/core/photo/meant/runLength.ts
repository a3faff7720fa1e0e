/** Shares of the spread below which neighbours count as independent, and the farthest neighbour looked at. */
const INDEPENDENT = 0.05;
const FARTHEST = 40;

/**
 * How many neighbouring values of a series with mean 0 go together: 1 for independent ones. A mean over n of them is
 * as good as one over n divided by this. Method: one and twice the sum of the correlations up to the first small one.
 */
export function runLength(values: readonly number[]): number {
  const square = values.reduce((sum, value) => sum + value * value, 0);
  if (square === 0) return 1;
  let length = 1;
  for (let lag = 1; lag <= Math.min(FARTHEST, values.length - 1); lag++) {
    let sum = 0;
    for (let i = lag; i < values.length; i++) sum += values[i] * values[i - lag];
    if (sum < INDEPENDENT * square) break;
    length += (2 * sum) / square;
  }
  return length;
}
