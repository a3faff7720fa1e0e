import { describe, expect, test } from 'vitest';
import { bump, plainCircle, plainCycloid } from '../../../test/fixtures/plainArches.ts';
import { type Point, seededNormal, seededRandom } from '../base/index.ts';
import { fitLongArch, type MeasuredLongArch } from './measuredLongArch.ts';

const HALF = 170;

/** Readings every 5 mm along a violin's back, 177 mm from the lower end at the middle, the reading tilted by 0.002. */
function readings(height: (y: number) => number, seed = 1, noise = 0.04): Point<'section'>[] {
  const random = seededRandom(seed);
  const points: Point<'section'>[] = [];
  for (let y = -HALF - 4 + 5 * random(); y <= HALF + 4; y += 5) {
    const z = height(y) + noise * seededNormal(random);
    points.push({ x: 177 + y - 0.002 * z, y: 3 + z + 0.002 * y });
  }
  return points;
}

function fitted(points: readonly Point<'section'>[], leaveOut = true): MeasuredLongArch {
  const fit = fitLongArch(points, { base: 'free', face: 'top', leaveOut });
  if (!fit.ok) throw new Error(fit.faults[0]!.found);
  return fit.value;
}

describe('the form of a long arch', () => {
  const circle = plainCircle(HALF, 12, 40);
  const shoulder = plainCircle(HALF - 45, 12, 40);
  test.each([
    ['circle', circle],
    ['cycloid', plainCycloid(HALF, 12)],
    ['two-circles', (y: number) => shoulder(Math.max(0, Math.abs(y) - 45))],
  ] as const)('is told: %s', (kind, height) => {
    for (const seed of [1, 2, 3]) {
      const found = fitted(readings(height, seed));
      expect(found.form.kind).toBe(kind);
      expect(Math.abs(found.riseMm.value - 12)).toBeLessThan(0.2);
      expect(Math.abs(found.crestAtMm.value - 177)).toBeLessThan(1.5);
      expect(found.forms.every(({ rmsMm }) => rmsMm > 0.02)).toBe(true);
    }
  });
});

test('a crest that does not lie in the middle is found, with its ±', () => {
  const [lower, upper] = [plainCircle(HALF + 10, 12, 40), plainCircle(HALF - 10, 12, 40)];
  const found = fitted(readings((y) => (y < 10 ? lower(y - 10) : upper(y - 10))));
  expect(Math.abs(found.crestAtMm.value - 187)).toBeLessThan(Math.max(2, found.crestAtMm.plusMinus));
  expect(found.belowMm.value - found.aboveMm.value).toBeGreaterThan(14);
});

test('a sag under the strings is named in words and, left out, the arch stands as high as it did', () => {
  const circle = plainCircle(HALF, 12, 40);
  const points = readings((y) => circle(y) + bump(y, 12, 40, -0.8), 4);
  const found = fitted(points);
  expect(found.deviations.map(({ name }) => name)).toEqual(['crestSag']);
  expect(found.deviations[0]!.words).toMatch(
    /^a sag \d+ mm above the crest, as the load of the strings leaves it, over \d+ mm, 0\.\d\d mm below the fitted arch$/,
  );
  expect(Math.abs(found.riseMm.value - 12)).toBeLessThan(0.2);
  expect(found.findings.map(({ code }) => code)).toEqual(['arch.deviation-left-out']);
});

test('readings that cannot tell a long arch are refused', () => {
  const circle = plainCircle(HALF, 12, 40);
  const refused = (points: readonly Point<'section'>[]) => {
    const fit = fitLongArch(points, { base: 'free' });
    return fit.ok ? 'accepted' : fit.faults[0]!.code;
  };
  expect(refused(readings(circle).slice(0, 5))).toBe('arch.readings');
  expect(refused(readings(circle).filter(({ x }) => x > 177))).toBe('arch.one-sided');
});
