import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { point, seededRandom } from '../../base/index.ts';
import { areaOf, containsPoint, nearestOn, outlineChain } from '../../curve/index.ts';
import { plateArch } from './plateArch.ts';
import { plateField } from './plateField.ts';
import { nearPlateHeight, nearPlateSlopes, plateHeight, plateSlopes } from './plateHeight.ts';
import { plateShape } from './plateShape.ts';
import { footOn, isLeft, isSurelyLeft } from './smoothLine.ts';

const half = violinHalf();
const made = plateArch(archValues(), half, 'top');
if (!made.ok) throw new Error('the usual top is refused');
const top = made.value;

test('a field holds a height at every place of the plate, the same on both sides, and none off it', () => {
  const stepMm = 2;
  const field = plateField(top, 'finished', stepMm);
  let [count, worst] = [0, 0];
  for (let row = 0; row < field.rows; row++)
    for (let column = 0; column < field.columns; column++) {
      const z = field.zMm[row * field.columns + column] as number;
      const mirrored = field.zMm[row * field.columns + field.columns - 1 - column] as number;
      expect(Object.is(z, mirrored)).toBe(true);
      if (Number.isNaN(z)) continue;
      count++;
      const whole = plateHeight(top, field.fromXMm + column * stepMm, row * stepMm, 'finished');
      worst = Math.max(worst, Math.abs(z - whole));
    }
  expect(worst).toBeLessThan(1e-12);
  const areaMm2 = areaOf(outlineChain(half));
  expect(Math.abs((count * stepMm ** 2) / areaMm2 - 1)).toBeLessThan(0.01);
});

test('what stands surely inside the channel by a distance does, and most of the plate is told so without a foot', () => {
  const { line } = top.channel;
  let [sure, inside] = [0, 0];
  for (let y = 1; y < 355; y += 3.1)
    for (let x = 0.3; x < 104; x += 2.7) {
      const { distanceMm } = footOn(line, x, y);
      if (Math.abs(distanceMm) > 0.01) expect(isLeft(line, x, y)).toBe(distanceMm > 0);
      if (distanceMm > 5) inside++;
      if (!isSurelyLeft(line, x, y, 5)) continue;
      sure++;
      expect(distanceMm).toBeGreaterThan(5);
    }
  expect(sure).toBeGreaterThan(0.5 * inside);
});

test('heights and slopes for sums are those of the surface to two thousandths', () => {
  const body = outlineChain(half);
  const random = seededRandom(5);
  for (let counted = 0; counted < 2000; ) {
    const [x, y] = [(random() - 0.5) * 208, random() * 355];
    if (!containsPoint(body, point<'body'>(x, y))) continue;
    counted++;
    const whole = plateSlopes(top, x, y);
    const near = nearPlateSlopes(top, x, y);
    expect(Math.abs(nearPlateHeight(top, x, y) - whole.zMm)).toBeLessThan(0.002);
    expect(Math.abs(near.zMm - whole.zMm)).toBeLessThan(0.002);
    expect(Math.hypot(near.slopeX - whole.slopeX, near.slopeY - whole.slopeY)).toBeLessThan(0.003);
  }
});

test('slopes and bends at the crest of the waist: level, and bent as the cycloid and the long arch are', () => {
  const waist = top.stations.find(({ name }) => name === 'waist');
  if (!waist) throw new Error('no waist');
  const shape = plateShape(top, 0, waist.yMm, 'finished');
  expect(Math.abs(shape.slopeX)).toBeLessThan(1e-9);
  const { rollRadiusMm: a, throwMm: b } = {
    rollRadiusMm: waist.halfWidthMm / Math.PI,
    throwMm: waist.riseMm / 2,
  };
  expect(shape.bendXX).toBeCloseTo((-b / (a + b) ** 2) * (1 - 4 * waist.fullness), 4);
});

test('slopes are those of the surface: deep inside, beside the channel, in the scoop and on the round of the edge', () => {
  const body = outlineChain(half);
  const random = seededRandom(3);
  let counted = 0;
  while (counted < 3000) {
    const [x, y] = [(random() - 0.5) * 208, random() * 355];
    const edgeMm = nearestOn(body, point<'body'>(x, y)).distanceMm;
    // Not where the surface is bent so sharply that differences of heights say nothing: rim, ridge and corner valleys.
    if (!containsPoint(body, point<'body'>(x, y)) || edgeMm < 0.5 || Math.abs(edgeMm - 1.4) < 0.2) continue;
    counted++;
    const [quick, whole] = [plateSlopes(top, x, y), plateShape(top, x, y, 'finished')];
    expect(quick.zMm).toBeCloseTo(whole.zMm, 12);
    const off = Math.hypot(quick.slopeX - whole.slopeX, quick.slopeY - whole.slopeY);
    expect(off).toBeLessThan(1e-4);
  }
});

test.each(['arched', 'finished'] as const)(
  'slopes and bends are how height and slopes change, %s',
  (state) => {
    const body = outlineChain(half);
    const random = seededRandom(8);
    const step = 0.01;
    const worst = { slope: 0, bend: 0 };
    for (let counted = 0; counted < 800; ) {
      const [x, y] = [(random() - 0.5) * 200, 3 + random() * 349];
      const edgeMm = nearestOn(body, point<'body'>(x, y)).distanceMm;
      const z = (right: number, up: number) => plateHeight(top, x + right * step, y + up * step, state);
      // Inside the channel, not on its line and not where an arch rises out of the flat edge.
      if (!containsPoint(body, point<'body'>(x, y)) || edgeMm < 14 || Math.abs(z(0, 0) - 4) < 0.1) continue;
      counted++;
      const shape = plateShape(top, x, y, state);
      worst.slope = Math.max(
        worst.slope,
        Math.abs(shape.slopeX - (z(1, 0) - z(-1, 0)) / (2 * step)),
        Math.abs(shape.slopeY - (z(0, 1) - z(0, -1)) / (2 * step)),
      );
      worst.bend = Math.max(
        worst.bend,
        Math.abs(shape.bendXX - (z(1, 0) - 2 * z(0, 0) + z(-1, 0)) / step ** 2),
        Math.abs(shape.bendXY - (z(1, 1) - z(1, -1) - z(-1, 1) + z(-1, -1)) / (4 * step ** 2)),
        Math.abs(shape.bendYY - (z(0, 1) - 2 * z(0, 0) + z(0, -1)) / step ** 2),
      );
    }
    // The differences themselves are off by the third derivative times step² / 6.
    expect(worst.slope).toBeLessThan(1.5e-7);
    expect(worst.bend).toBeLessThan(2e-6);
  },
);
