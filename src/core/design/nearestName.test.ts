import { expect, test } from 'vitest';
import { nearestName } from './nearestName.ts';

test('two letters that changed places are one slip', () => {
  expect(nearestName('wasit', ['waist', 'stop'])).toBe('waist');
});

test('a word that is like none of the names has no suggestion', () => {
  expect(nearestName('varnish', ['waist', 'stop', 'bodyLength'])).toBeUndefined();
});
