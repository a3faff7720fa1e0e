import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bump, plainCycloid } from '../../../test/fixtures/plainArches.ts';
import { type Point, seededNormal, seededRandom } from '../base/index.ts';
import { fitCrossArch, type MeasuredCrossArch } from './measuredCrossArch.ts';

interface Reading {
  readonly seed: number;
  readonly half?: number;
  readonly rise?: number;
  readonly fullness?: number;
  readonly noise?: number;
  readonly stepMm?: number;
  readonly tiltRad?: number;
  readonly moved?: (x: number) => number;
}

/** A gauge's readings of a plain arch, turned and shifted as it lay. */
function readings(from: Reading): Point<'section'>[] {
  const { seed, half = 47.5, rise = 12, fullness = 0.02, noise = 0.04, stepMm = 2, tiltRad = 0.01 } = from;
  const random = seededRandom(seed);
  const arch = plainCycloid(half, rise, fullness);
  const points: Point<'section'>[] = [];
  for (let x = -half - 4 + random() * stepMm; x <= half + 4; x += stepMm) {
    const z = arch(x) + (from.moved?.(x) ?? 0) + noise * seededNormal(random);
    points.push({
      x: 3 + x * Math.cos(tiltRad) - z * Math.sin(tiltRad),
      y: 2.8 + x * Math.sin(tiltRad) + z * Math.cos(tiltRad),
    });
  }
  return points;
}

function fitted(from: Reading, leaveOut = true): MeasuredCrossArch {
  const fit = fitCrossArch(readings(from), { base: 'free', face: 'top', station: 'waist', leaveOut });
  if (!fit.ok) throw new Error(fit.faults[0]!.found);
  return fit.value;
}

describe('a cross arch read without noise', () => {
  test('gives back its width, rise, fullness, tilt and place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 100, noNaN: true }),
        fc.double({ min: 6, max: 15, noNaN: true }),
        fc.double({ min: -0.1, max: 0.1, noNaN: true }),
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        (half, rise, fullness, tiltRad) => {
          const found = fitted({ seed: 1, half, rise, fullness, tiltRad, noise: 0, stepMm: 1 });
          expect(found.halfWidthMm.value).toBeCloseTo(half, 1);
          expect(found.riseMm.value).toBeCloseTo(rise, 2);
          expect(found.fullness.value).toBeCloseTo(fullness, 3);
          expect(found.tiltRad.value).toBeCloseTo(tiltRad, 3);
          expect(found.deviations).toEqual([]);
        },
      ),
      { numRuns: 15 },
    );
  });

  test('and its mirror image have the same numbers', () => {
    const there = readings({ seed: 5 });
    const back = there.map(({ x, y }) => ({ x: -x, y }));
    const [one, other] = [there, back].map((points) => fitCrossArch(points, { base: 'free' }));
    if (!one?.ok || !other?.ok) throw new Error();
    expect(other.value.riseMm.value).toBeCloseTo(one.value.riseMm.value, 3);
    expect(other.value.fullness.value).toBeCloseTo(one.value.fullness.value, 4);
    expect(other.value.centreXMm.value).toBeCloseTo(-one.value.centreXMm.value, 3);
    expect(other.value.tiltRad.value).toBeCloseTo(-one.value.tiltRad.value, 4);
  });
});

describe('readings with noise', () => {
  test('carry a ± that covers the truth in 92 to 98 of 100 cases (200 seeds)', () => {
    let [rise, fullness, width] = [0, 0, 0];
    for (let seed = 1; seed <= 200; seed++) {
      const found = fitted({ seed });
      if (Math.abs(found.riseMm.value - 12) <= found.riseMm.plusMinus) rise++;
      if (Math.abs(found.fullness.value - 0.02) <= found.fullness.plusMinus) fullness++;
      if (Math.abs(found.halfWidthMm.value - 47.5) <= found.halfWidthMm.plusMinus) width++;
    }
    for (const covered of [rise, fullness, width]) {
      expect(covered).toBeGreaterThanOrEqual(184);
      expect(covered).toBeLessThanOrEqual(196);
    }
  });

  test('with a post bulge of half a millimetre give rise within 0.05 and fullness within 0.015 once it is left out', () => {
    for (let seed = 1; seed <= 25; seed++) {
      const found = fitted({ seed, noise: 0.03, stepMm: 1, moved: (x) => bump(x, 18, 12, 0.5) });
      expect(found.deviations.map(({ name }) => name)).toEqual(['postBulge']);
      expect(Math.abs(found.riseMm.value - 12)).toBeLessThan(0.05);
      expect(Math.abs(found.fullness.value - 0.02)).toBeLessThan(0.015);
      expect(found.deviations[0]!.sizeMm).toBeGreaterThan(0.4);
      expect(found.deviations[0]!.sizeMm).toBeLessThan(0.56);
      expect(Math.abs(found.deviations[0]!.atMm - 3 - 18)).toBeLessThan(2);
    }
  });
});

describe('a stretch where the wood was moved', () => {
  const sunk = (x: number) => bump(x, -17, 12, -0.5);

  test('is named after the bar on the bass side of a top, with place and size', () => {
    const [sag] = fitted({ seed: 3, stepMm: 1, moved: sunk }).deviations;
    expect(sag?.name).toBe('barSag');
    expect(sag?.words).toMatch(
      /^a sag at the bar, 1[678] mm from the centre line, bass side, .* 0\.[45]\d mm below the fitted arch$/,
    );
  });

  test('is no bar on a back, where bass is on the right', () => {
    const points = readings({ seed: 3, stepMm: 1, moved: sunk });
    const fit = fitCrossArch(points, { base: 'free', face: 'back', station: 'waist' });
    if (!fit.ok) throw new Error();
    expect(fit.value.deviations.map(({ name, words }) => [name, words.includes('treble side')])).toEqual([
      ['hollow', true],
    ]);
  });

  test('over the middle is a sag of the crest', () => {
    const found = fitted({ seed: 4, stepMm: 1, moved: (x) => bump(x, 0, 9, -0.5) });
    expect(found.deviations.map(({ name }) => name)).toEqual(['crestSag']);
    expect(Math.abs(found.riseMm.value - 12)).toBeLessThan(0.1);
  });

  test('is kept and told unless the maker agrees to leave it out, and then draws the fullness aside', () => {
    const bulge = (x: number) => bump(x, 18, 14, 0.6);
    const kept = fitted({ seed: 6, stepMm: 1, moved: bulge }, false);
    const without = fitted({ seed: 6, stepMm: 1, moved: bulge }, true);
    expect(kept.findings.map(({ code, weight }) => [code, weight])).toEqual([['arch.deviation', 'caution']]);
    expect(without.findings.map(({ code }) => code)).toEqual(['arch.deviation-left-out']);
    expect(Math.abs(kept.fullness.value - 0.02)).toBeGreaterThan(3 * Math.abs(without.fullness.value - 0.02));
    expect(without.residuals.filter(({ used }) => !used).length).toBeGreaterThan(10);
    expect(kept.deviations).toEqual(without.deviations);
  });

  test('is not seen in noise alone', () => {
    const bulges = Array.from({ length: 40 }, (_, seed) => fitted({ seed: seed + 300 }).deviations.length);
    expect(bulges.filter((count) => count > 0).length).toBeLessThanOrEqual(1);
  });
});

describe('readings that cannot tell an arch are refused', () => {
  const code = (points: readonly Point<'section'>[], knowns = {}) => {
    const fit = fitCrossArch(points, { base: 'free', ...knowns });
    return fit.ok ? 'accepted' : fit.faults[0]!.code;
  };
  const whole = readings({ seed: 2 });

  test.each([
    ['too few', whole.slice(0, 6), 'arch.readings'],
    ['not a number', [...whole, { x: Number.NaN, y: 1 }], 'arch.readings'],
    ['all of one height', whole.map(({ x }) => ({ x, y: 4 })), 'arch.readings'],
    ['falling to one side', whole.filter(({ x }) => x > 3), 'arch.one-sided'],
    ['ending before the channel', whole.filter(({ x }) => Math.abs(x - 3) < 30), 'arch.reach'],
  ])('%s', (_what, points, expected) => {
    expect(code(points)).toBe(expected);
  });

  test('one side is enough where the centre line is marked and the reading is level', () => {
    const level = readings({ seed: 2, tiltRad: 0, stepMm: 1 });
    const fit = fitCrossArch(
      level.filter(({ x }) => x > 0),
      { base: 'given', centreXMm: 3 },
    );
    if (!fit.ok) throw new Error(fit.faults[0]!.code);
    expect(Math.abs(fit.value.riseMm.value - 12)).toBeLessThan(0.15);
  });
});
