import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseLength } from './parseLength.ts';
import { type LengthUnit, printLength } from './printLength.ts';

const read: readonly (readonly [string, number])[] = [
  ['355.5', 355.5],
  ['355,5', 355.5],
  [' 355 mm ', 355],
  ['355mm', 355],
  ['35.6 cm', 356],
  ['0,355 m', 355],
  ['14"', 355.6],
  ['14”', 355.6],
  ['14″', 355.6],
  ["14''", 355.6],
  ['14 in', 355.6],
  ['14 in.', 355.6],
  ['14 1/8 in', 358.775],
  ['14⅛"', 358.775],
  ['14 1⁄8 inches', 358.775],
  ['13 63/64 in', 355.203125],
  ['13-63/64 in', 355.203125],
  ['3/8"', 9.525],
  ['½ in', 12.7],
  ['355.125', 355.125],
  ['13.125 in', 333.375],
  ['0,125', 0.125],
  ['-2.5', -2.5],
  ['−2,5 mm', -2.5],
  ['1234,5', 1234.5],
  ['.5', 0.5],
];

test.each(read)('%s is read as %d mm', (text, mm) => {
  const reading = parseLength(text);
  expect(reading.ok && reading.value.mm).toBeCloseTo(mm, 9);
});

const refused: readonly (readonly [string, string])[] = [
  ['', 'length.empty'],
  ['1,234', 'length.thousands'],
  ['1.234', 'length.thousands'],
  ['2,500 mm', 'length.thousands'],
  ['1.234,5', 'length.two-separators'],
  ['1,234.5', 'length.two-separators'],
  ['1.2.3', 'length.two-separators'],
  ["14' 3", 'length.feet'],
  ['1\'2"', 'length.feet'],
  ['14 1/8', 'length.fraction-unit'],
  ['14 9/8 in', 'length.fraction'],
  ['3/0 in', 'length.fraction'],
  ['3.5 1/2 in', 'length.fraction'],
  ['1 234', 'length.unreadable'],
  ['3e2', 'length.unreadable'],
  ['355 mm 2', 'length.unreadable'],
  ['355 furlong', 'length.unit'],
  ['about 355', 'length.unreadable'],
  ['Infinity', 'length.unreadable'],
  ['NaN', 'length.unreadable'],
  ['fifteen', 'length.unreadable'],
];

test.each(refused)('“%s” is refused as %s, quoting what was typed', (text, code) => {
  const reading = parseLength(text, { at: 'bodyLength' });
  expect(reading).toMatchObject({ ok: false, faults: [{ code, at: 'bodyLength' }] });
});

test('a stated notation settles what decimals are, and refuses the other sign', () => {
  expect(parseLength('1,234', { notation: 'comma' })).toMatchObject({ ok: true, value: { mm: 1.234 } });
  expect(parseLength('1.234', { notation: 'point' })).toMatchObject({ ok: true, value: { mm: 1.234 } });
  expect(parseLength('1,23', { notation: 'point' })).toMatchObject({ faults: [{ code: 'length.notation' }] });
});

test('the echo repeats inches and gives the millimetres beside them', () => {
  expect(parseLength('14 1/8"')).toMatchObject({ value: { echo: '14 1/8 in = 358.775 mm' } });
  expect(parseLength('355,50')).toMatchObject({ value: { echo: '355.5 mm' } });
});

test('a printed length is read back to the same length and printed the same again, in every unit', () => {
  const units = fc.constantFrom<LengthUnit>('mm', 'cm', 'm', 'in');
  fc.assert(
    fc.property(fc.double({ min: -2000, max: 5000, noNaN: true }), units, (mm, unit) => {
      const text = printLength(mm, unit);
      const again = parseLength(text);
      if (!again.ok) throw new Error(`${text}: ${again.faults[0]?.code}`);
      expect(printLength(again.value.mm, unit)).toBe(text);
      expect(Math.abs(again.value.mm - mm)).toBeLessThanOrEqual(
        0.00005 * { mm: 1, cm: 10, m: 1000, in: 25.4 }[unit] + 1e-9,
      );
    }),
    { numRuns: 2000 },
  );
});

test('decimals of an inch that are a fraction exactly are printed as that fraction', () => {
  expect(printLength(1.58623, 'in')).toBe('1/16 in');
});

test('whatever is typed, it is read whole or refused: no digit is dropped', () => {
  const signs = fc.constantFrom(...'0123456789.,/ -"\'', 'mm', 'cm', 'in', '½', '”');
  fc.assert(
    fc.property(fc.array(signs, { maxLength: 8 }), (parts) => {
      const text = parts.join('');
      const reading = parseLength(text);
      if (!reading.ok) {
        expect(reading.faults[0]?.found).toContain(text.trim() === '' ? 'nothing' : text);
        return;
      }
      expect(Number.isFinite(reading.value.mm)).toBe(true);
      const plain = /^(-?)(\d+)[.,]?(\d*)(mm)?$/.exec(text);
      if (plain) expect(reading.value.mm).toBeCloseTo(Number(`${plain[1]}${plain[2]}.${plain[3] || 0}`), 9);
    }),
    { numRuns: 5000 },
  );
});

test('what was read, printed and read again is a fixed point', () => {
  const text = fc
    .tuple(fc.nat(900), fc.constantFrom('.', ','), fc.nat(99))
    .map(([a, b, c]) => `${a}${b}${c}`);
  fc.assert(
    fc.property(text, (typed) => {
      const first = parseLength(typed);
      if (!first.ok) throw new Error(typed);
      const second = parseLength(printLength(first.value.mm));
      expect(second).toEqual(first);
    }),
  );
});

test('a length in whole thousandths prints so that it cannot be taken for thousands', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400_000 }), (thousandths) => {
      const mm = thousandths / 1000;
      expect(parseLength(printLength(mm))).toMatchObject({ ok: true, value: { mm } });
    }),
    { numRuns: 500, examples: [[1234], [2999], [1001], [355_125]] },
  );
  expect(printLength(1.234)).toBe('1.2340 mm');
  expect(printLength(355.125)).toBe('355.125 mm');
});
