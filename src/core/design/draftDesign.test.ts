import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FAMILIES, type Family, lengthOf, sizesOf } from '../knowledge/index.ts';
import { makeRegister, measured, type Quantity } from '../quantity/index.ts';
import { designEntries } from './designEntries.ts';
import { draftDesign } from './draftDesign.ts';
import { NEEDED_VALUES, VALUE_NAMES, type ValueName } from './values.ts';

const mm = (value: number, plusMinus?: number): Quantity => ({
  value,
  unit: 'mm',
  origin: measured('calliper'),
  ...(plusMinus === undefined ? {} : { plusMinus }),
});

const table = (family: Family, values: Partial<Record<ValueName, number>>) => ({
  family,
  name: 'x',
  values: Object.fromEntries(Object.entries(values).map(([name, value]) => [name, mm(value)])),
});

function draft(family: Family, values: Partial<Record<ValueName, number>>) {
  const result = draftDesign(table(family, values));
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

test('every size holds exactly the values that a design needs', () => {
  for (const family of FAMILIES)
    for (const size of sizesOf(family))
      expect(Object.keys(size.values).toSorted(), `${family} ${size.name}`).toEqual(NEEDED_VALUES.toSorted());
});

test('the length of a size alone gives that size, value by value, with its own origins', () => {
  for (const family of FAMILIES)
    for (const size of sizesOf(family)) {
      const { design } = draft(family, { bodyLength: lengthOf(size) });
      const { bodyLength: _given, ...filled } = design.values;
      const { bodyLength: _own, ...own } = size.values;
      expect(filled).toEqual(own);
    }
});

test('given values stand as given, and every other one says where it comes from', () => {
  const { design } = draft('violin', { bodyLength: 353, waist: 110, liningWidth: 7 });
  expect(design.values.waist).toEqual(mm(110));
  expect(design.values.liningWidth).toEqual(mm(7));
  expect(design.values.lowerBout?.value).toBeCloseTo((206 * 110) / 112, 9);
  expect(design.values.lowerBout?.origin).toMatchObject({ kind: 'derived', from: ['waist'] });
  expect(design.values.archHeightBack?.origin).toMatchObject({ kind: 'published' });
  expect(design.values.stop?.origin).toMatchObject({ kind: 'derived', from: ['bodyLength'] });
  expect(design.values.upperBoutStation).toBeUndefined();
});

test('a neck stop keeps two thirds of a given stop, seven tenths on a cello', () => {
  expect(draft('violin', { bodyLength: 355, stop: 192 }).design.values.neckStop?.value).toBeCloseTo(128, 9);
  expect(draft('cello', { bodyLength: 755, stop: 390 }).design.values.neckStop?.value).toBeCloseTo(273, 9);
});

test('a given neighbour carries its partner with it', () => {
  const { design } = draft('cello', { bodyLength: 755, ribHeightTail: 120 });
  expect(design.values.ribHeightNeck?.value).toBeCloseTo((113 * 120) / 118, 9);
});

test('whatever is given, all needed values are there, given ones kept, and the register holds together', () => {
  const given = fc.dictionary(
    fc.constantFrom(...VALUE_NAMES),
    fc.double({ min: 0.8, max: 1.2, noNaN: true }),
  );
  const size = fc.constantFrom(...FAMILIES.flatMap((family) => sizesOf(family)));
  fc.assert(
    fc.property(size, given, ({ family, values: own }, factors) => {
      const values = Object.fromEntries(
        Object.entries({ bodyLength: 1, ...factors }).map(([name, factor]) => [
          name,
          (own[name]?.value ?? 100) * factor,
        ]),
      );
      values.bodyLength = own.bodyLength?.value ?? 0;
      const { design } = draft(family, values);
      for (const name of NEEDED_VALUES) expect(design.values[name], name).toBeDefined();
      for (const [name, value] of Object.entries(values))
        expect(design.values[name as ValueName]?.value).toBe(value);
      expect(makeRegister(designEntries(design)).ok).toBe(true);
    }),
  );
});

test('halving every length of a table halves every drafted width', () => {
  const whole = draft('cello', { bodyLength: 760, upperBout: 350 }).design;
  const most = draft('cello', { bodyLength: 760, upperBout: 350 * 0.97 }).design;
  expect(most.values.waist?.value).toBeCloseTo((whole.values.waist?.value ?? 0) * 0.97, 9);
});

const absurd: readonly (readonly [Family, number, RegExp])[] = [
  ['violin', 3000, /longer than any violin.*tenths/],
  ['violin', 35.5, /shorter than any violin.*centimetres/],
  ['violin', 14, /inches/],
  ['violin', 0.355, /metres/],
  ['violin', 406, /family viola/],
  ['cello', 355, /family violin/],
  ['viola', 10320, /25.4/],
  ['violin', Number.NaN, /not a number/],
];

test.each(absurd)(
  'a %s body of %d mm is refused, with the slip that explains it',
  (family, bodyLength, words) => {
    const result = draftDesign(table(family, { bodyLength }));
    if (result.ok) throw new Error('accepted');
    const [fault] = result.faults;
    expect(fault).toMatchObject({ code: 'size.body-length', at: 'bodyLength' });
    expect(`${fault?.found}; ${fault?.remedy}`).toMatch(words);
  },
);

test('a violin of 370 mm is drafted, with a question', () => {
  const { findings } = draft('violin', { bodyLength: 370 });
  expect(findings).toEqual([
    expect.objectContaining({ code: 'size.unusual-length', weight: 'caution', at: 'bodyLength' }),
  ]);
});

test('a width in centimetres among millimetres is named as that', () => {
  const result = draftDesign(table('violin', { bodyLength: 355, waist: 11.2, lowerBout: 20.6 }));
  expect(result.ok ? [] : result.faults).toEqual([
    expect.objectContaining({ at: 'waist', remedy: expect.stringContaining('centimetres') }),
    expect.objectContaining({ at: 'lowerBout', remedy: expect.stringContaining('centimetres') }),
  ]);
});

test('without a body length nothing is drafted', () => {
  const result = draftDesign(table('violin', { waist: 112 }));
  expect(result).toMatchObject({ ok: false, faults: [{ code: 'draft.no-length' }] });
});

test('a traced outline brings its values, and says where the table disagrees', () => {
  const chain = { closed: false, vertices: [] };
  const outline = {
    kind: 'traced' as const,
    half: { lowerBout: chain, cBout: chain, upperBout: chain },
    fitRmsMm: 0.1,
    fitMaxMm: 0.3,
    plusMinusMm: 0.2,
  };
  const values = { bodyLength: mm(354, 0.3), waist: mm(109, 0.3), lowerBout: mm(205.8, 0.3) };
  const result = draftDesign(table('violin', { bodyLength: 354.4, waist: 112 }), { outline, values });
  if (!result.ok) throw new Error('refused');
  expect(result.value.design.outline).toBe(outline);
  expect(result.value.design.values.waist?.value).toBe(109);
  expect(result.value.findings).toEqual([expect.objectContaining({ code: 'draft.disagrees', at: 'waist' })]);
});
