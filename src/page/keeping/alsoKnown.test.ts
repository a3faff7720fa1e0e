import { expect, test } from 'vitest';
import { knownWords, typedKnown } from './alsoKnown.ts';

test.each([
  ['upperBout=168±0.3 edge', { name: 'upperBout', length: '168±0.3', taken: 'edge' }],
  ['waist=4 3/8 in purfling', { name: 'waist', length: '4 3/8 in', taken: 'purfling' }],
  ['waist= purfling', { name: 'waist', length: '', taken: 'purfling' }],
  ['bodyLength=357 over-arch', { name: 'bodyLength', length: '357', taken: 'over-arch' }],
  ['stop=195', { name: 'stop', length: '195', taken: '' }],
  ['waist=at the edge of it', { name: 'waist', length: 'at the edge of it', taken: '' }],
])('%s is read as it was typed, and written so again', (words, known) => {
  expect(typedKnown(words)).toEqual(known);
  expect(knownWords(known)).toBe(words);
});
