import { expect, test } from 'vitest';
import { type HeightField, heightField } from './heightField.ts';
import { type Lamp, lampPlace } from './shadingLamp.ts';
import { lampLight } from './shadingLight.ts';

const DEGREE = Math.PI / 180;
/** So far away that its light falls everywhere alike. */
const far = (heightDegrees: number, fromDegrees: number, halfWidthDegrees = 0): Lamp => ({
  heightRad: heightDegrees * DEGREE,
  fromRad: fromDegrees * DEGREE,
  distanceMm: 1e9,
  halfWidthRad: halfWidthDegrees * DEGREE,
});
const field = (heightAt: (x: number, y: number) => number): HeightField =>
  heightField({ fromXMm: -30, fromYMm: -30, stepMm: 0.5, columns: 121, rows: 121 }, heightAt);
const at = (light: Float64Array, x: number, y: number) => light[(y + 30) * 2 * 121 + (x + 30) * 2] as number;

test('the lamp stands clockwise from the neck end: a quarter turn is to the right', () => {
  const middle = { xMm: 0, yMm: 100 };
  const { xMm, yMm, zMm } = lampPlace(
    { heightRad: 30 * DEGREE, fromRad: 90 * DEGREE, distanceMm: 10, halfWidthRad: 0 },
    middle,
  );
  expect([xMm, yMm, zMm].map((mm) => Number(mm.toFixed(9)))).toEqual([8.660254038, 100, 5]);
});

test('a level board gets the light 1; a slope towards the lamp more, one away from it less, by the cosine', () => {
  const roof = field((x) => -0.2 * Math.abs(x));
  const light = lampLight(roof, far(15, 90));
  const tilt = Math.atan(0.2) / DEGREE;
  expect(at(light, 20, 0)).toBeCloseTo(Math.sin((15 + tilt) * DEGREE) / Math.sin(15 * DEGREE), 6);
  expect(at(light, -20, 0)).toBeCloseTo(Math.sin((15 - tilt) * DEGREE) / Math.sin(15 * DEGREE), 6);
  expect(
    at(
      lampLight(
        field(() => 3),
        far(15, 217),
      ),
      4,
      -7,
    ),
  ).toBeCloseTo(1, 6);
});

test('a slope steeper than the lamp is high gets no light from behind', () => {
  const roof = field((x) => -0.4 * Math.abs(x));
  expect(at(lampLight(roof, far(15, 90)), -20, 0)).toBe(0);
});

test('a wall casts a shadow as long as its height by the tangent of the lamp, soft by the width of the lamp', () => {
  const wall = field((x) => (x >= 5 && x <= 9 ? 2 : 0));
  const length = 2 / Math.tan(15 * DEGREE);
  const hard = lampLight(wall, far(15, 90));
  expect(at(hard, Math.ceil(5 - length) + 1, 0)).toBe(0);
  expect(at(hard, Math.floor(5 - length) - 1, 0)).toBeCloseTo(1, 6);
  expect(at(hard, 12, 0)).toBeCloseTo(1, 6);
  const soft = lampLight(wall, far(15, 90, 2));
  const border = Array.from({ length: 16 }, (_, index) => at(soft, -12 + index, 0));
  for (const [index, share] of border.entries())
    expect(share).toBeLessThanOrEqual((border[index - 1] ?? 1) + 1e-6);
  expect(border.filter((share) => share > 0 && share < 1).length).toBeGreaterThanOrEqual(1);
});

test('a near lamp lights the near side more, and mirrored lamps light mirrored plates alike', () => {
  const dome = field((x, y) => 5 - (x * x + y * y) / 300);
  const near: Lamp = { heightRad: 20 * DEGREE, fromRad: 70 * DEGREE, distanceMm: 150, halfWidthRad: 0.02 };
  const one = lampLight(dome, near);
  const other = lampLight(dome, { ...near, fromRad: -near.fromRad });
  for (const [x, y] of [
    [10, 3],
    [-20, 12],
    [25, -25],
  ] as const)
    expect(at(one, x, y)).toBeCloseTo(at(other, -x, y), 9);
  const level = lampLight(
    field(() => 0),
    near,
  );
  const lamp = lampPlace(near, { xMm: 0, yMm: 0 });
  const away = Math.hypot(lamp.xMm - 25, lamp.yMm - 5, lamp.zMm);
  expect(at(level, 25, 5)).toBeCloseTo((150 / away) ** 3, 9);
  expect(at(level, 25, 5)).toBeGreaterThan(2 * at(level, -25, -5));
});

test('a ripple of a tenth of a millimetre shows: neighbouring places differ by a tenth of the light and more', () => {
  const ripple = field((x) => 0.05 * Math.cos((2 * Math.PI * x) / 12));
  const light = lampLight(ripple, far(15, 90));
  const along = Array.from({ length: 40 }, (_, index) => at(light, index - 20, 0));
  expect(Math.max(...along) - Math.min(...along)).toBeGreaterThan(0.15);
});

test('where there is no height there is no light, and it throws no shadow', () => {
  const half = field((x) => (x > 10 ? Number.NaN : 0));
  const light = lampLight(half, far(15, 90));
  expect(at(light, 20, 0)).toBeNaN();
  expect(at(light, 5, 0)).toBeCloseTo(1, 6);
});
