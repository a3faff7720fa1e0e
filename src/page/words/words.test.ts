import { expect, test } from 'vitest';
import { shortNames } from '../../core/index.ts';
import { namesEn } from './namesEn.ts';

test('every number that has a name in one language has one in the other', () => {
  expect(Object.keys(shortNames).sort()).toEqual(Object.keys(namesEn).sort());
});
