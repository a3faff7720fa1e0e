import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { type Point, point, seededRandom } from '../../base/index.ts';
import { containsPoint, offsetChain, outlineChain } from '../../curve/index.ts';
import { upwardNormal } from '../../surface/index.ts';
import { plateArch, plateHeight, plateShape } from '../arching/index.ts';
import { fullDepthAt, hollowPlate, insideHeight, nearInsideHeight } from './hollow.ts';
import { type ThicknessMap, thicknessAt, thicknessMap } from './thicknessMap.ts';
import type { ThicknessPoint } from './thicknessNumbers.ts';

const body = outlineChain(violinHalf());
const onPlate = (at: Point<'body'>): boolean => containsPoint(body, at);
const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('the usual back is refused');
const back = made.value;
const NUMBERS = { middleMm: 4.3, boutsMm: 2.5, flanksMm: 2.7, channelMm: 2.3 };

function map(points: readonly ThicknessPoint[] = [], changes = {}): ThicknessMap {
  const checked = thicknessMap(back, 160, { ...NUMBERS, ...changes }, 'concentric', points, onPlate);
  if (!checked.ok) throw new Error(checked.faults.map(({ code }) => code).join());
  return checked.value;
}

function codes(points: readonly ThicknessPoint[], changes = {}): readonly string[] {
  const checked = thicknessMap(back, 160, { ...NUMBERS, ...changes }, 'concentric', points, onPlate);
  return checked.ok ? [] : checked.faults.map(({ code }) => code);
}

const [formEdge] = offsetChain(body, -3.3, { join: 'mitre' });
const hollowed = formEdge && hollowPlate(back, map(), formEdge, 1.8);
if (!hollowed?.ok) throw new Error('the usual back cannot be hollowed');
const plate = hollowed.value;

const asked = (x: number, y: number, thicknessMm: number): ThicknessPoint => ({
  ...point<'body'>(x, y),
  thicknessMm,
});

test('a map takes its numbers where they are told, and never leaves their range', () => {
  const whole = map();
  const bout = back.stations.find(({ name }) => name === 'lowerBout');
  expect(thicknessAt(whole, 0, 160)).toBeCloseTo(4.3, 12);
  expect(thicknessAt(whole, 0, bout?.yMm ?? 0)).toBeCloseTo(2.5, 12);
  expect(thicknessAt(whole, 0, back.longArch.startMm)).toBeCloseTo(2.3, 12);
  fc.assert(
    fc.property(fc.double({ min: -100, max: 100 }), fc.double({ min: 0, max: 355 }), (x, y) => {
      const t = thicknessAt(whole, x, y);
      expect(t).toBe(thicknessAt(whole, -x, y));
      expect(t).toBeGreaterThanOrEqual(2.3 - 1e-12);
      expect(t).toBeLessThanOrEqual(4.3 + 1e-12);
    }),
  );
});

test('points that are asked for are met on both halves, and a fifth of the body away nothing is felt', () => {
  const pulled = map([asked(30, 120, 3.6), asked(-12, 90, 2.4), asked(0, 250, 2.9)]);
  for (const [x, y, t] of [
    [30, 120, 3.6],
    [-30, 120, 3.6],
    [12, 90, 2.4],
    [0, 250, 2.9],
  ] as const)
    expect(thicknessAt(pulled, x, y)).toBeCloseTo(t, 9);
  expect(thicknessAt(pulled, 0, 335)).toBe(thicknessAt(map(), 0, 335));
});

test('points never drive a map out of the range of what is asked for, however near to each other they stand', () => {
  const thickness = fc.integer({ min: 18, max: 60 }).map((tenths) => tenths / 10);
  const place = fc.record({
    x: fc.integer({ min: 0, max: 40 }),
    y: fc.integer({ min: 60, max: 300 }),
    t: thickness,
  });
  const steep = fc
    .tuple(place, fc.integer({ min: 1, max: 9 }), thickness)
    .map(([at, away, t]) => [asked(at.x, at.y, at.t), asked(at.x, at.y + away / 10_000, t)]);
  const random = seededRandom(11);
  fc.assert(
    fc.property(steep, (points) => {
      const pulled = map(points);
      const told = points.map(({ thicknessMm }) => thicknessMm);
      for (let tries = 0; tries < 200; tries++) {
        const t = thicknessAt(pulled, 200 * random() - 100, 355 * random());
        expect(t).toBeGreaterThanOrEqual(Math.min(2.3, ...told) - 1e-9);
        expect(t).toBeLessThanOrEqual(Math.max(4.3, ...told) + 1e-9);
      }
      for (const at of points) expect(thicknessAt(pulled, at.x, at.y)).toBeCloseTo(at.thicknessMm, 6);
    }),
  );
});

test('a longitudinal map is as thick in the middle of the bouts as in the middle of the plate', () => {
  const checked = thicknessMap(back, 160, NUMBERS, 'longitudinal', [], onPlate);
  if (!checked.ok) throw new Error('refused');
  for (const name of ['lowerBout', 'upperBout']) {
    const { yMm, halfWidthMm } = back.stations.find((station) => station.name === name) ?? {
      yMm: 0,
      halfWidthMm: 0,
    };
    expect(thicknessAt(checked.value, 0, yMm)).toBeCloseTo(4.3, 12);
    expect(thicknessAt(checked.value, halfWidthMm / 2, yMm)).toBeCloseTo(2.5, 9);
  }
});

test.each([
  ['a thickness of nothing', [], { middleMm: 0 }, ['thickness.number']],
  ['no number', [], { boutsMm: Number.NaN }, ['thickness.number']],
  ['a channel thicker than the bouts', [], { channelMm: 2.6 }, ['thickness.order']],
  ['a point off the plate', [asked(200, 120, 3)], {}, ['thickness.point']],
  ['a point without thickness', [asked(20, 120, Number.NaN)], {}, ['thickness.point']],
  [
    'two thicknesses at a place, one on either half',
    [asked(20, 120, 3), asked(-20, 120, 3.2)],
    {},
    ['thickness.twice'],
  ],
])('%s is refused', (_what, points, changes, expected) => {
  expect(codes(points, changes)).toEqual(expected);
});

const inside = fc
  .tuple(fc.double({ min: -98, max: 98, noNaN: true }), fc.double({ min: 6, max: 349, noNaN: true }))
  .filter(([x, y]) => containsPoint(plate.line, point<'body'>(x, y)));

test('the inside lies its thickness away from the outside, square to it', () => {
  fc.assert(
    fc.property(inside, ([x, y]) => {
      const { zMm, outside } = fullDepthAt(plate, x, y);
      const shape = plateShape(back, outside.x, outside.y, 'finished');
      const along = [x - outside.x, y - outside.y, zMm - shape.zMm];
      const t = thicknessAt(plate.thickness, outside.x, outside.y);
      expect(Math.hypot(...along)).toBeCloseTo(t, 5);
      upwardNormal(shape).forEach((part, axis) => {
        expect(along[axis]).toBeCloseTo(-t * part, 5);
      });
    }),
  );
});

test('the hollow lies between gluing face and outside, is the same on both halves and stops at the linings', () => {
  fc.assert(
    fc.property(inside, ([x, y]) => {
      const z = insideHeight(plate, x, y);
      expect(z).toBeGreaterThanOrEqual(0);
      expect(z).toBeLessThan(plateHeight(back, x, y, 'finished'));
      expect(insideHeight(plate, -x, y)).toBeCloseTo(z, 6);
    }),
  );
  expect(insideHeight(plate, 0, 4)).toBe(0);
  expect(insideHeight(plate, 0, 160)).toBeCloseTo(plateHeight(back, 0, 160, 'finished') - 4.3, 2);
});

test('the inside for sums is the inside to a few thousandths', () => {
  fc.assert(
    fc.property(inside, ([x, y]) => {
      expect(Math.abs(nearInsideHeight(plate, x, y) - insideHeight(plate, x, y))).toBeLessThan(0.004);
    }),
    { numRuns: 1000 },
  );
});

test.each([200, 0, -1.8, Number.NaN])('linings of %d mm are refused', (liningMm) => {
  const refused = formEdge && hollowPlate(back, map(), formEdge, liningMm);
  expect(refused?.ok === false && refused.faults.map(({ code }) => code)).toEqual(['hollow.linings']);
});
