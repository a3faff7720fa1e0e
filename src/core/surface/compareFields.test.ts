import { expect, test } from 'vitest';
import { compareFields } from './compareFields.ts';
import { heightField } from './heightField.ts';
import { sectionLine } from './sectionLine.ts';

const choice = { most: 3, apartMm: 10, leastMm: 0.05 };
const grid = { fromXMm: -20, fromYMm: 0, stepMm: 1, columns: 41, rows: 51 };

test('the second less the first, where both have a height, on grids that begin elsewhere', () => {
  const first = heightField(grid, (x, y) => (y > 40 ? Number.NaN : x + y));
  const second = heightField({ ...grid, fromXMm: -10, columns: 21 }, (x, y) => x + y + 0.5);
  const { field, count, rmsMm } = compareFields(first, second, choice);
  expect(count).toBe(21 * 41);
  expect(rmsMm).toBeCloseTo(0.5, 12);
  expect(field.zMm[10]).toBeCloseTo(0.5, 12);
  expect(field.zMm[9]).toBeNaN();
});

test('the worst places stand apart, the largest first, a mirrored pair told once', () => {
  const bump = (x: number, y: number, atX: number, atY: number) =>
    Math.exp(-((Math.abs(x) - atX) ** 2 + (y - atY) ** 2) / 8);
  const flat = heightField(grid, () => 0);
  const other = heightField(grid, (x, y) => 2 * bump(x, y, 12, 10) - bump(x, y, 0, 40));
  const { worst } = compareFields(flat, other, choice);
  expect(worst.map(({ xMm, yMm, differenceMm }) => [xMm, yMm, Number(differenceMm.toFixed(3))])).toEqual([
    [12, 10, 2],
    [0, 40, -1],
  ]);
  expect(compareFields(flat, flat, choice)).toMatchObject({ rmsMm: 0, worst: [] });
});

test('grids whose places do not coincide are a broken promise', () => {
  const first = heightField(grid, () => 0);
  const second = heightField({ ...grid, fromXMm: -20.3 }, () => 0);
  expect(() => compareFields(first, second, choice)).toThrow('coincide');
});

test('a section counts its way from the start, keeps both ends and leaves out what is off the plate', () => {
  const heights = (x: number, y: number) => (y > 8 ? Number.NaN : x + 2 * y);
  const profile = sectionLine(heights, { x: 0, y: 0 }, { x: 6, y: 8 }, 0.3);
  expect(profile[0]).toEqual({ x: 0, y: 0 });
  expect(profile.at(-1)).toEqual({ x: 10, y: 22 });
  for (const [index, { x }] of profile.slice(1).entries())
    expect(x - (profile[index]?.x ?? 0)).toBeLessThanOrEqual(0.3);
  expect(sectionLine(heights, { x: 0, y: 8.5 }, { x: 5, y: 9 }, 0.3)).toEqual([]);
});
