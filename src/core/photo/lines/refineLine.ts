import { medianOf } from '../../numeric/index.ts';
import type { RowEvidence, RowLine } from './plainestLine.ts';

/** A line measured piece by piece: its places at two heights with half intervals (k = 2). */
export interface MeasuredLine {
  readonly atLow: number;
  readonly atHigh: number;
  readonly plusMinusLow: number;
  readonly plusMinusHigh: number;
  /** Share of the pieces that show it where the straight line runs. */
  readonly share: number;
  readonly pieces: number;
}

/** Rows in a piece, units a piece's own line may lie aside, and beyond which it is not the line's. */
const PIECE_ROWS = 12;
const SEARCH = 0.6;
const CUT = 4;
/** Units. Grain that crosses a line slowly draws several pieces aside together by about this much. */
const LEAST_SPREAD = 0.08;
const ROUNDS = 15;
const LEAST_PIECES = 5;
/** Half way from the low to the high end. */
const MIDDLE = 1 / 2;

/** The line through the plainest place of each piece near a first line; null where too few pieces show one. */
export function refineLine(
  evidence: RowEvidence,
  first: RowLine,
  low: number,
  high: number,
): MeasuredLine | null {
  const spots = spotsOf(evidence, first, low, high);
  const all = Math.max(1, Math.floor(evidence.rows.length / PIECE_ROWS));
  if (spots.length < LEAST_PIECES) return null;
  let [base, lean] = [0, 0];
  let normal: readonly number[] = [0, 0, 0];
  let spread = 0;
  let kept = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const off = spots.map(({ t, aside }) => aside - base - lean * t);
    spread = Math.max(LEAST_SPREAD, 1.4826 * medianOf(off.map(Math.abs)));
    const cut = CUT * spread;
    const shares = off.map((one) => (Math.abs(one) < cut ? (1 - (one / cut) ** 2) ** 2 : 0));
    kept = off.filter((one) => Math.abs(one) < cut).length;
    const sum = (pick: (spot: Spot) => number): number =>
      spots.reduce((total, spot, i) => total + shares[i] * pick(spot), 0);
    const [n, st, stt] = [sum(() => 1), sum(({ t }) => t), sum(({ t }) => t * t)];
    const [so, sto] = [sum(({ aside }) => aside), sum(({ t, aside }) => t * aside)];
    const determinant = n * stt - st * st;
    if (!(determinant > 0)) return null;
    base = (so * stt - st * sto) / determinant;
    lean = (n * sto - st * so) / determinant;
    normal = [n / determinant, st / determinant, stt / determinant];
  }
  if (kept < LEAST_PIECES) return null;
  const off = spots
    .map(({ t, aside }) => ({ t, aside: aside - base - lean * t }))
    .filter(({ aside }) => Math.abs(aside) < CUT * spread);
  const mean = (inMiddle: boolean): number => {
    const own = off.filter(({ t }) => Math.abs(t - MIDDLE) < MIDDLE / 2 === inMiddle);
    return own.length > 0 ? own.reduce((sum, { aside }) => sum + aside, 0) / own.length : 0;
  };
  const bow = Math.abs(mean(true) - mean(false));
  // Few pieces tell their own spread poorly; about Student's factor for two unknowns.
  const few = 1 + 2.5 / Math.max(1, kept - 2);
  const plusMinus = (t: number): number =>
    bow + 2 * few * spread * Math.sqrt(normal[2] - 2 * t * normal[1] + t * t * normal[0]);
  return {
    atLow: first.atLow + base,
    atHigh: first.atHigh + base + lean,
    plusMinusLow: plusMinus(0),
    plusMinusHigh: plusMinus(1),
    share: kept / all,
    pieces: kept,
  };
}

interface Spot {
  /** 0 at the low end, 1 at the high one. */
  readonly t: number;
  readonly aside: number;
}

function spotsOf(evidence: RowEvidence, first: RowLine, low: number, high: number): readonly Spot[] {
  const { columns, step, rows, values } = evidence;
  const reach = Math.round(SEARCH / step);
  const middle = (columns - 1) / 2;
  const spots: Spot[] = [];
  for (let from = 0; from + PIECE_ROWS <= rows.length; from += PIECE_ROWS) {
    const sums = new Float64Array(2 * reach + 1);
    let t = 0;
    for (let row = from; row < from + PIECE_ROWS; row++) {
      const share = (rows[row] - low) / (high - low);
      t += share / PIECE_ROWS;
      const x = (first.atLow + (first.atHigh - first.atLow) * share) / step + middle;
      const [left, part] = [Math.floor(x), x - Math.floor(x)];
      for (let k = -reach; k <= reach; k++) {
        const at = Math.min(columns - 2, Math.max(0, left + k));
        sums[k + reach] += values[row * columns + at] * (1 - part) + values[row * columns + at + 1] * part;
      }
    }
    let best = 0;
    for (let k = 1; k < sums.length; k++) if (sums[k] > sums[best]) best = k;
    if (best === 0 || best === sums.length - 1 || !(sums[best] > 0)) continue;
    const bend = sums[best - 1] - 2 * sums[best] + sums[best + 1];
    const top = bend < 0 ? (sums[best - 1] - sums[best + 1]) / (2 * bend) : 0;
    spots.push({ t, aside: (best + top - reach) * step });
  }
  return spots;
}
