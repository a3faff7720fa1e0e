import { expect, test } from 'vitest';
import { circleChain } from '../curve/index.ts';
import { seamMarks } from './seamMarks.ts';

const across = { min: { x: 0, y: 0 }, max: { x: 190, y: 10 } };
const upright = { min: { x: 0, y: 0 }, max: { x: 10, y: 190 } };
/** A number as small as they come, written about a place. */
const number = (x: number, y: number) => circleChain<'drawing'>({ x, y }, 1.2);

test('on a bare seam they stand at its ends and its middle, never in one line', () => {
  expect(seamMarks(across, false, [])).toEqual([
    { x: 16, y: 3 },
    { x: 95, y: 7 },
    { x: 174, y: 3 },
  ]);
  expect(seamMarks(upright, true, [])).toEqual([
    { x: 3, y: 174 },
    { x: 7, y: 95 },
    { x: 3, y: 16 },
  ]);
});

test('a mark gives way to what is printed where it or the names beside it would stand, and no farther than it must', () => {
  for (const off of [-2, 2, 14]) {
    const [first, middle, last] = seamMarks(across, false, [number(95 + off, 6)]);
    expect([first?.x, last?.x]).toEqual([16, 174]);
    expect(middle?.y).toBe(7);
    const [from, to] = [(middle?.x ?? 0) - 3.5, (middle?.x ?? 0) + 17];
    expect(to < 95 + off - 1.2 || from > 95 + off + 1.2).toBe(true);
    expect(Math.abs((middle?.x ?? 0) - 95)).toBeLessThanOrEqual(22);
  }
  const [top] = seamMarks(upright, true, [number(3, 174), number(3, 170)]);
  expect(top?.x).toBe(3);
  expect(top?.y).toBeLessThan(170 - 1.2 - 3.5);
});

test('where everything is printed over, they stand where fewest lines run, still on their seam', () => {
  const full = Array.from({ length: 96 }, (_, place) => number(2 * place, 5));
  const marks = seamMarks(across, false, full);
  expect(marks.map(({ y }) => y)).toEqual([3, 7, 3]);
  for (const { x } of marks) expect(x >= 16 && x <= 174).toBe(true);
});
