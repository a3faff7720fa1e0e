import { expect, test } from 'vitest';
import { dependsOn, makeRegister } from '../quantity/index.ts';
import { FAMILIES } from './family.ts';
import { familyRanges, rangeFor } from './ranges.ts';
import { SETUP_RANGES } from './setupRanges.ts';
import { lengthOf, valueAtLength } from './size.ts';
import { nearestSize, ordinarySize, sizeNamed, sizesOf } from './sizes.ts';
import { citation, SOURCES, type SourceName } from './sources.ts';

const sizes = FAMILIES.flatMap((family) => sizesOf(family));
const citations = new Set((Object.keys(SOURCES) as SourceName[]).map(citation));

/** Whether a figure's source is the one cited, with or without what it is printed for there. */
const isOf = (source: string, cited: string): boolean =>
  source === cited || source.startsWith(`${cited}, printed for `);

test.each(sizes.map((size) => [`${size.family} ${size.name}`, size] as const))(
  'every published value of %s cites a source of the list, and every derived one stands on the size itself',
  (_name, size) => {
    const quantities = Object.values(size.values);
    expect(quantities.length).toBeGreaterThan(45);
    for (const { value, origin } of quantities) {
      expect(Number.isFinite(value)).toBe(true);
      if (origin.kind === 'published')
        expect(
          [...citations].some((citation) => isOf(origin.source, citation)),
          origin.source,
        ).toBe(true);
    }
    const entries = Object.entries(size.values).map(([name, quantity]) => ({ name, ...quantity }));
    expect(makeRegister(entries).ok).toBe(true);
    expect(size.values.bodyLength && dependsOn(size.values.bodyLength)).toEqual([]);
  },
);

test('every source of the list is used by a size or a range', () => {
  const used = new Set<string>();
  for (const { values } of sizes)
    for (const { origin } of Object.values(values)) if (origin.kind === 'published') used.add(origin.source);
  for (const family of FAMILIES)
    for (const { origin } of Object.values({ ...familyRanges(family), ...SETUP_RANGES[family] }))
      if (origin.kind === 'published') used.add(origin.source);
  const unused = [...citations].filter((cited) => ![...used].some((source) => isOf(source, cited)));
  expect(unused).toEqual([]);
});

test('the ordinary size of each family lies inside the usual ranges', () => {
  for (const family of FAMILIES) {
    const size = ordinarySize(family);
    for (const [name, { low, high }] of Object.entries(familyRanges(family))) {
      // The top has a fullness of its own only where a maker gives it one.
      const shared = name.replace('fullnessTop', 'fullness');
      const value = (size.values[name] ?? size.values[shared])?.value ?? Number.NaN;
      expect(value, `${family} ${name}`).toBeGreaterThanOrEqual(low);
      expect(value, `${family} ${name}`).toBeLessThanOrEqual(high);
    }
  }
});

test('a range reaches down to the smaller body, and is left alone by a ratio', () => {
  expect(rangeFor('violin', 'stop', 355)).toMatchObject({ low: 190, high: 200 });
  expect(rangeFor('violin', 'stop', 320)).toMatchObject({ low: 171, high: 200 });
  expect(rangeFor('violin', 'fullnessWaist', 320)).toEqual(rangeFor('violin', 'fullnessWaist', 355));
});

test('the small violins that no table prints are marked as from memory', () => {
  for (const name of ['1/8', '1/10', '1/16'])
    expect(sizeNamed('violin', name)?.values.bodyLength?.origin.kind).toBe('from-memory');
});

test('the nearest size is found by ratio, and its own length gives its own values', () => {
  expect(nearestSize('violin', 352).name).toBe('4/4');
  expect(nearestSize('violin', 325).name).toBe('1/2');
  expect(nearestSize('viola', 391).name).toBe('small');
  for (const size of sizes) {
    expect(nearestSize(size.family, lengthOf(size))).toBe(size);
    expect(valueAtLength(size, 'stop', lengthOf(size))).toBe(size.values.stop);
  }
});

test('a body near a size keeps its heights and thicknesses with their source, and one further off does not', () => {
  const size = ordinarySize('violin');
  expect(valueAtLength(size, 'ribHeightNeck', 352)).toBe(size.values.ribHeightNeck);
  expect(valueAtLength(size, 'upperBout', 352)?.value).toBeCloseTo((168 * 352) / 355, 1);
  expect(valueAtLength(size, 'ribHeightNeck', 710)?.value).toBe(60);
  expect(valueAtLength(size, 'ribHeightNeck', 710)?.origin).toMatchObject({
    how: expect.stringContaining('scaled from the violin 4/4, there published'),
  });
});

test('lengths follow the body and pure ratios and sheet stuff stay', () => {
  const size = ordinarySize('violin');
  expect(valueAtLength(size, 'upperBout', 710)?.value).toBe(336);
  expect(valueAtLength(size, 'fullnessLowerCorner', 710)?.value).toBe(-0.06);
  expect(valueAtLength(size, 'formThickness', 710)?.value).toBe(12.7);
});
