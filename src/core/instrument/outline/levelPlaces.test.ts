import { expect, test } from 'vitest';
import type { Chain } from '../../curve/index.ts';
import { levelPlaces } from './levelPlaces.ts';

const QUARTER = Math.tan(Math.PI / 8);

test('the widest place of a half round is found, also where two arcs meet in it', () => {
  const whole: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: 0, y: 0, bulge: 1 },
      { x: 0, y: 20, bulge: 0 },
    ],
  };
  const quarters: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: 0, y: 0, bulge: QUARTER },
      { x: 10, y: 10, bulge: QUARTER },
      { x: 0, y: 20, bulge: 0 },
    ],
  };
  for (const chain of [whole, quarters])
    for (const place of levelPlaces(chain)) {
      expect(place.x).toBeCloseTo(10, 9);
      expect(place.y).toBeCloseTo(10, 9);
    }
  expect(levelPlaces(whole)).toHaveLength(1);
  expect(levelPlaces(quarters).length).toBeGreaterThanOrEqual(1);
});

test('a hollow arc is narrowest on the side of the centre line', () => {
  const hollow: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: 50, y: 0, bulge: -1 },
      { x: 50, y: 20, bulge: 0 },
    ],
  };
  expect(levelPlaces(hollow)).toEqual([{ x: expect.closeTo(40, 9), y: expect.closeTo(10, 9) }]);
});

test('a line that leans has no such place, an upright one its middle', () => {
  const line = (x: number): Chain<'body'> => ({
    closed: false,
    vertices: [
      { x: 5, y: 0, bulge: 0 },
      { x, y: 8, bulge: 0 },
    ],
  });
  expect(levelPlaces(line(6))).toEqual([]);
  expect(levelPlaces(line(5))).toEqual([{ x: 5, y: 4 }]);
});
