import fc from 'fast-check';
import { expect, test } from 'vitest';
import { documentText } from './documentText.ts';

test('a document read back is what was written', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(documentText(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test('a list of numbers stands on one line', () => {
  expect(documentText({ at: [1, 2.5], none: undefined })).toBe('{\n  "at": [1, 2.5]\n}\n');
});

test('what is no number is never written', () => {
  expect(() => documentText({ x: Number.NaN })).toThrow(/NaN/);
});
