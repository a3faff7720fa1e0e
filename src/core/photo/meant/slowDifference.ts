import { Bug } from '../../base/index.ts';
import { backwardSolve, dot, forwardSolve, lowerFactor, medianOf, zeroMatrix } from '../../numeric/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import { runLength } from './runLength.ts';

interface Place {
  readonly alongMm: number;
  readonly difference: number | null;
  readonly section: OutlineSection;
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
const TERMS = 1 + 2 * WAVES;
const ROUNDS = 20;
const LEAST_SPREAD_MM = 0.02;
/** Spread of a normal distribution over the median of its sizes. */
const NORMAL_TO_MEDIAN = 1.4826;
/** Cuts of Tukey's weight in spreads, from the first round to the last half of them. */
const FIRST_CUT = 8;
const LAST_CUT = 3;
/** Weight of a wish for no difference at all, in places. */
const RIDGE = 0.01;

/**
 * A smooth curve of long waves through the differences, places that stand off counting less and less (Tukey's weight,
 * the cut narrowing from 8 to 3 spreads), so that local wear does not bend it. Corner ends take no part. Without
 * enough places the difference is taken as none.
 */
export function slowDifference(places: readonly Place[]): SlowDifference {
  const used = places.filter((place) => place.difference !== null && !place.section.endsWith('Corner'));
  const first = places[0]?.alongMm ?? 0;
  const length = (places[places.length - 1]?.alongMm ?? 1) - first;
  if (used.length < 5 * TERMS)
    return { values: places.map(() => 0), sigmasMm: places.map(() => 0), spreadMm: LEAST_SPREAD_MM };
  const rows = used.map((place) => waves((place.alongMm - first) / length));
  const values = used.map((place) => place.difference ?? 0);
  let factors = new Float64Array(TERMS);
  let rest: readonly number[] = values;
  let share: readonly number[] = [];
  let spread = 0;
  for (let round = 0; round < ROUNDS; round++) {
    rest = values.map((value, i) => value - dot(rows[i], factors));
    spread = Math.max(LEAST_SPREAD_MM, NORMAL_TO_MEDIAN * medianOf(rest.map(Math.abs)));
    const cut = spread * Math.max(LAST_CUT, FIRST_CUT * (LAST_CUT / FIRST_CUT) ** (round / (ROUNDS / 2)));
    share = rest.map((r) => (Math.abs(r) < cut ? (1 - (r / cut) ** 2) ** 2 : 0));
    factors = fit(rows, values, share);
  }
  const together = runLength(rest.map((r, i) => r * share[i]));
  const factor = factorOf(rows, share);
  return {
    values: places.map((place) => dot(waves((place.alongMm - first) / length), factors)),
    sigmasMm: places.map((place) => {
      const half = forwardSolve(factor, waves((place.alongMm - first) / length));
      return spread * Math.sqrt(together * dot(half, half));
    }),
    spreadMm: spread,
  };
}

/** Cosines over the half outline: level at both ends, where the halves meet. */
function waves(share: number): Float64Array {
  return Float64Array.from({ length: TERMS }, (_, k) => Math.cos(Math.PI * k * share));
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
