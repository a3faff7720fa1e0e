/**
 * The length of a way by its parts, plane or in space, in their unit, to one and a half
 * units in the last place. Squares are summed as they are: parts beyond 1e150,
 * or all of them below 1e-150, are out of its range.
 */
export function hypot(x: number, y: number, z = 0): number {
  return Math.sqrt(x * x + y * y + z * z);
}

/** The root of the sum of squares of any number of values: Euclid's norm, with the range of `hypot`. */
export function norm(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i] as number) ** 2;
  return Math.sqrt(sum);
}
