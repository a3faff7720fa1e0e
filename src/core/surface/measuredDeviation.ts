import { cos } from '../base/index.ts';
import { medianOf } from '../numeric/index.ts';
import { beyondModel, type ModelFit } from './measuredFit.ts';

/** A stretch where the readings leave the fitted arch together. */
export interface ArchDeviation {
  /** Middle of the stretch, along the reading's level line. */
  readonly atMm: number;
  readonly fromMm: number;
  readonly toMm: number;
  /** Where it is greatest: above the fitted arch is positive. */
  readonly sizeMm: number;
}

/** How wide stretches are looked for, half widths in mm, and how large they must be. */
export interface DeviationSearch {
  readonly halfWidthsMm: readonly number[];
  readonly leastMm: number;
  /** The whole of a stretch lies between these. */
  readonly fromMm: number;
  readonly toMm: number;
}

/** Least ratio of a deviation to its own spread: over all places and widths looked at, chance makes none so large. */
const SURE = 5.5;
/** Share of the sum of squared residuals that one deviation must explain. */
const LEAST_SHARE = 0.25;
const FEWEST_READINGS = 4;
const PLACES = 60;

/**
 * The one bump or hollow that explains most of the residuals, or null when none stands out of the noise.
 * Method: a raised cosine of every place and width, less what the arch's own numbers can imitate, set against the
 * residuals; the noise is taken from neighbours' differences, which a bump hardly touches.
 */
export function standingOut(
  fit: ModelFit,
  placesMm: readonly number[],
  search: DeviationSearch,
): ArchDeviation | null {
  const { residuals } = fit;
  const noise = neighbourNoise(residuals);
  const all = residuals.reduce((sum, value) => sum + value * value, 0);
  let best: (ArchDeviation & { readonly explained: number }) | null = null;
  for (const half of search.halfWidthsMm)
    for (let step = 0; step <= PLACES; step++) {
      const at = search.fromMm + (step / PLACES) * (search.toMm - search.fromMm);
      if (at - half < search.fromMm || at + half > search.toMm) continue;
      const inside = placesMm.filter((place) => Math.abs(place - at) < half).length;
      if (inside < FEWEST_READINGS) continue;
      const shape = Float64Array.from(placesMm, (place) => bumpAt(place - at, half));
      const rest = beyondModel(fit, shape);
      let squared = 0;
      let together = 0;
      for (let i = 0; i < rest.length; i++) {
        squared += rest[i] * rest[i];
        together += rest[i] * residuals[i];
      }
      if (!(squared > LEAST_LEFT)) continue;
      const sizeMm = together / squared;
      const explained = (together * together) / squared;
      if (Math.abs(sizeMm) < search.leastMm || explained < (SURE * noise) ** 2) continue;
      if (explained < LEAST_SHARE * all || explained <= (best?.explained ?? 0)) continue;
      best = { atMm: at, fromMm: at - half, toMm: at + half, sizeMm, explained };
    }
  return best && { atMm: best.atMm, fromMm: best.fromMm, toMm: best.toMm, sizeMm: best.sizeMm };
}

/** Squared length of a bump less its imitation, below which the model can make the bump itself. */
const LEAST_LEFT = 0.05;

function bumpAt(awayMm: number, halfMm: number): number {
  return Math.abs(awayMm) < halfMm ? (1 + cos((Math.PI * awayMm) / halfMm)) / 2 : 0;
}

/** Standard deviation of one reading, from the differences of neighbours (median, so that a few do not matter). */
function neighbourNoise(residuals: Float64Array): number {
  const steps: number[] = [];
  for (let i = 1; i < residuals.length; i++) steps.push(Math.abs(residuals[i] - residuals[i - 1]));
  return (MEDIAN_TO_DEVIATION * medianOf(steps)) / Math.SQRT2;
}

/** Of the normal distribution: standard deviation over median of the absolute value. */
const MEDIAN_TO_DEVIATION = 1.4826;
