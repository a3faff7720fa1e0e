import { expect, test } from 'vitest';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import type { Family, RibChoice, ValueName } from '../../design/index.ts';
import { bodyOutline } from '../outline/bodyOutline.ts';
import { planValues } from '../planValues.ts';
import { ribLines } from './ribLines.ts';

function ribsOf(family: Family, change: Partial<Record<ValueName, number>> = {}, choice: RibChoice = {}) {
  const outline = bodyOutline(sampleHalf(family));
  const values = planValues(sampleDesign(family, change));
  if (!outline.ok || !values.ok) throw new Error('refused');
  const ribs = ribLines(outline.value, values.value, choice);
  if (!ribs.ok) throw new Error(JSON.stringify(ribs.faults));
  return ribs.value;
}

/** Printed by a drafting prototype of the same outlines: half ribs lower, waist, upper, and both rib corner ends. */
test.each([
  ['violin', 213.6, 118.5, 173.7, 2.8, 2.9],
  ['viola', 244.9, 132.2, 199.5, 4.15, 4.0],
  ['cello', 463.6, 244.4, 365.2, 6.3, 6.25],
] as const)(
  'parallel ribs of a %s have the known lengths and corner ends',
  (family, lower, waist, upper, lowerEnd, upperEnd) => {
    const ribs = ribsOf(family, {}, { corners: 'parallel' });
    expect(Math.abs(ribs.lowerBout.lengthMm - lower)).toBeLessThan(0.1);
    expect(Math.abs(ribs.cBout.lengthMm - waist)).toBeLessThan(0.1);
    expect(Math.abs(ribs.upperBout.lengthMm - upper)).toBeLessThan(0.1);
    expect(Math.abs(ribs.outer.lowerCorner.widthMm - lowerEnd)).toBeLessThan(0.06);
    expect(Math.abs(ribs.outer.upperCorner.widthMm - upperEnd)).toBeLessThan(0.06);
  },
);

test('cut lengths add the allowance at both ends, also to a rib in one piece', () => {
  const { lowerBout, cBout } = ribsOf('violin');
  expect(lowerBout.cutMm).toBeCloseTo(lowerBout.developed.lengthMm + 20, 9);
  expect(lowerBout.cutAcrossMm).toBeCloseTo(2 * lowerBout.developed.lengthMm + 20, 9);
  expect(cBout.cutMm).toBeCloseTo(cBout.developed.lengthMm + 20, 9);
  expect(cBout.acrossMm).toBeUndefined();
});

test.each(FAMILIES)('the usual ribs of a %s bring no caution', (family) => {
  expect(ribsOf(family).findings.filter((finding) => finding.weight !== 'remark')).toEqual([]);
});

test('a rib corner too thin to glue is named', () => {
  const found = ribsOf('violin', { cornerOverhang: 0.5 }).findings.map((finding) => finding.code);
  expect(found).toContain('ribs.corner-feather');
});

test('a rib corner as wide as the plate corner is named', () => {
  const sizes = { cornerOverhang: 5, overhang: 1.5 };
  const found = ribsOf('violin', sizes, { corners: 'parallel' }).findings.map(({ code }) => code);
  expect(found).toContain('ribs.corner-stubby');
});

test('a thick rib round a tight bend is to be thinned', () => {
  const bends = ribsOf('violin', { ribThickness: 2.8 }).findings.filter(
    (finding) => finding.code === 'ribs.bend',
  );
  expect(bends.some((finding) => finding.weight === 'caution')).toBe(true);
});
