/**
 * Check values of our own earlier prototype of the arching. Illustrative: it is no outside source, it was written by us in
 * another language before this code, and agreement shows only that both compute the same thing.
 *
 * Source: our design note on arching, 2026, default run: channel ends at 7.0 and 347.0 mm, rise 12.0 mm, circle with
 * end fillets of 40 mm; half widths 96.24 mm (lower bout) and 47.50 mm (waist).
 * Claim: the rises at four of its five stations to the printed 0.01 mm (the lowest, printed 7.32, is 7.302 by the note's
 * own rule R = (c² + s²)/(2s) − r at the printed height, so it is held to 0.02 only), the waist's steepest slope of 23.4 degrees, and
 * channel radii of 14 mm at the waist and 199 mm at the lower bout.
 */
import { expect, test } from 'vitest';
import { curtateCycloid, longArch, longArchHeight } from '../src/core/surface/index.ts';

test('rises at the five stations', () => {
  const arch = longArch(7, 347, 12, { kind: 'circle', filletMm: 40 });
  if (!arch.ok) throw new Error('refused');
  const rises = [72.25, 116.25, 177, 222, 277.75].map((y) => longArchHeight(arch.value, y));
  for (const [index, expected] of [7.32, 10.42, 12, 11.13, 7.65].entries())
    expect(Math.abs((rises[index] ?? 0) - expected)).toBeLessThanOrEqual(index === 0 ? 0.02 : 0.005 + 1e-9);
});

test('the waist is steepest at 23.4 degrees and its channel has a radius of 14 mm, the lower bout of 199 mm', () => {
  const waist = curtateCycloid(2 * 47.5, 12);
  const bout = curtateCycloid(2 * 96.24, 7.32);
  if (!waist.ok || !bout.ok) throw new Error('refused');
  expect((Math.atan(-waist.value.steepest.slope) * 180) / Math.PI).toBeCloseTo(23.4, 1);
  expect(waist.value.channelRadiusMm).toBeCloseTo(14, 0);
  expect(bout.value.channelRadiusMm).toBeCloseTo(199, 0);
});
