import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { fitEdgeProfile } from './edgeProfileFit.ts';

/** A step of height 1 at `at`, blurred by integration of a narrow bell, with a soft shadow that fades over 12 px outside. */
function profile(at: number, blur: number, shadow: number, noise = 0): Float64Array {
  const normal = seededRandom(3);
  return Float64Array.from({ length: 41 }, (_, i) => {
    const t = -8 + i * 0.5;
    let sum = 0;
    for (let k = -200; k <= 200; k++) {
      const u = t + (k / 50) * blur;
      const ground = 1 - shadow * (1 - Math.min(1, Math.max(0, (u - at) / 12)));
      sum += (u > at ? ground : 0.2) * Math.exp(-0.5 * (k / 50) ** 2);
    }
    return sum / (50 * Math.sqrt(2 * Math.PI)) + noise * seededNormal(normal);
  });
}

test('a clean blurred step is found where it stands', () => {
  for (const at of [-1.3, 0, 0.27, 1.8])
    expect(fitEdgeProfile(profile(at, 1.2, 0), -8, 0.5)?.atPx).toBeCloseTo(at, 1.7);
});

test('a soft shadow outside does not draw the edge aside', () => {
  const found = fitEdgeProfile(profile(0.4, 1, 0.5), -8, 0.5);
  expect(Math.abs((found?.atPx ?? 9) - 0.4)).toBeLessThan(0.03);
});

test('the stated spread covers the error that noise makes', () => {
  const found = fitEdgeProfile(profile(0.4, 1, 0, 0.02), -8, 0.5);
  expect(found?.sigmaPx).toBeGreaterThan(0.005);
  expect(Math.abs((found?.atPx ?? 9) - 0.4)).toBeLessThan(4 * (found?.sigmaPx ?? 0));
});

test('a flat profile has no edge', () => {
  expect(fitEdgeProfile(new Float64Array(41).fill(0.5), -8, 0.5)).toBeNull();
});
