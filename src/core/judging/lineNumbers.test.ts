import { expect, test } from 'vitest';
import { letteringStrokes } from '../drawing/index.ts';
import { type ContourLine, placesOf } from '../surface/index.ts';
import { numberedLines } from './lineNumbers.ts';

const circle = (levelMm: number, radius: number): ContourLine => ({
  levelMm,
  closed: true,
  xyMm: Float64Array.from(
    Array.from({ length: 180 }, (_, index) => [
      radius * Math.cos((index * Math.PI) / 90),
      radius * Math.sin((index * Math.PI) / 90),
    ]).flat(),
  ),
});
const ladder = [
  { x: 0, y: 0 },
  { x: 100, y: -100 },
] as const;
const lengthOf = (line: ContourLine) =>
  [...placesOf(line), ...(line.closed ? placesOf(line).slice(0, 1) : [])].reduce(
    ({ sum, last }, [x, y]) => ({
      sum: sum + (last ? Math.hypot(x - last[0], y - last[1]) : 0),
      last: [x, y] as const,
    }),
    { sum: 0, last: undefined as readonly [number, number] | undefined },
  ).sum;

test('each line carries its number beside the ladder, upright along the line, in a gap as wide as it', () => {
  const lines = [circle(1, 40), circle(2, 30), circle(3, 20)];
  const { lines: cut, numbers } = numberedLines(lines, (level) => `${level}`, 2, [ladder]);
  expect(numbers.map(({ lettering }) => lettering.text)).toEqual(['1', '2', '3']);
  for (const [index, { lettering }] of numbers.entries()) {
    expect(Math.abs(Math.atan2(lettering.at.y, lettering.at.x) + Math.PI / 4)).toBeLessThan(0.1);
    expect(Math.abs(lettering.turnRad)).toBeLessThanOrEqual(Math.PI / 2);
    expect(Math.abs(lettering.turnRad - Math.PI / 4)).toBeLessThan(0.15);
    const line = cut[index] as ContourLine;
    expect(line.closed).toBe(false);
    const gap = lengthOf(lines[index] as ContourLine) - lengthOf(line);
    expect(gap).toBeGreaterThan(1.5);
    expect(gap).toBeLessThan(5);
  }
});

test('no number lies on another line or on what it is kept off', () => {
  const lines = [circle(1, 40), circle(2, 38.9), circle(3, 30), circle(4, 20)];
  const guide: ContourLine = { levelMm: 0, closed: false, xyMm: Float64Array.from([0, 0, 60, -60]) };
  const { lines: cut, numbers } = numberedLines(lines, (level) => `${level}.0`, 2, [ladder], [guide]);
  // The outer two stand too close for a number on either.
  expect(numbers.map(({ levelMm }) => levelMm)).toEqual([3, 4]);
  for (const { lettering } of numbers)
    for (const { x, y } of letteringStrokes(lettering).flatMap(({ vertices }) => vertices)) {
      expect(Math.abs(x + y) / Math.SQRT2).toBeGreaterThan(0.1);
      for (const line of cut)
        for (const [lineX, lineY] of placesOf(line))
          expect(Math.hypot(x - lineX, y - lineY)).toBeGreaterThan(0.1);
    }
});

test('two ladders cut a line into two pieces that together miss only the gaps', () => {
  const line = circle(12, 50);
  const other = [
    { x: 0, y: 0 },
    { x: -100, y: 100 },
  ] as const;
  const { lines: cut, numbers } = numberedLines([line], (level) => `${level}`, 2, [ladder, other]);
  expect(numbers).toHaveLength(2);
  expect(cut).toHaveLength(2);
  const gaps = lengthOf(line) - cut.reduce((sum, piece) => sum + lengthOf(piece), 0);
  expect(gaps).toBeGreaterThan(4);
  expect(gaps).toBeLessThan(14);
});

test('where only some lines are numbered the others are broken under the numbers', () => {
  const lines = [circle(5, 40), circle(6, 39.4), circle(7, 38.8)];
  const { lines: cut, numbers } = numberedLines(lines, String, 2, [ladder], [], (level) => level === 6);
  expect(numbers.map(({ levelMm }) => levelMm)).toEqual([6]);
  const at = numbers[0]?.lettering.at ?? { x: 0, y: 0 };
  for (const line of cut) {
    expect(line.closed).toBe(false);
    expect(Math.min(...placesOf(line).map(([x, y]) => Math.hypot(x - at.x, y - at.y)))).toBeGreaterThan(0.6);
  }
  expect(cut.map(({ levelMm }) => levelMm).toSorted()).toEqual([5, 6, 7]);
  for (const [index, line] of lines.entries()) {
    const left = cut.find(({ levelMm }) => levelMm === index + 5) as ContourLine;
    expect(lengthOf(line) - lengthOf(left)).toBeGreaterThan(1.5);
    expect(lengthOf(line) - lengthOf(left)).toBeLessThan(5);
  }
});

test('a line too short for a number is left whole', () => {
  const small = circle(5, 0.5);
  expect(numberedLines([small], () => '5', 2, [ladder])).toEqual({ lines: [small], numbers: [] });
});
