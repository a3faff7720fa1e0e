import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Design } from './design.ts';
import { draftDesign } from './draftDesign.ts';
import { halfOf } from './halfOf.ts';
import { readDesign } from './readDesign.ts';

function drafted(): Design {
  const result = draftDesign({
    family: 'violin',
    name: 'Test',
    values: { bodyLength: { value: 353, unit: 'mm', origin: { kind: 'measured', from: 'calliper' } } },
  });
  if (!result.ok) throw new Error('refused');
  return result.value.design;
}

const saved = (): ReturnType<typeof JSON.parse> => JSON.parse(JSON.stringify(drafted()));

test('a saved design is read back as it was', () => {
  expect(readDesign(saved())).toEqual({ ok: true, value: { design: drafted(), findings: [] } });
});

test('entries that this version does not know survive being read and saved again', () => {
  const json = saved();
  json.notes = { colour: ['amber'] };
  json.values.waist.seenBy = 'two people';
  json.values.scrollLength = { value: 108, unit: 'mm', origin: { kind: 'chosen', why: 'later' } };
  json.outline.hand = 1;
  const read = readDesign(json);
  expect(read.ok && JSON.parse(JSON.stringify(read.value.design))).toEqual(json);
  expect(read.ok && read.value.findings).toEqual([
    expect.objectContaining({ code: 'design.not-read', at: 'scrollLength', weight: 'remark' }),
  ]);
});

test('a design of a newer version is refused in words before anything else', () => {
  const read = readDesign({ ...saved(), version: 2, values: 'all new' });
  expect(read.ok ? [] : read.faults).toEqual([
    expect.objectContaining({ code: 'file.newer', found: 'version 2, made by a newer Garland' }),
  ]);
});

test('every fault names its path', () => {
  const json = saved();
  json.values.waist.value = 'wide';
  json.values.stop.unit = 'in';
  json.values.overhang.origin = { kind: 'guessed' };
  json.values.lowerBout.plusMinus = -1;
  delete json.name;
  const read = readDesign(json);
  expect(read.ok ? [] : read.faults.map(({ at }) => at).toSorted()).toEqual([
    'name',
    'values.lowerBout.plusMinus',
    'values.overhang.origin.kind',
    'values.stop.unit',
    'values.waist.value',
  ]);
});

test('a traced half that leaves its side of the centre line is refused', () => {
  const half = halfOf(drafted());
  if (!half.ok) throw new Error('refused');
  const outline = { kind: 'traced', half: half.value.half, fitRmsMm: 0.1, fitMaxMm: 0.3, plusMinusMm: 0.2 };
  const json = JSON.parse(JSON.stringify({ ...saved(), outline }));
  expect(readDesign(json).ok).toBe(true);
  json.outline.half.upperBout.vertices.at(-1).x = 2;
  expect(readDesign(json)).toMatchObject({
    ok: false,
    faults: [{ code: 'design.outline', at: 'outline.half' }],
  });
});

test('a value that an older document lacks is filled and told', () => {
  const json = saved();
  delete json.values.pinDiameter;
  const read = readDesign(json);
  if (!read.ok) throw new Error('refused');
  expect(read.value.design.values.pinDiameter).toEqual(drafted().values.pinDiameter);
  expect(read.value.findings).toEqual([
    expect.objectContaining({ code: 'design.filled', at: 'pinDiameter' }),
  ]);
});

test('whatever the document is, reading it gives an answer and no exception', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.constantFrom('values', 'outline', 'family', 'name'), (value, key) => {
      for (const json of [value, { ...saved(), [key]: value }]) {
        const read = readDesign(json);
        expect(read.ok || read.faults.every(({ at, found, need }) => at && found && need)).toBe(true);
      }
    }),
  );
});

test('a design from before many values were known is filled, and told once', () => {
  const whole = JSON.parse(JSON.stringify(drafted()));
  for (const name of [
    'overhang',
    'pinDiameter',
    'postDiameter',
    'barLength',
    'barHeight',
    'stingLength',
    'edgeLand',
  ])
    delete whole.values[name];
  const read = readDesign(whole);
  if (!read.ok) throw new Error(read.faults[0]?.found);
  expect(read.value.findings).toEqual([
    expect.objectContaining({
      code: 'design.filled',
      at: 'values',
      found: expect.stringContaining('and 4 more'),
    }),
  ]);
  expect(read.value.design.values.overhang?.value).toBeGreaterThan(0);
});
