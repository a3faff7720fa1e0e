import type { Finding } from '../../base/index.ts';

/** mm. Photographs of one edge at its true height lie nearer together than this (chosen by us). */
const APART_MM = 0.4;

/** Several photographs that do not show the same edge in the same place. Finding: `trace.photographs-apart`. */
export function apartFindings(
  apart: { readonly rmsMm: number; readonly maxMm: number } | null,
): readonly Finding[] {
  if (apart === null || apart.rmsMm <= APART_MM) return [];
  return [
    {
      weight: 'caution',
      code: 'trace.photographs-apart',
      at: 'photographs',
      found: `their edges lie ${apart.rmsMm.toFixed(2)} mm apart (rms; ${apart.maxMm.toFixed(1)} mm at most)`,
      need: `${APART_MM} mm or less`,
      remedy:
        'look whether the instrument moved on the sheet between the photographs, and measure the height of its edge again',
    },
  ];
}
