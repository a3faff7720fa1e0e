import type { Point } from '../base/index.ts';
import { type ArchDeviation, type DeviationSearch, standingOut } from './measuredDeviation.ts';
import type { ModelFit } from './measuredFit.ts';

/** A fit and the readings it was made of, one a residual. */
export interface FitOfKept {
  readonly fit: ModelFit;
  readonly kept: readonly Point<'section'>[];
}

/** How an arch is fitted without some stretches, and where stretches that leave it are looked for. */
export interface PartsTask {
  readonly fitWithout: (start: readonly number[], left: readonly ArchDeviation[]) => FitOfKept | null;
  readonly start: readonly number[];
  readonly searchOf: (numbers: readonly number[]) => DeviationSearch;
}

/** The arch with everything, and without the stretches where the wood was moved. */
export interface FitInParts {
  readonly whole: FitOfKept;
  readonly without: FitOfKept;
  readonly left: readonly ArchDeviation[];
}

const MOST_DEVIATIONS = 3;
/** How much wider than the bump that was found the stretch is that is left out: a bump has a foot. */
const FOOT = 1.25;
/** Share of the readings that must remain when stretches are left out. */
const LEAST_KEPT = 0.55;

/**
 * Fits, takes the deviation that stands out most away, and fits again, until none stands out; null when the arch cannot
 * be fitted. Stretches are masked, not weighed down: a bump that keeps some weight still draws the fullness aside.
 */
export function fitInParts(count: number, { fitWithout, start, searchOf }: PartsTask): FitInParts | null {
  const whole = fitWithout(start, []);
  if (whole === null) return null;
  let without = whole;
  const left: ArchDeviation[] = [];
  while (left.length < MOST_DEVIATIONS) {
    const { fit, kept } = without;
    const places = kept.map(({ x }) => x);
    const found = standingOut(fit, places, searchOf(fit.numbers));
    if (found === null) break;
    const next = widened(found);
    const tried = fitWithout(fit.numbers, [...left, next]);
    if (tried === null || tried.kept.length < LEAST_KEPT * count) break;
    left.push(next);
    without = tried;
  }
  return { whole, without, left };
}

function widened(one: ArchDeviation): ArchDeviation {
  const reach = (FOOT * (one.toMm - one.fromMm)) / 2;
  return { ...one, fromMm: one.atMm - reach, toMm: one.atMm + reach };
}

/** Whether a place lies in one of the stretches. */
export function liesIn(left: readonly ArchDeviation[], alongMm: number): boolean {
  return left.some(({ fromMm, toMm }) => alongMm > fromMm && alongMm < toMm);
}

/** The mean round the middle of a stretch, so that one reading does not make its size. */
export function sizeOver(
  readings: readonly Point<'section'>[],
  residuals: Float64Array,
  { atMm, fromMm, toMm }: ArchDeviation,
): number {
  const near = readings.flatMap(({ x }, index) =>
    Math.abs(x - atMm) < CORE * (toMm - fromMm) ? [residuals[index]] : [],
  );
  return near.reduce((sum, value) => sum + value, 0) / Math.max(1, near.length);
}

/** Share of a stretch's width each side of its middle: there a raised cosine stands at 0.97 of its height on average. */
const CORE = 0.1;
