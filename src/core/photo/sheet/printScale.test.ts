import { expect, test } from 'vitest';
import { printOf } from './printScale.ts';

test('bars that were measured hold each direction to 0.1 mm in 150 (k = 2)', () => {
  const print = printOf({ xMm: 149.4, yMm: 150.3 });
  if (!print.ok) throw new Error();
  expect(print.value.scale).toEqual({ x: 149.4 / 150, y: 150.3 / 150 });
  expect(print.value.beliefs).toEqual([
    { x: 1, y: 0, value: 149.4 / 150, sigma: 0.05 / 150 },
    { x: 0, y: 1, value: 150.3 / 150, sigma: 0.05 / 150 },
  ]);
  expect(print.value.findings).toEqual([]);
});

test('one bar measured holds its own direction, and the other one only as far as prints are even', () => {
  const print = printOf({ yMm: 149.7 });
  if (!print.ok) throw new Error();
  expect(print.value.scale).toEqual({ x: 149.7 / 150, y: 149.7 / 150 });
  expect(print.value.beliefs.map(({ x, y, sigma }) => [x, y, sigma])).toEqual([
    [0, 1, 0.05 / 150],
    [1, -1, 0.001],
  ]);
  expect(print.value.findings.map(({ code }) => code)).toEqual(['sheet.oneBar']);
});

test('a print that nobody measured is the plan, give or take 0.4 % (k = 2)', () => {
  const print = printOf(undefined);
  expect(print.ok && print.value.scale).toEqual({ x: 1, y: 1 });
  expect(print.ok && print.value.beliefs.map(({ sigma }) => sigma)).toEqual([0.002, 0.002]);
  expect(print.ok && print.value.findings.map(({ code }) => code)).toEqual(['sheet.unmeasured']);
});

test('a bar more than a fifth off is refused', () => {
  const print = printOf({ xMm: 5.9, yMm: 150 });
  expect(print.ok ? [] : print.faults.map(({ code }) => code)).toEqual(['sheet.bar']);
});
