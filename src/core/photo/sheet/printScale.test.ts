import { expect, test } from 'vitest';
import { printOf } from './printScale.ts';

test('two bars that differ by no more than two readings may are one length, their mean', () => {
  const print = printOf({ xMm: 149.9, yMm: 150.1 });
  expect(print.ok && print.value.scale.x).toBeCloseTo(1, 12);
  expect(print.ok && print.value.scale.y).toBeCloseTo(1, 12);
});

test('bars that differ by more keep a scale each', () => {
  const print = printOf({ xMm: 149.4, yMm: 150.3 });
  expect(print.ok && print.value.scale).toEqual({ x: 149.4 / 150, y: 150.3 / 150 });
});
