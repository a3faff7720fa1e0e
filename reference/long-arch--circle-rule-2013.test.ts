/**
 * The long arch as a circle segment.
 *
 * Source: workshop note of a maker on arching templates, published on the web, 2013 (author not named in our notes): the
 * long arch is a segment of a circle whose chord runs from channel low to channel low, its radius from chord and rise,
 * R = (c²/4 + s²) / (2s). The three radii were computed from that rule in our notes, not printed in the source.
 * Claim: our rule gives these radii to their last digit; without an end fillet our long arch is that circle; and its
 * height at a station is z = crest − (R − √(R² − x²)), as the same note has it.
 */
import { expect, test } from 'vitest';
import { chordCircleRadius, longArch, longArchHeight, longArchRadii } from '../src/core/surface/index.ts';

const ROWS = [
  { chordMm: 333, riseMm: 14.5, radiusMm: 963.2 },
  { chordMm: 335, riseMm: 12, radiusMm: 1175 },
  { chordMm: 335, riseMm: 11, radiusMm: 1280.8 },
];

test.each(ROWS)('a chord of $chordMm mm with a rise of $riseMm mm', ({ chordMm, riseMm, radiusMm }) => {
  expect(Math.abs(chordCircleRadius(chordMm, riseMm) - radiusMm)).toBeLessThanOrEqual(0.05 + 1e-9);
  const arch = longArch(0, chordMm, riseMm, { kind: 'circle', filletMm: 0 });
  if (!arch.ok) throw new Error('refused');
  const exact = (chordMm ** 2 / 4 + riseMm ** 2) / (2 * riseMm);
  expect(longArchRadii(arch.value)).toEqual([exact]);
  for (const share of [0.1, 0.25, 0.5, 0.8]) {
    const x = share * chordMm - chordMm / 2;
    const expected = riseMm - (exact - Math.sqrt(exact ** 2 - x ** 2));
    expect(longArchHeight(arch.value, share * chordMm)).toBeCloseTo(expected, 9);
  }
});
