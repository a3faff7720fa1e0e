import { expect, test } from 'vitest';
import { type LoftRow, loftHeight } from './loft.ts';
import { loftAcross } from './loftAcross.ts';

const WITHIN_MM = 1e-11;

test('heights found one from the other are those of the row, for shallow and steep arches and coarse and fine steps', () => {
  for (const loopRatio of [0.01, 0.2, 0.5, 0.8, 0.97])
    for (const fullness of [-0.15, 0, 0.1])
      for (const stepMm of [0.1, 0.858, 3, 17]) {
        const widthMm = 61.3;
        const riseMm = (2 * widthMm * loopRatio) / Math.PI;
        const row: LoftRow = { widthMm, riseMm, fullness, loopRatio, beyond: null };
        const heights = new Float64Array(Math.ceil(70 / stepMm));
        loftAcross(row, stepMm, heights);
        heights.forEach((height, at) => {
          expect(Math.abs(height - loftHeight(row, at * stepMm))).toBeLessThan(WITHIN_MM);
        });
      }
});

test('beyond the ends of a long arch all is flat', () => {
  const heights = new Float64Array(5).fill(7);
  loftAcross({ widthMm: 0, riseMm: 0, fullness: 0, loopRatio: 0, beyond: null }, 1, heights);
  expect([...heights]).toEqual([0, 0, 0, 0, 0]);
});
