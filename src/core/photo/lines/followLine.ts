import { letGo } from '../../base/index.ts';

/** A table of how plainly a line shows: one row a place along the edge, one column an offset. */
export interface LineEvidence {
  readonly rows: number;
  readonly columns: number;
  /** Writes a whole row: asked column by column, every number would be an object of its own. */
  readonly fill: (row: number, into: Float64Array) => void;
  /** How far apart row and the row before lie, mm; 0 or less where they are not neighbours. */
  readonly stepFromBeforeMm: (row: number) => number;
}

/** Columns a line may move a row. */
const MOST_JUMP = 8;

/**
 * The column in each row along which the evidence is largest, a move of one millimetre sideways within one of the way
 * costing `stiffness`. Method: dynamic programming, free where rows are not neighbours.
 */
export function followLine(evidence: LineEvidence, columnMm: number, stiffness: number): Int32Array {
  const { rows, columns } = evidence;
  // By how many columns the best way to a place moved from the row before, row by row.
  const from = new Int8Array(rows * columns);
  // What the best way up to the row before, and up to this one, has gathered, by column.
  let sum = new Float64Array(columns);
  let next = new Float64Array(columns);
  const here = new Float64Array(columns);
  const cost = new Float64Array(2 * MOST_JUMP + 1);
  const chosen = new Int32Array(rows);
  let start = 0;
  for (let row = 0; row < rows; row++) {
    const step = row === start ? 0 : evidence.stepFromBeforeMm(row);
    if (step <= 0) {
      if (row > start) walkBack(from, sum, columns, start, row, chosen);
      start = row;
      evidence.fill(row, sum);
      continue;
    }
    const price = (stiffness * columnMm * columnMm) / step;
    for (let d = -MOST_JUMP; d <= MOST_JUMP; d++) cost[d + MOST_JUMP] = price * d * d;
    evidence.fill(row, here);
    for (let j = 0; j < columns; j++) {
      const first = Math.max(0, j - MOST_JUMP);
      const last = Math.min(columns - 1, j + MOST_JUMP);
      const shift = MOST_JUMP - j;
      let best = Number.NEGATIVE_INFINITY;
      let source = first;
      for (let before = first; before <= last; before++) {
        const value = sum[before] - cost[before + shift];
        if (value <= best) continue;
        best = value;
        source = before;
      }
      from[row * columns + j] = source - j;
      next[j] = best + here[j];
    }
    [sum, next] = [next, sum];
  }
  if (rows > 0) walkBack(from, sum, columns, start, rows, chosen);
  letGo(from);
  return chosen;
}

/** Writes the columns of rows `start` to `end` (not included) into `chosen`, from the best of the last row's sums backwards. */
function walkBack(
  from: Int8Array,
  sum: Float64Array,
  columns: number,
  start: number,
  end: number,
  chosen: Int32Array,
): void {
  let at = 0;
  for (let j = 1; j < columns; j++) if (sum[j] > sum[at]) at = j;
  for (let row = end - 1; row >= start; row--) {
    chosen[row] = at;
    at += from[row * columns + at];
  }
}
