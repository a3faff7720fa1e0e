import { expect, test } from 'vitest';
import { BOTH_WAYS_SCALE, colourAt, shaded, WOOD_SCALE } from './colourScale.ts';
import { fieldBox, fieldRaster } from './fieldRaster.ts';
import type { Colour } from './pictureSheet.ts';

const nan = Number.NaN;
const grid = { fromXMm: -2, fromYMm: 10, stepMm: 2, columns: 3, rows: 2 };
const grey = (value: number): Colour => [value, value, value];
const GROUND: Colour = [200, 0, 0];

test('a field is a raster with its highest row on top, each pixel about its place', () => {
  const { widthPx, heightPx, rgb } = fieldRaster(grid, [1, 2, 3, 4, 5, 6], grey, GROUND);
  expect([widthPx, heightPx]).toEqual([3, 2]);
  expect([...rgb].filter((_, index) => index % 3 === 0)).toEqual([4, 5, 6, 1, 2, 3]);
  expect(fieldBox(grid)).toEqual({ min: { x: -3, y: 9 }, max: { x: 3, y: 13 } });
});

test('places without a value take the colour of the nearest, as far as two places; farther off the ground shows', () => {
  const wide = { ...grid, columns: 5, rows: 1 };
  const { rgb } = fieldRaster(wide, [9, nan, nan, nan, nan], grey, GROUND);
  expect([...rgb].filter((_, index) => index % 3 === 0)).toEqual([9, 9, 9, 200, 200]);
});

test('a scale runs from its first colour to its last, straight between neighbours, and no farther', () => {
  expect(colourAt(WOOD_SCALE, 0)).toEqual(WOOD_SCALE[0]);
  expect(colourAt(WOOD_SCALE, 1)).toEqual(WOOD_SCALE.at(-1));
  expect(colourAt(WOOD_SCALE, -3)).toEqual(WOOD_SCALE[0]);
  expect(colourAt(WOOD_SCALE, 7)).toEqual(WOOD_SCALE.at(-1));
  expect(colourAt([grey(0), grey(100), grey(50)], 0.75)).toEqual(grey(75));
  const middle = colourAt(BOTH_WAYS_SCALE, 0.5);
  expect(Math.min(...middle)).toBeGreaterThan(240);
});

test('light above 1 brings a colour nearer to white without changing its hue to another, less nearer to black', () => {
  expect(shaded([200, 100, 50], 1)).toEqual([200, 100, 50]);
  expect(shaded([200, 100, 50], 0.5)).toEqual([100, 50, 25]);
  expect(shaded([200, 100, 50], 1.5)).toEqual([228, 178, 153]);
  expect(shaded([200, 100, 50], 9)).toEqual([255, 255, 255]);
  expect(shaded([200, 100, 50], -1)).toEqual([0, 0, 0]);
});
