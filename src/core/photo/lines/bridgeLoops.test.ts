import { expect, test } from 'vitest';
import { bridgeLoops, type LoopPoint } from './bridgeLoops.ts';
import { areaOf } from './holeContour.ts';

/** A slot 4 wide and 20 high, or the part of it between two heights, anticlockwise. */
function slot(low: number, high: number): LoopPoint[] {
  const points: LoopPoint[] = [];
  const run = (x0: number, y0: number, x1: number, y1: number): void => {
    const count = Math.round(Math.hypot(x1 - x0, y1 - y0) * 10);
    for (let i = 0; i < count; i++)
      points.push({ x: x0 + ((x1 - x0) * i) / count, y: y0 + ((y1 - y0) * i) / count, bridged: false });
  };
  run(0, low, 4, low);
  run(4, low, 4, high);
  run(4, high, 0, high);
  run(0, high, 0, low);
  return points;
}

test('a slot cut by a string a millimetre wide is whole again, its crossed stretches marked', () => {
  const joined = bridgeLoops([slot(0, 9), slot(10, 20)], 5) ?? [];
  expect(areaOf(joined.map(({ x, y }) => [x, y]))).toBeCloseTo(80, 0);
  const bridged = joined.filter((point) => point.bridged);
  expect(bridged.length).toBeGreaterThan(4);
  expect(bridged.every(({ y }) => y > 7.5 && y < 11.5)).toBe(true);
});

test('two strings leave three pieces, joined in any order', () => {
  const joined = bridgeLoops([slot(16, 20), slot(0, 9), slot(10, 15)], 5) ?? [];
  expect(areaOf(joined.map(({ x, y }) => [x, y]))).toBeCloseTo(80, 0);
});

test('a piece too far off is left out, and no piece is no loop', () => {
  const whole = slot(0, 9);
  expect(bridgeLoops([whole, slot(16, 20)], 5)).toEqual(whole);
  expect(bridgeLoops([], 5)).toBeNull();
});
