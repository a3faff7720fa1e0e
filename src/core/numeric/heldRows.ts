import { addScaled, dot } from './denseSolve.ts';

/** A row of length 1 that is held at its bound, and what it adds to the rows held before it. */
export interface HeldRow {
  readonly id: number;
  /** n numbers: the row. */
  readonly normal: Float64Array;
  /** How hard it presses: the rate at which the least value grows with its bound. */
  pressure: number;
  /** n numbers: the unit vector across the rows before it along which this one goes on. */
  readonly direction: Float64Array;
  /** Row k of the triangle R of k + 1 numbers: `normal` is the sum of R_ki times the i-th direction. */
  readonly triangle: readonly number[];
}

/** A row taken apart by k held ones. */
export interface SplitRow {
  /** n numbers: what they cannot make up, at right angles to them all. */
  readonly outside: Float64Array;
  /** k numbers: how much of each held row makes up the rest. */
  readonly inside: readonly number[];
  /** k numbers: the same rest as so much of each of their directions. */
  readonly alongDirections: readonly number[];
}

/**
 * Takes a row apart by the held ones.
 *
 * Method: Gram and Schmidt's, carried out twice (W. Kahan; B. N. Parlett, The symmetric eigenvalue problem, 1980): rows that
 * nearly repeat one another lose their right angles in the first round, and have them to the last place after the second.
 */
export function splitRow(normal: Float64Array, held: readonly HeldRow[]): SplitRow {
  const { outside, alongDirections } = acrossDirections(normal, held, held.length);
  const inside = [...alongDirections];
  for (let i = held.length - 1; i >= 0; i -= 1) {
    const { triangle } = held[i];
    inside[i] /= triangle[i];
    for (let k = 0; k < i; k += 1) inside[k] -= triangle[k] * inside[i];
  }
  return { outside, inside, alongDirections };
}

/** A row as it is held behind those that it was split by. */
export function heldRow(
  id: number,
  normal: Float64Array,
  pressure: number,
  { outside, alongDirections }: Pick<SplitRow, 'outside' | 'alongDirections'>,
): HeldRow {
  const length = Math.sqrt(dot(outside, outside));
  return {
    id,
    normal,
    pressure,
    direction: outside.map((value) => value / length),
    triangle: [...alongDirections, length],
  };
}

/** Lets go of one. Those held behind it are split afresh, not corrected: no rounding is carried from step to step. */
export function letGoOfRow(held: HeldRow[], at: number): void {
  held.splice(at, 1);
  for (let i = at; i < held.length; i += 1) {
    const { id, normal, pressure } = held[i];
    held[i] = heldRow(id, normal, pressure, acrossDirections(normal, held, i));
  }
}

/** What is left of a row without its parts along the directions of the first `count` held ones. */
function acrossDirections(
  row: Float64Array,
  held: readonly HeldRow[],
  count: number,
): Pick<SplitRow, 'outside' | 'alongDirections'> {
  const outside = row.slice();
  const alongDirections = new Array<number>(count).fill(0);
  for (let round = 0; round < 2; round += 1)
    for (let i = 0; i < count; i += 1) {
      const { direction } = held[i];
      const part = dot(direction, outside);
      addScaled(outside, direction, -part);
      alongDirections[i] += part;
    }
  return { outside, alongDirections };
}
