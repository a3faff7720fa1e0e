import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonTrouble } from './jsonTrouble.ts';

test.each([
  ['{"a": 35,5}', 1, 10, /‘5’ where a name/],
  ['{\n  "a": 1\n  "b": 2\n}', 3, 3, /‘"’ where a comma or }/],
  ['{\n  "a": “b”}', 2, 8, /‘“’ where a value/],
  ["{'a': 1}", 1, 2, /‘'’ where a name/],
  ['{"a" 1}', 1, 6, /where a colon/],
  ['[1, 2', 1, 6, /the file ends where a comma or ]/],
  ['{"a": 1}}', 1, 9, /where the file should end/],
  ['{"a": "with a\nbreak"}', 1, 7, /where a value/],
  ['', 1, 1, /the file ends where a value/],
])('%j is wrong at line %i, column %i', (text, line, column, found) => {
  expect(jsonTrouble(text)).toEqual({ line, column, found: expect.stringMatching(found) });
});

test('it finds trouble exactly where the language itself does, in documents that lost or changed a sign', () => {
  const spoilt = fc
    .tuple(
      fc.json({ maxDepth: 4 }),
      fc.nat(),
      fc.constantFrom('', ',', '}', ']', '"', ':', '0', '.', '-', 'e', ' ', '\\', '{', '“'),
    )
    .map(([text, place, sign]) => {
      const at = place % (text.length + 1);
      return text.slice(0, at) + sign + text.slice(at + (place % 2));
    });
  fc.assert(
    fc.property(spoilt, (text) => {
      let isJson = true;
      try {
        JSON.parse(text);
      } catch {
        isJson = false;
      }
      expect(jsonTrouble(text) === null).toBe(isJson);
    }),
    { numRuns: 2000 },
  );
});
