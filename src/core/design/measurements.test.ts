import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draftDesign } from './draftDesign.ts';
import { readMeasurements } from './measurements.ts';
import { nearestName } from './nearestName.ts';

const violin = (values: object, more: object = {}) => ({ family: 'violin', values, ...more });
const edges = { bodyLength: 'straight', widths: 'edge' };

function read(json: unknown) {
  const result = readMeasurements(json);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

function faultsOf(json: unknown) {
  const result = readMeasurements(json);
  return result.ok ? [] : result.faults;
}

test('numbers are millimetres, texts carry their unit, and ± and source come along', () => {
  const { measurements } = read(
    violin(
      {
        bodyLength: '14 1/8 in',
        waist: '11,2 cm',
        lowerBout: 206,
        stop: { value: 195, plusMinus: '0.5 mm' },
        fullnessWaist: '-0,08',
      },
      { name: 'Old table', taken: edges, sources: { stop: 'ruler on the top' } },
    ),
  );
  expect(measurements.name).toBe('Old table');
  expect(measurements.values.bodyLength?.value).toBeCloseTo(358.775, 9);
  expect(measurements.values.waist).toEqual({
    value: 112,
    unit: 'mm',
    origin: { kind: 'measured', from: 'the table of measurements' },
  });
  expect(measurements.values.stop).toEqual({
    value: 195,
    unit: 'mm',
    plusMinus: 0.5,
    origin: { kind: 'measured', from: 'ruler on the top' },
  });
  expect(measurements.values.fullnessWaist?.value).toBe(-0.08);
});

test('a length over the arch is brought to the chord: the arch over the chord reads as given again', () => {
  const { measurements } = read(
    violin(
      { bodyLength: 356, archHeightBack: 14.5, edgeHeightBack: 3.8 },
      { taken: { bodyLength: 'over-arch' } },
    ),
  );
  const chord = measurements.values.bodyLength?.value ?? 0;
  expect(chord).toBeCloseTo(355.14, 2);
  expect(chord + (8 * 10.7 ** 2) / (3 * chord)).toBeCloseTo(356, 9);
  expect(measurements.values.bodyLength?.origin).toMatchObject({
    from: expect.stringContaining('over the arch'),
  });
});

test('widths over the purfling gain twice the border, given or the habit of the family', () => {
  const taken = { bodyLength: 'straight', widths: 'purfling' };
  const own = read(violin({ bodyLength: 355, lowerBout: 198, purflingToEdge: 4 }, { taken }));
  expect(own.measurements.values.lowerBout?.value).toBe(206);
  const habit = read(violin({ bodyLength: 355, lowerBout: 198.5, waist: 104.5 }, { taken }));
  expect(habit.measurements.values.lowerBout?.value).toBe(206);
  expect(habit.measurements.values.waist?.value).toBe(112);
});

test('what was not said about the measuring is said to have been taken as straight and edge to edge', () => {
  const codes = (json: unknown) => read(json).findings.map((finding) => finding.code);
  expect(codes(violin({ bodyLength: 355, waist: 112 }))).toEqual([
    'taken.length-not-said',
    'taken.widths-not-said',
  ]);
  expect(codes(violin({ bodyLength: 355, waist: 112 }, { taken: edges }))).toEqual([]);
});

test('an unknown name is refused with the name that was probably meant', () => {
  const [fault] = faultsOf(violin({ bodyLength: 355, uperBout: 168 }));
  expect(fault).toMatchObject({
    code: 'measurements.unknown-name',
    at: 'values.uperBout',
    need: 'a known name, such as “upperBout”',
  });
  expect(faultsOf(violin({ bodyLength: 355, colour: 3 }))[0]?.need).toBe('one of the known names');
});

test('several faults of one table are all named', () => {
  const faults = faultsOf(violin({ bodyLength: '1,234', waist: -3, stop: '14 1/8', archHeightTop: 0 }));
  expect(faults.map(({ code, at }) => `${at} ${code}`)).toEqual([
    'bodyLength length.thousands',
    'waist measurements.not-positive',
    'stop length.fraction-unit',
    'archHeightTop measurements.not-positive',
  ]);
});

const wrong: readonly (readonly [string, unknown, string, string])[] = [
  ['a list', [], 'file.kind', 'document'],
  ['another format', violin({ bodyLength: 355 }, { format: 'garland-trace' }), 'file.kind', 'format'],
  ['a newer version', violin({ bodyLength: 355 }, { version: 2 }), 'file.newer', 'version'],
  ['no family', { values: { bodyLength: 355 } }, 'measurements.missing', 'family'],
  ['an unknown family', { family: 'guitar', values: { bodyLength: 355 } }, 'measurements.wrong', 'family'],
  ['no body length', violin({ waist: 112 }), 'measurements.missing', 'values.bodyLength'],
  ['a value that is a list', violin({ bodyLength: [355] }), 'measurements.wrong', 'values.bodyLength'],
  [
    'a ratio with a unit',
    violin({ bodyLength: 355, fullnessWaist: '1 mm' }),
    'measurements.not-a-ratio',
    'fullnessWaist',
  ],
];

test.each(wrong)('%s is refused at its place', (_what, json, code, at) => {
  expect(faultsOf(json)).toContainEqual(expect.objectContaining({ code, at }));
});

test('a later format is told to be from a newer Garland, and nothing else is said of it', () => {
  expect(faultsOf({ version: 7, family: 3 })).toEqual([
    expect.objectContaining({ found: 'version 7, made by a newer Garland' }),
  ]);
});

test('an entry beside the known ones is named as not read', () => {
  const { findings } = read(violin({ bodyLength: 355 }, { taken: edges, vaules: {} }));
  expect(findings).toEqual([expect.objectContaining({ code: 'measurements.not-read', at: 'vaules' })]);
});

test('whatever the document is, reading it gives an answer and no exception', () => {
  const leaf = fc.oneof(fc.string(), fc.double(), fc.constant(null), fc.constant({ value: 'x' }));
  const values = fc.dictionary(
    fc.constantFrom('bodyLength', 'waist', 'stop', 'fullnessWaist', 'toString'),
    leaf,
  );
  fc.assert(
    fc.property(fc.oneof(fc.jsonValue(), fc.record({ family: fc.constant('violin'), values })), (json) => {
      const result = readMeasurements(json);
      if (!result.ok) return result.faults.length > 0;
      return Object.values(result.value.measurements.values).every(({ value }) => Number.isFinite(value));
    }),
    { numRuns: 500 },
  );
});

test('a name far from every known one suggests none', () => {
  expect(nearestName('bodylenght', ['bodyLength', 'waist'])).toBe('bodyLength');
  expect(nearestName('xyz', ['bodyLength', 'waist'])).toBeUndefined();
});

test('a left-handed instrument is told by true or false, and its design keeps it', () => {
  const table = { family: 'violin', values: { bodyLength: 355 }, leftHanded: true };
  const read = readMeasurements(table);
  expect(read.ok && read.value.measurements.leftHanded).toBe(true);
  const drafted = read.ok && draftDesign(read.value.measurements);
  expect(drafted && drafted.ok && drafted.value.design.leftHanded).toBe(true);
  const wrong = readMeasurements({ ...table, leftHanded: 'yes' });
  expect(wrong.ok ? [] : wrong.faults).toMatchObject([{ at: 'leftHanded', found: '"yes"' }]);
});
