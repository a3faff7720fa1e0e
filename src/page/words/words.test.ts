import { expect, test } from 'vitest';
import { namesDe } from './namesDe.ts';
import { namesEn } from './namesEn.ts';

test('every number that has a name in one language has one in the other', () => {
  expect(Object.keys(namesDe).sort()).toEqual(Object.keys(namesEn).sort());
});
