/** The middle value of a list that is not empty; of an even count the upper of the two. The list is left as it is. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1];
}
