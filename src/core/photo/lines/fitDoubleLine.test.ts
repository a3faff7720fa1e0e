import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitDoubleLine } from './fitDoubleLine.ts';

const [FROM_MM, STEP_MM, COUNT] = [-1.3, 0.05, 53];

function profile(
  middleMm: number,
  widthMm: number,
  depth: number,
  strip: number,
  slope: number,
): Float64Array {
  return Float64Array.from({ length: COUNT }, (_, i) => {
    const u = FROM_MM + i * STEP_MM;
    const bell = (away: number, spread: number): number => Math.exp(-((away / spread) ** 2) / 2);
    const dark = bell(u - middleMm + widthMm / 2, 0.15) + bell(u - middleMm - widthMm / 2, 0.15);
    return 0.3 + slope * u - depth * dark + strip * bell(u - middleMm, widthMm / 4);
  });
}

test('two dark lines near where they are expected are found where they are drawn, on any slope, with a lighter strip between or none', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.08, max: 0.08, noNaN: true }),
      fc.double({ min: 0.9, max: 1.1, noNaN: true }),
      fc.double({ min: 0.1, max: 0.2, noNaN: true }),
      fc.double({ min: 0, max: 0.1, noNaN: true }),
      fc.double({ min: -0.05, max: 0.05, noNaN: true }),
      (middleMm, widthMm, depth, strip, slope) => {
        const samples = profile(middleMm, widthMm, depth, strip, slope);
        const line = fitDoubleLine(samples, FROM_MM, STEP_MM, { widthMm: 1, blurMm: 0.15 }, true);
        expect(line).not.toBeNull();
        expect(Math.abs((line?.middleMm ?? 9) - middleMm)).toBeLessThan(0.005);
        expect(Math.abs((line?.widthMm ?? 9) - widthMm)).toBeLessThan(0.02);
      },
    ),
    { numRuns: 50 },
  );
});

test('light lines are not taken for dark ones', () => {
  const samples = profile(0, 1, -0.2, 0, 0);
  expect(fitDoubleLine(samples, FROM_MM, STEP_MM, { widthMm: 1, blurMm: 0.15 }, false)).toBeNull();
});
