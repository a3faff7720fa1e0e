import { Bug, cos, power } from '../../base/index.ts';
import { backwardSolve, dot, forwardSolve, lowerFactor, medianOf, zeroMatrix } from '../../numeric/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import { runLength } from './runLength.ts';

interface Place {
  readonly alongMm: number;
  readonly difference: number | null;
  readonly section: OutlineSection;
  /** Height, and how far the outward normal points sideways. */
  readonly y: number;
  readonly normalX: number;
}

/** How the halves differ slowly along the outline, and how far single places scatter about that. */
export interface SlowDifference {
  readonly values: readonly number[];
  /** One standard deviation of each value. */
  readonly sigmasMm: readonly number[];
  readonly spreadMm: number;
}

/** Half waves along the half outline that count as slow: none shorter than half its length. */
const WAVES = 2;
const ALONG = 1 + 2 * WAVES;
/** Sideways waves of a bent body by its height, in half waves; a shift and a turn belong to the axis. */
const BENDS = [2, 3, 4];
const TERMS = ALONG + BENDS.length;
const ROUNDS = 20;
const LEAST_SPREAD_MM = 0.02;
/** Spread of a normal distribution over the median of its sizes. */
const NORMAL_TO_MEDIAN = 1.4826;
/** Cuts of Tukey's weight in spreads, from the first round to the last half of them. */
const FIRST_CUT = 8;
const LAST_CUT = 3;
/** Weight of a wish for no difference at all, in places. */
const RIDGE = 5;

/**
 * A smooth curve of long waves through the differences, along the edge and sideways by height, places that stand off counting less and less (Tukey's weight,
 * the cut narrowing from 8 to 3 spreads), so that local wear does not bend it. Corner ends take no part. Without
 * enough places the difference is taken as none.
 */
export function slowDifference(places: readonly Place[]): SlowDifference {
  const used = places.filter((place) => place.difference !== null && !place.section.endsWith('Corner'));
  const first = places[0]?.alongMm ?? 0;
  const length = (places[places.length - 1]?.alongMm ?? 1) - first;
  if (used.length < 5 * TERMS)
    return { values: places.map(() => 0), sigmasMm: places.map(() => 0), spreadMm: LEAST_SPREAD_MM };
  const low = Math.min(...places.map(({ y }) => y));
  const tall = Math.max(1, Math.max(...places.map(({ y }) => y)) - low);
  const waves = ({ alongMm, y, normalX }: Place) =>
    Float64Array.from({ length: TERMS }, (_, k) =>
      k < ALONG
        ? cos((Math.PI * k * (alongMm - first)) / length)
        : normalX * cos((Math.PI * BENDS[k - ALONG] * (y - low)) / tall),
    );
  const rows = used.map((place) => waves(place));
  const values = used.map((place) => place.difference ?? 0);
  let factors = new Float64Array(TERMS);
  let rest: readonly number[] = values;
  let share: readonly number[] = [];
  let spread = 0;
  for (let round = 0; round < ROUNDS; round++) {
    rest = values.map((value, i) => value - dot(rows[i], factors));
    spread = Math.max(LEAST_SPREAD_MM, NORMAL_TO_MEDIAN * medianOf(rest.map(Math.abs)));
    const cut = spread * Math.max(LAST_CUT, FIRST_CUT * power(LAST_CUT / FIRST_CUT, round / (ROUNDS / 2)));
    share = rest.map((r) => (Math.abs(r) < cut ? (1 - (r / cut) ** 2) ** 2 : 0));
    factors = fit(rows, values, share);
  }
  const together = runLength(rest.map((r, i) => r * share[i]));
  const factor = factorOf(rows, share);
  return {
    values: places.map((place) => dot(waves(place), factors)),
    sigmasMm: places.map((place) => {
      const half = forwardSolve(factor, waves(place));
      return spread * Math.sqrt(together * dot(half, half));
    }),
    spreadMm: spread,
  };
}

/** Weighted least squares by the normal equations; the ridge keeps them solvable. */
function fit(
  rows: readonly Float64Array[],
  values: readonly number[],
  share: readonly number[],
): Float64Array<ArrayBuffer> {
  const right = new Float64Array(TERMS);
  rows.forEach((row, i) => {
    for (let p = 0; p < TERMS; p++) right[p] += share[i] * row[p] * values[i];
  });
  const factor = factorOf(rows, share);
  return Float64Array.from(backwardSolve(factor, forwardSolve(factor, right)));
}

function factorOf(rows: readonly Float64Array[], share: readonly number[]): readonly Float64Array[] {
  const matrix = zeroMatrix(TERMS, TERMS);
  rows.forEach((row, i) => {
    for (let p = 0; p < TERMS; p++)
      for (let q = 0; q < TERMS; q++) matrix[p][q] += share[i] * row[p] * row[q];
  });
  for (let p = 0; p < TERMS; p++) matrix[p][p] += RIDGE;
  const factor = lowerFactor(matrix);
  if (factor === undefined) throw new Bug('the waves of the slow difference cannot be told apart');
  return factor;
}
