/**
 * Worked values of curtate cycloids, a computed table.
 *
 * Title: table of curtate cycloids for violin, viola and cello widths; our own notes on the trade, 2026, computed there
 * from the published form x = a·φ − b·sin φ, y = a − b·cos φ (R. M. Mottola, note on the curtate cycloid as an arching
 * curve; the form goes back to an article by R. Playfair). Not measured on instruments.
 * Claim: for each width and rise the heights at the listed distances from the crest, to the printed last digit, and for
 * the first arch its radii, steepest place and area.
 */
import { expect, test } from 'vitest';
import { curtateCycloid, cycloidHeight } from '../src/core/surface/index.ts';

const TABLE = [
  {
    name: 'a width of 140 mm',
    widthMm: 140,
    riseMm: 14.5,
    heights:
      '0 14.500 | 5 14.396 | 10 14.084 | 15 13.565 | 20 12.840 | 25 11.910 | 30 10.780 | 35 9.461 | 40 7.969 | 45 6.339 | 50 4.630 | 55 2.945 | 60 1.453 | 65 0.391 | 70 0',
  },
  {
    name: 'an upper bout',
    widthMm: 153,
    riseMm: 8.5,
    heights: '0 8.500 | 10 8.241 | 20 7.479 | 30 6.260 | 40 4.682 | 50 2.927 | 60 1.299 | 70 .219 | 76.5 0',
  },
  {
    name: 'a waist',
    widthMm: 96,
    riseMm: 13.8,
    heights: '0 13.800 | 10 13.096 | 20 10.951 | 30 7.301 | 40 2.442 | 48 0',
  },
  {
    name: 'a lower bout',
    widthMm: 191,
    riseMm: 9,
    heights:
      '0 9.000 | 10 8.816 | 20 8.271 | 30 7.390 | 40 6.218 | 50 4.831 | 60 3.343 | 70 1.920 | 80 .767 | 90 .101 | 95.5 0',
  },
  {
    name: 'a width of 120 mm',
    widthMm: 120,
    riseMm: 10.5,
    heights: '0 10.5 | 10 10.058 | 20 8.746 | 30 6.626 | 40 3.912 | 50 1.238 | 60 0',
  },
  {
    name: 'a width of 138 mm',
    widthMm: 138,
    riseMm: 12,
    heights: '0 12 | 10 11.617 | 20 10.476 | 30 8.614 | 40 6.136 | 50 3.331 | 60 .895 | 69 0',
  },
  {
    name: 'the lower bout of a cello',
    widthMm: 425,
    riseMm: 23,
    heights:
      '0 23 | 25 22.428 | 50 20.738 | 75 18.013 | 100 14.421 | 125 10.258 | 150 6.013 | 175 2.404 | 200 .283 | 212.5 0',
  },
  {
    name: 'the lower bout of a viola',
    widthMm: 213,
    riseMm: 14.5,
    heights: '0 14.5 | 20 13.649 | 40 11.167 | 60 7.357 | 80 3.071 | 100 .213 | 106.5 0',
  },
];

/** mm: half of the last printed digit, and the rounding of a printed 5. */
const PRINTED_MM = 0.0005 + 1e-6;

test.each(TABLE)('$name: every printed height is met to its last digit', ({ widthMm, riseMm, heights }) => {
  const arch = curtateCycloid(widthMm, riseMm);
  if (!arch.ok) throw new Error('refused');
  const rows = heights.split(' | ').map((row) => row.split(' ').map(Number));
  expect(rows.length).toBeGreaterThan(5);
  for (const [x = Number.NaN, z = Number.NaN] of rows)
    expect(Math.abs(cycloidHeight(arch.value, x) - z), `height at ${x} mm`).toBeLessThanOrEqual(PRINTED_MM);
});

test('circles, radii, steepest place and area of the arch 140 mm wide and 14.5 mm high', () => {
  const arch = curtateCycloid(140, 14.5);
  if (!arch.ok) throw new Error('refused');
  const { value } = arch;
  expect(value.rollingRadiusMm).toBeCloseTo(22.2817, 4);
  expect(value.tracingRadiusMm).toBeCloseTo(7.25, 12);
  expect(value.crestRadiusMm).toBeCloseTo(120.3, 1);
  expect(value.channelRadiusMm).toBeCloseTo(31.2, 1);
  expect(value.steepest.slope).toBeCloseTo(-0.3441, 4);
  expect(value.steepest.xMm).toBeCloseTo(49.24, 2);
  expect(value.steepest.heightMm).toBeCloseTo(4.891, 3);
  expect(value.areaMm2).toBeCloseTo(1180.1, 1);
});

test('a strict cycloid at a high waist has a channel of 10.2 mm radius', () => {
  const arch = curtateCycloid(96, 13.8);
  expect(arch.ok && arch.value.channelRadiusMm).toBeCloseTo(10.2, 1);
});
