import { Bug } from '../../base/index.ts';
import { medianOf, solveDefinite, zeroMatrix } from '../../numeric/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';

interface Place {
  readonly alongMm: number;
  readonly difference: number | null;
  readonly section: OutlineSection;
}

/** How the halves differ slowly along the outline, and how far single places scatter about that. */
export interface SlowDifference {
  readonly values: readonly number[];
  readonly spreadMm: number;
}

/** Half waves along the half outline that count as slow: none shorter than half its length. */
const WAVES = 2;
const TERMS = 1 + 2 * WAVES;
const ROUNDS = 20;
const LEAST_SPREAD_MM = 0.02;

/**
 * A smooth curve of long waves through the differences, places that stand off counting less and less (Tukey's weight,
 * the cut narrowing from 8 to 3 spreads), so that local wear does not bend it. Corner ends take no part. Without
 * enough places the difference is taken as none.
 */
export function slowDifference(places: readonly Place[]): SlowDifference {
  const used = places.filter((place) => place.difference !== null && !place.section.endsWith('Corner'));
  const first = places[0]?.alongMm ?? 0;
  const length = (places[places.length - 1]?.alongMm ?? 1) - first;
  if (used.length < 5 * TERMS) return { values: places.map(() => 0), spreadMm: LEAST_SPREAD_MM };
  const rows = used.map((place) => waves((place.alongMm - first) / length));
  let factors: readonly number[] = new Array<number>(TERMS).fill(0);
  let spread = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const rest = used.map((place, i) => (place.difference ?? 0) - dot(rows[i], factors));
    spread = Math.max(LEAST_SPREAD_MM, 1.4826 * medianOf(rest.map(Math.abs)));
    const cut = spread * Math.max(3, 8 * (3 / 8) ** (round / (ROUNDS / 2)));
    const share = rest.map((r) => (Math.abs(r) < cut ? (1 - (r / cut) ** 2) ** 2 : 0));
    factors = fit(
      rows,
      used.map((place) => place.difference ?? 0),
      share,
    );
  }
  return {
    values: places.map((place) => dot(waves((place.alongMm - first) / length), factors)),
    spreadMm: spread,
  };
}

/** Cosines over the half outline: level at both ends, where the halves meet. */
function waves(share: number): readonly number[] {
  return Array.from({ length: TERMS }, (_, k) => Math.cos(Math.PI * k * share));
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i], 0);
}

/** Weighted least squares by the normal equations; the ridge keeps them solvable. */
function fit(
  rows: readonly (readonly number[])[],
  values: readonly number[],
  share: readonly number[],
): readonly number[] {
  const matrix = zeroMatrix(TERMS, TERMS);
  const right = new Float64Array(TERMS);
  rows.forEach((row, i) => {
    for (let p = 0; p < TERMS; p++) {
      for (let q = 0; q < TERMS; q++) matrix[p][q] += share[i] * row[p] * row[q];
      right[p] += share[i] * row[p] * values[i];
    }
  });
  for (let p = 0; p < TERMS; p++) matrix[p][p] += RIDGE;
  const factors = solveDefinite(matrix, right);
  if (factors === undefined) throw new Bug('the waves of the slow difference cannot be told apart');
  return [...factors];
}

/** Weight of a wish for no difference at all, in places. */
const RIDGE = 0.01;
