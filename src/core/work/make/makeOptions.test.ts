import { expect, test } from 'vitest';
import { parseMakeOptions } from './makeOptions.ts';

const USUAL = { paper: 'A4', dxf: 'R2000' } as const;

test('families of pieces are chosen in any order, and stand in the order in which they are made', () => {
  const chosen = parseMakeOptions({ ...USUAL, parts: 'arching, FORM,soundholes' });
  expect(chosen.ok && chosen.value.parts).toEqual(['form', 'arching', 'soundHoles']);
  const all = parseMakeOptions(USUAL);
  expect(all.ok && all.value.parts).toBe(undefined);
});

test.each([
  ['form,foo', '"foo"'],
  ['sheet', '"sheet"'],
  ['', '""'],
])('%s is no choice of pieces', (parts, found) => {
  const read = parseMakeOptions({ ...USUAL, parts });
  expect(read.ok ? [] : read.faults).toMatchObject([{ code: 'make.parts', at: '--parts', found }]);
});

test('pieces are not chosen where none is made', () => {
  const solids = parseMakeOptions({ ...USUAL, only: 'solid', parts: 'form' });
  expect(solids.ok ? [] : solids.faults).toMatchObject([{ code: 'make.parts', at: '--parts' }]);
  expect(parseMakeOptions({ ...USUAL, only: 'solid,print', parts: 'form' }).ok).toBe(true);
});

test('a language that drawings do not speak is refused in words', () => {
  const german = parseMakeOptions({ ...USUAL, language: 'de' });
  expect(german.ok && german.value.language).toBe('de');
  const other = parseMakeOptions({ ...USUAL, language: 'fr' });
  expect(other.ok ? [] : other.faults).toMatchObject([
    { code: 'make.language', at: '--language', found: '"fr"' },
  ]);
});
