import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outlineHabit } from '../../knowledge/index.ts';
import { selfCrossings } from '../intersections.ts';
import { outlineChain } from '../outlineChain.ts';
import { headingOn, pointOn, segments } from '../segment.ts';
import { type DraftedHalf, draftHalfOutline } from './draftHalfOutline.ts';
import type { OutlineTargets } from './outlineTargets.ts';

const violin = outlineHabit('violin');
const USUAL: OutlineTargets = violin.usualSizes;

function drafted(targets: OutlineTargets, habit = violin): DraftedHalf {
  const result = draftHalfOutline(targets, habit);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

function refusal(targets: OutlineTargets, habit = violin) {
  const result = draftHalfOutline(targets, habit);
  return result.ok ? [] : result.faults.map(({ code, at }) => `${code} ${at}`);
}

/** The three widths and the length of a half, measured along closely laid points. */
function measured({ half }: DraftedHalf) {
  const dense = (chain: typeof half.lowerBout) =>
    segments(chain).flatMap((segment) => Array.from({ length: 2001 }, (_, i) => pointOn(segment, i / 2000)));
  const lower = dense(half.lowerBout);
  const waist = dense(half.cBout);
  const upper = dense(half.upperBout);
  return {
    lowerBoutMm: 2 * Math.max(...lower.map(({ x }) => x)),
    waistMm: 2 * Math.min(...waist.map(({ x }) => x)),
    upperBoutMm: 2 * Math.max(...upper.map(({ x }) => x)),
    bodyLengthMm: Math.max(...upper.map(({ y }) => y)) - Math.min(...lower.map(({ y }) => y)),
  };
}

function largestKinkRad({ half }: DraftedHalf): number {
  return Math.max(
    ...[half.lowerBout, half.cBout, half.upperBout].flatMap((chain) => {
      const all = segments(chain);
      return all.slice(1).map((segment, i) => {
        const turn = headingOn(segment, 0) - headingOn(all[i], 1);
        return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
      });
    }),
  );
}

test('the usual violin has its four sizes as true extremes and passes without a word', () => {
  const result = drafted(USUAL);
  expect(result.findings).toEqual([]);
  expect(result.residualMm).toBeLessThan(1e-8);
  const sizes = measured(result);
  for (const name of ['bodyLengthMm', 'lowerBoutMm', 'waistMm', 'upperBoutMm'] as const)
    expect(Math.abs(sizes[name] - USUAL[name])).toBeLessThan(1e-4);
});

test('given heights and corner widths are met where they were given', () => {
  const given = {
    ...USUAL,
    lowerCornerStationMm: 146.5,
    upperCornerStationMm: 234,
    lowerCornersMm: 183,
    upperCornersMm: 161,
    waistStationMm: 199.5,
    lowerCornerEndMm: 7.2,
  };
  const { half } = drafted(given);
  const lowerTip = half.lowerBout.vertices.at(-1) as { x: number; y: number };
  const upperTip = half.upperBout.vertices[0];
  const cTip = half.cBout.vertices[0];
  expect(lowerTip.y).toBeCloseTo(146.5, 8);
  expect(2 * lowerTip.x).toBeCloseTo(183, 8);
  expect(upperTip.y).toBeCloseTo(234, 8);
  expect(2 * upperTip.x).toBeCloseTo(161, 8);
  expect(Math.hypot(cTip.x - lowerTip.x, cTip.y - lowerTip.y)).toBeCloseTo(7.2, 8);
  const low = segments(half.cBout)
    .flatMap((segment) => Array.from({ length: 2001 }, (_, i) => pointOn(segment, i / 2000)))
    .reduce((a, b) => (b.x < a.x ? b : a));
  expect(Math.abs(low.y - 199.5)).toBeLessThan(0.05);
});

test('all lengths enlarged together give the same outline enlarged', () => {
  const cello = outlineHabit('cello');
  fc.assert(
    fc.property(fc.double({ min: 0.75, max: 1.08, noNaN: true }), (scale) => {
      const sizes = cello.usualSizes;
      const one = drafted(sizes, cello).half.cBout.vertices;
      const other = drafted(
        {
          bodyLengthMm: sizes.bodyLengthMm * scale,
          upperBoutMm: sizes.upperBoutMm * scale,
          waistMm: sizes.waistMm * scale,
          lowerBoutMm: sizes.lowerBoutMm * scale,
        },
        cello,
      ).half.cBout.vertices;
      one.forEach((vertex, i) => {
        expect(Math.abs(other[i].x - vertex.x * scale)).toBeLessThan(1e-6);
        expect(Math.abs(other[i].y - vertex.y * scale)).toBeLessThan(1e-6);
      });
    }),
    { numRuns: 20 },
  );
});

const family = fc.constantFrom('violin', 'viola', 'cello');
const strayed = (most: number) =>
  fc.record({
    family,
    factors: fc.array(fc.double({ min: 1 - most, max: 1 + most, noNaN: true }), {
      minLength: 4,
      maxLength: 4,
    }),
  });

test.each([
  [0.06, 40],
  [0.1, 40],
])('sizes that stray by up to %f are drawn true, tangent and simple, or refused in words', (most, runs) => {
  let drawn = 0;
  fc.assert(
    fc.property(strayed(most), ({ family, factors }) => {
      const habit = outlineHabit(family);
      const sizes = {
        bodyLengthMm: habit.usualSizes.bodyLengthMm * factors[0],
        upperBoutMm: habit.usualSizes.upperBoutMm * factors[1],
        waistMm: habit.usualSizes.waistMm * factors[2],
        lowerBoutMm: habit.usualSizes.lowerBoutMm * factors[3],
      };
      const result = draftHalfOutline(sizes, habit);
      if (!result.ok) {
        expect(most).toBeGreaterThan(0.06);
        expect(result.faults.map(({ code }) => code).join()).toMatch(
          /draft\.(length|proportion|strained|waist-too-wide)/,
        );
        return;
      }
      drawn += 1;
      expect(result.value.residualMm).toBeLessThan(1e-8);
      expect(largestKinkRad(result.value)).toBeLessThan(1e-9);
      expect(selfCrossings(outlineChain(result.value.half))).toEqual([]);
      const found = measured(result.value);
      for (const name of ['bodyLengthMm', 'lowerBoutMm', 'waistMm', 'upperBoutMm'] as const)
        expect(Math.abs(found[name] - sizes[name])).toBeLessThan(0.01);
    }),
    { numRuns: runs, seed: 7 },
  );
  expect(drawn).toBeGreaterThan(runs / 2);
});

test.each<[string, Partial<OutlineTargets>, RegExp]>([
  ['a length in centimetres', { bodyLengthMm: 35.5 }, /^draft\.length bodyLength$/],
  ['a waist as wide as the upper bout', { waistMm: 168 }, /draft\.\S+ waist/],
  ['a waist of half the width', { waistMm: 56 }, /draft\.proportion waist/],
  ['a waist too wide for its curves', { waistMm: 150 }, /draft\.\S+ waist/],
  ['an upper bout that is wider than the lower one', { upperBoutMm: 186, lowerBoutMm: 190 }, /^$/],
  ['corners in the wrong order', { lowerCornerStationMm: 240, upperCornerStationMm: 150 }, /draft\.order/],
  ['a widest place right at the end', { lowerBoutStationMm: 30 }, /draft\.cannot-meet lowerBoutStation/],
  ['a minus sign', { waistMm: -112 }, /draft\.not-a-length waist/],
  ['no number at all', { upperCornersMm: Number.NaN }, /draft\.not-a-length upperCorners/],
  ['corners far outside the bout', { upperCornersMm: 180 }, /draft\.corners-too-wide upperCorners/],
])('%s is refused, or not, with the value named', (_what, change, expected) => {
  expect(refusal({ ...USUAL, ...change }).join('\n')).toMatch(expected);
});

test('widths that alone would bend the outline out of habit are refused, heights that ask for it are drawn with a caution', () => {
  const bent = { ...USUAL, lowerBoutMm: 184.6, upperBoutMm: 177.5, waistMm: 138.4 };
  expect(refusal(bent)).toEqual(['draft.strained waist']);
  const high = drafted({ ...USUAL, upperCornerStationMm: 243, upperBoutStationMm: 280 });
  expect(high.strain).toBeGreaterThan(5);
  expect(high.findings.map(({ weight, code }) => `${weight} ${code}`)).toContain('caution draft.strained');
});

test('the same sizes give the same bytes', () => {
  expect(JSON.stringify(drafted({ ...USUAL, waistMm: 108 }))).toBe(
    JSON.stringify(drafted({ ...USUAL, waistMm: 108 })),
  );
});
