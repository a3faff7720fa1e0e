import type { Finding, Point } from '../base/index.ts';
import type { ArchDeviation } from './measuredDeviation.ts';
import { type FitInParts, type FitOfKept, sizeOver } from './measuredParts.ts';
import { deviationFinding, type NamedDeviation } from './measuredPlace.ts';

/** One reading against the fitted arch: above it is positive. */
export interface ArchResidual {
  readonly alongMm: number;
  readonly mm: number;
  /** False for readings outside the channel or in a stretch that was left out. */
  readonly used: boolean;
}

/** What readings leave over when an arch is fitted to them: reading by reading, and as stretches with names. */
export interface ArchMisfit {
  readonly residuals: readonly ArchResidual[];
  readonly rmsMm: number;
  readonly maxMm: number;
  readonly deviations: readonly NamedDeviation[];
  readonly findings: readonly Finding[];
}

/** What a fit in parts leaves over, told of the arch without its deviations or, where they are kept, of the whole. */
export function archMisfit(
  readings: readonly Point<'section'>[],
  parted: FitInParts,
  leftOut: boolean,
  model: {
    readonly residualsFrom: (numbers: ArrayLike<number>) => Float64Array | null;
    readonly nameOf: (deviation: ArchDeviation, sizeMm: number, numbers: readonly number[]) => NamedDeviation;
  },
  at: string,
): ArchMisfit {
  const { fit, kept } = fitTold(parted, leftOut);
  const unmoved = parted.without.fit.numbers;
  const off = model.residualsFrom(unmoved) ?? new Float64Array();
  const deviations = parted.left.map((one) => model.nameOf(one, sizeOver(readings, off, one), unmoved));
  const used = new Set(kept);
  const all = model.residualsFrom(fit.numbers) ?? new Float64Array();
  return {
    residuals: readings.map((reading, index) => ({
      alongMm: reading.x,
      mm: all[index],
      used: used.has(reading),
    })),
    rmsMm: fit.rms,
    maxMm: fit.residuals.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
    deviations,
    findings: deviations.map((one) => deviationFinding(one, at, leftOut)),
  };
}

/** The fit that is told: without the deviations where the maker leaves them out. */
export function fitTold(parted: FitInParts, leftOut: boolean): FitOfKept {
  return leftOut ? parted.without : parted.whole;
}
