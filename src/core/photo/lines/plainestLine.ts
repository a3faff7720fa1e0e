/** Evidence of a line on rows across it: how plainly it shows at each column. */
export interface RowEvidence {
  readonly columns: number;
  /** Units from one column to the next; the middle column is 0. */
  readonly step: number;
  readonly rows: readonly number[];
  readonly values: Float32Array;
}

/** A straight line across such rows: where it stands at two heights, and how plain it is. */
export interface RowLine {
  readonly atLow: number;
  readonly atHigh: number;
  /** Mean evidence along it, in the evidence's usual size. */
  readonly score: number;
  /** The best score of any line that stays well away from it. */
  readonly next: number;
}

/** Units: how much a line may lean from the low to the high end, how fine lines are tried, and how far off another is. */
const MOST_LEAN = 4;
const TRIED = 0.1;
const APART = 0.9;

/** The plainest straight line from height `low` to `high`. Method: every pair of ends is tried; evidence is clipped. */
export function plainestLine(evidence: RowEvidence, low: number, high: number): RowLine {
  const { columns, step, rows, values } = evidence;
  const usual = usualSize(values);
  const clipped = values.map((value) => Math.max(-2, Math.min(2, value / usual)));
  const reach = ((columns - 1) / 2) * step;
  const count = Math.floor((2 * reach) / TRIED) + 1;
  const place = (i: number): number => -reach + i * TRIED;
  const lean = Math.round(MOST_LEAN / TRIED);
  const scores: { readonly a: number; readonly b: number; readonly score: number }[] = [];
  for (let i = 0; i < count; i++)
    for (let j = Math.max(0, i - lean); j <= Math.min(count - 1, i + lean); j++) {
      const [a, b] = [place(i), place(j)];
      let sum = 0;
      for (let row = 0; row < rows.length; row++) {
        const x = a + ((b - a) * (rows[row] - low)) / (high - low);
        sum += clipped[row * columns + Math.round((x + reach) / step)];
      }
      scores.push({ a, b, score: sum / rows.length });
    }
  const best = scores.reduce((one, other) => (other.score > one.score ? other : one));
  const apart = scores.filter(({ a, b }) => Math.abs(a + b - best.a - best.b) / 2 > APART);
  const next = apart.reduce((most, { score }) => Math.max(most, score), Number.NEGATIVE_INFINITY);
  return { atLow: best.a, atHigh: best.b, score: best.score, next };
}

function usualSize(values: Float32Array): number {
  const sizes = values.map(Math.abs).sort();
  return Math.max(LEAST_SIZE, sizes[Math.floor(sizes.length * 0.75)] ?? 0);
}

const LEAST_SIZE = 0.0005;
