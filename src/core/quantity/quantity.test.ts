import { expect, test } from 'vitest';
import { chosen, commonPractice, derivedFrom, measured } from './origin.ts';
import { isSameQuantity, type Quantity } from './quantity.ts';

const length: Quantity = {
  value: 130,
  unit: 'mm',
  plusMinus: 0.5,
  origin: derivedFrom(['stop', 'bodyLength'], 'two thirds'),
};

test('quantities that say the same are the same, whichever is asked', () => {
  expect(isSameQuantity(length, structuredClone(length))).toBe(true);
});

test.each<readonly [string, Quantity]>([
  ['another number', { ...length, value: 130.5 }],
  ['another unit', { ...length, unit: 'deg' }],
  ['another ±', { ...length, plusMinus: 1 }],
  ['no ±', { value: 130, unit: 'mm', origin: length.origin }],
  ['another kind of origin', { ...length, origin: measured('calliper') }],
  ['another reason', { ...length, origin: derivedFrom(['stop', 'bodyLength'], 'half') }],
  ['no reason', { ...length, origin: derivedFrom(['stop', 'bodyLength']) }],
  ['other names that it comes from', { ...length, origin: derivedFrom(['stop', 'waist'], 'two thirds') }],
  ['fewer of them', { ...length, origin: derivedFrom(['stop'], 'two thirds') }],
])('%s makes another', (_, other) => {
  expect(isSameQuantity(length, other)).toBe(false);
  expect(isSameQuantity(other, length)).toBe(false);
});

test('an origin without a note is none with one', () => {
  const [bare, noted] = [chosen(), chosen('by us')].map((origin): Quantity => ({ ...length, origin }));
  expect(isSameQuantity(bare as Quantity, noted as Quantity)).toBe(false);
  expect(isSameQuantity({ ...length, origin: commonPractice() }, bare as Quantity)).toBe(false);
});
