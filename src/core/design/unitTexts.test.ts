import { expect, test } from 'vitest';
import { readMeasurements } from './measurements.ts';
import { readUnitText } from './unitTexts.ts';

test.each([
  ['80', 'N', 80],
  ['80 N', 'N', 80],
  ['8,2 kg', 'N', 8.2 * 9.80665],
  ['18 lb', 'N', 18 * 4.4482216152605],
  ['442 Hz', 'Hz', 442],
  ['0.43g/m', 'g/m', 0.43],
  ['6.2°', 'deg', 6.2],
  ['-0.08', 'ratio', -0.08],
] as const)('%s is a number of %s', (text, unit, value) => {
  expect(readUnitText(text, unit)).toBeCloseTo(value, 9);
});

test.each([
  ['80 mm', 'N'],
  ['8 stone', 'N'],
  ['17 mm', 'ratio'],
  ['A', 'Hz'],
  ['8 constructor', 'N'],
] as const)('%s is none of %s', (text, unit) => {
  expect(readUnitText(text, unit)).toBeUndefined();
});

test('pulls, tunings and masses in a table are read with their unit, and refused in words', () => {
  const table = (values: object) =>
    readMeasurements({ family: 'violin', values: { bodyLength: 355, ...values } });
  const read = table({
    string1Pull: '8.2 kg',
    tuningA: '415 Hz',
    string2Mass: { value: '0.68 g/m' },
    barSpring: 0,
  });
  expect(read.ok && read.value.measurements.values).toMatchObject({
    string1Pull: { value: expect.closeTo(80.41, 2), unit: 'N' },
    tuningA: { value: 415, unit: 'Hz' },
    string2Mass: { value: 0.68, unit: 'g/m' },
    barSpring: { value: 0, unit: 'mm' },
  });
  const wrong = table({ string1Pull: '80 mm', string3Pull: -3, barSpring: -1 });
  expect(wrong.ok ? [] : wrong.faults).toMatchObject([
    { code: 'measurements.not-positive', at: 'barSpring', found: '-1 mm' },
    { code: 'measurements.not-a-number', at: 'string1Pull', need: 'a pull in newtons, kilograms or pounds' },
    { code: 'measurements.not-positive', at: 'string3Pull', found: '-3 N' },
  ]);
});
