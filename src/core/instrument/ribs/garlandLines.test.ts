import { expect, test } from 'vitest';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { type Chain, headingOn, lengthOf, nearestOn, pointAlong, segments } from '../../curve/index.ts';
import type { ValueName } from '../../design/index.ts';
import { bodyOutline } from '../outline/bodyOutline.ts';
import { planValues } from '../planValues.ts';
import { garlandLines } from './garlandLines.ts';
import { ribLines } from './ribLines.ts';

function linesOf(
  family: (typeof FAMILIES)[number],
  change: Partial<Record<ValueName, number>> = {},
  corners: 'drawn-together' | 'parallel' = 'drawn-together',
) {
  const outline = bodyOutline(sampleHalf(family));
  const values = planValues(sampleDesign(family, change));
  if (!outline.ok || !values.ok) throw new Error('refused');
  const lines = garlandLines(outline.value, values.value, corners);
  const ribs = ribLines(outline.value, values.value, { corners });
  if (!lines.ok || !ribs.ok) throw new Error('refused');
  return { ...lines.value, values: values.value, half: outline.value.half, ribs: ribs.value };
}

test.each(FAMILIES)('the ribs of a usual %s meet on the tip of the block: none of it shows', (family) => {
  const { inner, outer, ribs, values } = linesOf(family);
  for (const which of ['lower', 'upper'] as const) {
    expect(inner[`${which}Corner`].kind).toBe('pointed');
    expect(ribs.joints[which].blockShowsMm).toBe(0);
    expect(lengthOf(ribs.joints[which].seam as Chain<'body'>)).toBeGreaterThan(0.4 * values.ribThickness);
    expect(outer[`${which}Corner`].widthMm).toBeCloseTo(1.85 * values.ribThickness, 9);
    expect(outer[`${which}Corner`].depthMm).toBe(values.cornerOverhang);
  }
  expect(ribs.findings.map(({ code }) => code)).toEqual([]);
});

test.each(FAMILIES)(
  'the plate of a %s stands out evenly on both sides of a corner, ever more toward its end',
  (family) => {
    const { outer, half, values, besideCornerMm } = linesOf(family);
    const beside = (section: keyof typeof half, end: 'start' | 'end') => {
      const line = outer.sections[section];
      const whole = lengthOf(line);
      return Array.from({ length: 40 }, (_, index) => {
        const along = (index * values.stop) / 400;
        const at = pointAlong(line, end === 'start' ? along : whole - along);
        return nearestOn(half[section], at).distanceMm;
      });
    };
    for (const [one, other, which] of [
      [beside('lowerBout', 'end'), beside('cBout', 'start'), 'lower'],
      [beside('cBout', 'end'), beside('upperBout', 'start'), 'upper'],
    ] as const) {
      for (const row of [one, other]) {
        row.forEach((mm, index) => expect(mm).toBeLessThan((row[index - 1] ?? mm) + 1e-6));
        expect(row.at(-1)).toBeCloseTo(values.overhang, 6);
      }
      expect(Math.abs((one[0] ?? 0) - (other[0] ?? 0))).toBeLessThan(0.12 * values.overhang);
      expect(besideCornerMm[which]).toBeLessThan(1.5 * values.overhang);
    }
  },
);

test('the outer faces stay smooth, the inner ones one rib thickness inside them', () => {
  const { outer, inner, values } = linesOf('violin');
  for (const name of ['lowerBout', 'cBout', 'upperBout'] as const) {
    const all = segments(outer.sections[name]);
    all.slice(1).forEach((next, index) => {
      const before = all[index];
      if (before) expect(Math.sin(headingOn(next, 0) - headingOn(before, 1))).toBeCloseTo(0, 9);
    });
    const line = inner.sections[name];
    for (let along = 1; along < lengthOf(line) - 1; along += 3.3)
      expect(nearestOn(outer.sections[name], pointAlong(line, along)).distanceMm).toBeCloseTo(
        values.ribThickness,
        6,
      );
  }
});

test('ribs whose parallels meet are left as they are', () => {
  const wide = { overhang: 3.2 };
  expect(linesOf('violin', wide).outer).toEqual(linesOf('violin', wide, 'parallel').outer);
});

test('an overhang that has to grow much beside the corners is told', () => {
  const { ribs, besideCornerMm } = linesOf('violin', { overhang: 1.2 });
  expect(besideCornerMm.lower).toBeGreaterThan(2.1);
  expect(ribs.findings.map(({ code }) => code)).toContain('ribs.drawn-together');
});
