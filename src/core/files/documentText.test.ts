import fc from 'fast-check';
import { expect, test } from 'vitest';
import { documentText } from './documentText.ts';

test('a document read back is what was written, to the last digit', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.double({ noNaN: true, noDefaultInfinity: true })), (value) => {
      const plain = Object.fromEntries(Object.entries(value).map(([key, number]) => [key, number + 0]));
      expect(JSON.parse(documentText(plain))).toEqual(JSON.parse(JSON.stringify(plain)));
    }),
  );
});

test('what is no number is never written', () => {
  expect(() => documentText({ x: Number.NaN })).toThrow(/x/);
});
