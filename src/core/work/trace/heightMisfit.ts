import type { Finding } from '../../base/index.ts';

/** A height of the edge above the sheet with its half interval (k = 2). */
export interface ToldHeight {
  readonly heightMm: number;
  readonly plusMinusMm: number;
}

/**
 * A height as given that a height card or the photographs together contradict by more than both may be off; the one given was used.
 * Finding: `trace.edge-height-misfit`.
 */
export function heightMisfit(given: ToldHeight, told: ToldHeight, teller: string): readonly Finding[] {
  const apartMm = Math.abs(given.heightMm - told.heightMm);
  if (apartMm <= given.plusMinusMm + told.plusMinusMm) return [];
  return [
    {
      weight: 'caution',
      code: 'trace.edge-height-misfit',
      at: '--edge-height',
      found: `${given.heightMm} mm was given and used, but ${teller} ${told.heightMm.toFixed(1)} ± ${told.plusMinusMm.toFixed(1)} mm`,
      need: 'heights that agree',
      remedy:
        'measure again from the sheet up to the edge that faces the camera, or leave the height out and let the other count',
    },
  ];
}
