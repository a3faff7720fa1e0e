import { expect, test } from 'vitest';
import { areaOf } from './holeContour.ts';
import { levelLoops } from './levelLoops.ts';

function fieldOf(columns: number, rows: number, value: (x: number, y: number) => number): Float32Array {
  return Float32Array.from({ length: columns * rows }, (_, i) => value(i % columns, Math.floor(i / columns)));
}

test('a disc’s level line is one anticlockwise loop on its circle', () => {
  const field = fieldOf(40, 40, (x, y) => 12.3 - Math.hypot(x - 19.4, y - 20.2));
  const loops = levelLoops(field, 40, 40);
  expect(loops).toHaveLength(1);
  const off = loops[0].map(([x, y]) => Math.abs(Math.hypot(x - 19.4, y - 20.2) - 12.3));
  expect(Math.max(...off)).toBeLessThan(0.02);
  expect(areaOf(loops[0])).toBeCloseTo(Math.PI * 12.3 ** 2, -1);
});

test('a hole in a disc runs clockwise', () => {
  const field = fieldOf(40, 40, (x, y) => 4 - Math.abs(Math.hypot(x - 20, y - 20) - 10));
  const areas = levelLoops(field, 40, 40).map(areaOf);
  expect(areas.filter((area) => area > 0)).toHaveLength(1);
  expect(areas.filter((area) => area < 0)).toHaveLength(1);
});

test('a line that leaves the grid is no loop', () => {
  expect(
    levelLoops(
      fieldOf(10, 10, (x) => 4.5 - x),
      10,
      10,
    ),
  ).toEqual([]);
});
