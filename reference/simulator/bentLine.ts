/** A spot in the body's plane: x to the right of the axis, y from the lower end, mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A line told by how it bends: stretches of about even bend that flow into each other. */
export interface BentLine {
  readonly start: Spot;
  readonly headingRad: number;
  /** `bend` in 1/mm, positive to the left; lengths in mm. */
  readonly stretches: readonly { readonly lengthMm: number; readonly bend: number }[];
  /** mm. Over how much of the line one bend flows into the next. */
  readonly flowMm: number;
}

const STEP_MM = 0.25;

/** Places along the line a quarter of a millimetre apart. The bend changes smoothly, so nowhere is it an arc. */
export function walk(line: BentLine): Spot[] {
  const total = line.stretches.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  const count = Math.max(8, Math.round(total / STEP_MM));
  const step = total / count;
  const spots: Spot[] = [line.start];
  let { x, y } = line.start;
  let heading = line.headingRad;
  for (let i = 0; i < count; i++) {
    const bend = bendAt(line, (i + 0.5) * step);
    const middle = heading + (bend * step) / 2;
    x += step * Math.cos(middle);
    y += step * Math.sin(middle);
    heading += bend * step;
    spots.push({ x, y });
  }
  return spots;
}

/** Steps of bend rounded by a logistic, whose reach grows with the shorter neighbour. */
function bendAt({ stretches, flowMm }: BentLine, at: number): number {
  let from = 0;
  let bend = (stretches[0] as { bend: number }).bend;
  for (let i = 0; i + 1 < stretches.length; i++) {
    const [one, next] = [stretches[i], stretches[i + 1]] as [
      BentLine['stretches'][number],
      BentLine['stretches'][number],
    ];
    from += one.lengthMm;
    const reach = Math.min(flowMm, 0.22 * Math.min(one.lengthMm, next.lengthMm));
    bend += (next.bend - one.bend) / (1 + Math.exp(-(at - from) / reach));
  }
  return bend;
}

/**
 * Numbers moved as little as possible until `misses` of them are all near zero.
 * Method: Gauss-Newton with the least step, difference quotients, small dense equations.
 */
export function settle(
  start: readonly number[],
  misses: (of: readonly number[]) => readonly number[],
): number[] {
  let now = [...start];
  for (let round = 0; round < 25; round++) {
    const off = misses(now);
    if (Math.max(...off.map(Math.abs)) < 1e-6) return now;
    const columns = now.map((value, i) => {
      const moved = misses(now.map((one, j) => (j === i ? value + 1e-5 : one)));
      return moved.map((one, row) => (one - (off[row] as number)) / 1e-5);
    });
    const normal = off.map((_, a) =>
      off.map((__, b) =>
        columns.reduce(
          (sum, column) => sum + (column[a] as number) * (column[b] as number),
          a === b ? 1e-9 : 0,
        ),
      ),
    );
    const weights = solve(normal, off);
    const step = columns.map((column) =>
      column.reduce((sum, one, row) => sum + one * (weights[row] as number), 0),
    );
    const largest = Math.max(...step.map(Math.abs));
    const share = Math.min(1, 0.25 / Math.max(largest, 1e-9));
    now = now.map((value, i) => value - share * (step[i] as number));
  }
  throw new Error('the made outline does not come to the sizes drawn for it');
}

function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let best = i;
    for (let j = i + 1; j < n; j++)
      if (Math.abs(rows[j]?.[i] as number) > Math.abs(rows[best]?.[i] as number)) best = j;
    [rows[i], rows[best]] = [rows[best] as number[], rows[i] as number[]];
    const pivot = rows[i] as number[];
    for (let j = i + 1; j < n; j++) {
      const row = rows[j] as number[];
      const share = (row[i] as number) / (pivot[i] as number);
      for (let k = i; k <= n; k++) row[k] = (row[k] as number) - share * (pivot[k] as number);
    }
  }
  const result = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    let sum = row[n] as number;
    for (let k = i + 1; k < n; k++) sum -= (row[k] as number) * (result[k] as number);
    result[i] = sum / (row[i] as number);
  }
  return result;
}
