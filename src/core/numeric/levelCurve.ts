/** The curve through the values with level ends that never leaves the range of its neighbours (Fritsch and Carlson, 1980). */
export function levelCurve(at: readonly number[], values: readonly number[], place: number): number {
  const last = at.length - 1;
  if (place <= (at[0] as number)) return values[0] as number;
  if (place >= (at[last] as number)) return values[last] as number;
  const index = at.findLastIndex((start) => start <= place);
  const width = (at[index + 1] as number) - (at[index] as number);
  const t = (place - (at[index] as number)) / width;
  const [from, to] = [values[index] as number, values[index + 1] as number];
  const leave = levelSlope(at, values, index) * width;
  const arrive = levelSlope(at, values, index + 1) * width;
  const stay = (1 + 2 * t) * (1 - t) ** 2;
  return stay * from + (1 - stay) * to + leave * t * (1 - t) ** 2 - arrive * t * t * (1 - t);
}

/** Slope at a value: level at the ends and where the values turn, else the harmonic mean of both sides. */
function levelSlope(at: readonly number[], values: readonly number[], index: number): number {
  if (index === 0 || index === at.length - 1) return 0;
  const slope = (from: number): number =>
    ((values[from + 1] as number) - (values[from] as number)) /
    ((at[from + 1] as number) - (at[from] as number));
  const [before, after] = [slope(index - 1), slope(index)];
  return before * after > 0 ? (2 * before * after) / (before + after) : 0;
}
