import { expect, test } from 'vitest';
import {
  FAMILIES,
  sizesOf,
  THICKNESS_MAP_NAMES,
  THICKNESS_MAPS,
  THICKNESS_VALUES,
} from '../knowledge/index.ts';
import { measured, originText } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { draftDesign } from './draftDesign.ts';
import { withNamedThicknesses } from './namedThickness.ts';
import { readDesign } from './readDesign.ts';

const bodyLength = { value: 355, unit: 'mm', origin: measured('calliper') } as const;

function sample(thickness: Design['thickness'], values = {}) {
  const drafted = draftDesign({ family: 'violin', name: 'x', values: { bodyLength, ...values }, thickness });
  if (!drafted.ok) throw new Error('refused');
  return drafted.value;
}

test('every size with thicknesses of its own has a map by its name, each figure with its source', () => {
  const sizes = FAMILIES.flatMap((family) => sizesOf(family));
  expect(THICKNESS_MAP_NAMES).toEqual([
    ...['4/4', '7/8', '3/4', '1/2', '1/4'].map((name) => `violin ${name}`),
    ...['medium', 'small', 'large'].map((name) => `viola ${name}`),
    'cello 4/4',
  ]);
  for (const { name, values } of THICKNESS_MAPS) {
    const size = sizes.find((one) => `${one.family} ${one.name}` === name);
    for (const key of [...THICKNESS_VALUES.back, ...THICKNESS_VALUES.top])
      expect(values[key]).toEqual(size?.values[key]);
  }
  const published = THICKNESS_MAPS.filter(({ values }) =>
    Object.values(values).every(({ origin }) => origin.kind === 'published'),
  );
  expect(published).toHaveLength(8);
});

test('a named map fills the plate that names it, with its source, and leaves the other', () => {
  const { design, findings } = sample({ back: { map: 'violin 7/8' } });
  expect(THICKNESS_VALUES.back.map((name) => design.values[name]?.value)).toEqual([4.1, 2.3, 2.3, 2.1]);
  expect(design.values.thicknessTopMiddle?.value).toBe(3);
  const origin = design.values.thicknessBackMiddle?.origin;
  expect(origin && originText(origin)).toMatch(/Average violin measurements/);
  // 7/8 is made for 345 mm: within 3 % of this body.
  expect(findings).toEqual([]);
  expect(withNamedThicknesses(design)).toEqual({ design, findings: [] });
});

test('a value that was measured stands before the map’s, and is told; one that agrees is not', () => {
  const mm = (value: number) => ({ value, unit: 'mm', origin: measured('calliper') }) as const;
  const { design, findings } = sample(
    { back: { map: 'violin 4/4' } },
    { thicknessBackMiddle: mm(4.8), thicknessBackBouts: mm(2.5) },
  );
  expect(design.values.thicknessBackMiddle?.value).toBe(4.8);
  expect(findings.map(({ code, at }) => `${code} ${at}`)).toEqual([
    'thickness.own-value thicknessBackMiddle',
  ]);
  expect(findings[0]?.found).toMatch(/4\.8 mm of your own.*“violin 4\/4” has 4\.3 mm/);
});

test('a map of another body is used as it stands, and told', () => {
  const { design, findings } = sample({ top: { map: 'viola medium' } });
  expect(design.values.thicknessTopMiddle?.value).toBe(3.2);
  expect(findings.map(({ code, at }) => `${code} ${at}`)).toEqual(['thickness.other-body thickness.top.map']);
});

test.each([
  [{ back: { map: 'violin 5/4' } }, 'thickness.back.map', /one of "violin 4\/4".*"viola small"/],
  [{ back: { pattern: 'spiral' } }, 'thickness.back.pattern', /"concentric", "longitudinal"/],
  [{ top: { bar: { extra: 'some' } } }, 'thickness.top.bar.extra', /number/],
  [{ top: { post: { extra: 0.2, reach: 0 } } }, 'thickness.top.post.reach', /above 0 mm/],
  [{ back: { bar: { extra: 0.2 } } }, 'thickness.back.bar', /known name/],
  [{ top: { least: { centre: 2 } } }, 'thickness.top.least.centre', /known name/],
  [{ top: { least: { waist: -1 } } }, 'thickness.top.least.waist', /above 0 mm/],
])('%j is refused at its place', (thickness, at, need) => {
  const { design } = sample(undefined);
  const read = readDesign({ ...design, thickness });
  expect(read.ok ? [] : read.faults.map((fault) => fault.at)).toEqual([at]);
  expect(read.ok ? '' : read.faults[0]?.need).toMatch(need);
});
