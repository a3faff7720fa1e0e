import { expect, test } from 'vitest';
import { shortNames } from '../../core/index.ts';
import { namesEn } from './namesEn.ts';
import { trueSign } from './trueSign.ts';

test('every number that has a name in one language has one in the other', () => {
  expect(Object.keys(shortNames).sort()).toEqual(Object.keys(namesEn).sort());
});

test('a number that rounds to nothing has no sign, and a minus is one', () => {
  expect(['-0.0', '-0,1', '-0,00', '12.3', '-1.50'].map(trueSign)).toEqual([
    '0.0',
    '−0,1',
    '0,00',
    '12.3',
    '−1.50',
  ]);
});
