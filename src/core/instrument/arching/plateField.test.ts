import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { areaOf, outlineChain } from '../../curve/index.ts';
import { plateArch } from './plateArch.ts';
import { plateField } from './plateField.ts';
import { plateHeight } from './plateHeight.ts';
import { plateShape, plateSlopes } from './plateShape.ts';

const half = violinHalf();
const made = plateArch(archValues(), half, 'top');
if (!made.ok) throw new Error('the usual top is refused');
const top = made.value;

test('a field holds a height at every place of the plate, the same on both sides, and none off it', () => {
  const stepMm = 2;
  const field = plateField(top, 'finished', stepMm);
  let count = 0;
  for (let row = 0; row < field.rows; row++)
    for (let column = 0; column < field.columns; column++) {
      const z = field.zMm[row * field.columns + column] as number;
      const mirrored = field.zMm[row * field.columns + field.columns - 1 - column] as number;
      expect(Object.is(z, mirrored)).toBe(true);
      if (Number.isNaN(z)) continue;
      count++;
      expect(z).toBe(plateHeight(top, field.fromXMm + column * stepMm, row * stepMm, 'finished'));
    }
  const areaMm2 = areaOf(outlineChain(half));
  expect(Math.abs((count * stepMm ** 2) / areaMm2 - 1)).toBeLessThan(0.01);
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

test('the quick slopes are those of the surface, deep inside and beside the channel', () => {
  for (const [x, y] of [
    [0, 170],
    [-40, 80],
    [61, 70],
    [40, 181],
    [90, 72],
  ] as const) {
    const [quick, whole] = [plateSlopes(top, x, y), plateShape(top, x, y, 'finished')];
    expect(quick.zMm).toBeCloseTo(whole.zMm, 12);
    expect(quick.slopeX).toBeCloseTo(whole.slopeX, 4);
    expect(quick.slopeY).toBeCloseTo(whole.slopeY, 4);
  }
});
