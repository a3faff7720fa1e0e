import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { type Point, point } from '../../base/index.ts';
import { containsPoint, offsetChain, outlineChain } from '../../curve/index.ts';
import { plateArch } from '../arching/index.ts';
import { insideOfBothHalves, woodOfBothHalves } from './bothHalves.ts';
import { hollowPlate, insideHeight } from './hollow.ts';
import type { ThickArea } from './plateArea.ts';
import { plateWood } from './plateWood.ts';
import { thicknessAt, thicknessMap } from './thicknessMap.ts';
import type { ThicknessPoint } from './thicknessNumbers.ts';
import { surveyThickness } from './thicknessZones.ts';

const body = outlineChain(violinHalf());
const onPlate = (at: Point<'body'>): boolean => containsPoint(body, at);
const made = plateArch(archValues(), violinHalf(), 'top');
if (!made.ok) throw new Error('the usual top is refused');
const top = made.value;
const [formEdge] = offsetChain(body, -3.3, { join: 'mitre' });
if (!formEdge) throw new Error('no form');
const NUMBERS = { middleMm: 3, boutsMm: 2.7, flanksMm: 2.7, channelMm: 2.4 };

const post = (extraMm: number, reachMm = 15): ThickArea => ({
  name: 'post',
  from: point(16.5, 152),
  to: point(16.5, 152),
  halfWidthMm: 3,
  extraMm,
  reachMm,
});
const bar = (extraMm: number): ThickArea => ({
  name: 'bar',
  from: point(-18, 43),
  to: point(-14.5, 312),
  halfWidthMm: 2.75,
  extraMm,
  reachMm: 15,
});

function map(areas: readonly ThickArea[], points: readonly ThicknessPoint[] = []) {
  return thicknessMap(top, 160, NUMBERS, 'concentric', points, onPlate, areas);
}

function plate(areas: readonly ThickArea[], points: readonly ThicknessPoint[] = []) {
  const checked = map(areas, points);
  const hollow = checked.ok && formEdge && hollowPlate(top, checked.value, formEdge, 1.8);
  if (!hollow || !hollow.ok) throw new Error('refused');
  return hollow.value;
}

const even = plate([post(0), bar(0)]);
const uneven = plate([post(0.5), bar(-0.3)]);

test('under post and bar the wood is as much thicker or thinner as is asked, and nothing is felt beyond the reach', () => {
  const more = (x: number, y: number): number =>
    thicknessAt(uneven.thickness, x, y) - thicknessAt(even.thickness, x, y);
  expect(more(16.5, 152)).toBeCloseTo(0.5, 12);
  expect(more(16.5, 149.1)).toBeCloseTo(0.5, 12);
  expect(more(-16.2, 180)).toBeCloseTo(-0.3, 12);
  expect(more(16.5, 170.1)).toBe(0);
  expect(more(20, 250)).toBe(0);
  // Half of it is left half way out.
  expect(more(16.5 + 3 + 7.5, 152)).toBeCloseTo(0.25, 12);
});

test('a point that is asked for is met whatever post and bar add', () => {
  const asked = { ...point<'body'>(17, 150), thicknessMm: 3.3 };
  expect(thicknessAt(plate([post(0.5), bar(0)], [asked]).thickness, 17, 150)).toBeCloseTo(3.3, 9);
});

test('a post adds the wood of its disc and of its fading rim to the plate, a closed formula', () => {
  const weigh = (areas: readonly ThickArea[]): number =>
    woodOfBothHalves(plate(areas), (one) => plateWood(one, body, 420)).volumeMm3;
  const [extra, r, reach] = [0.5, 3, 15];
  const added = weigh([post(extra), bar(0)]) - weigh([post(0), bar(0)]);
  const closed = extra * Math.PI * (r * r + r * reach + 0.3 * reach * reach);
  // The arch there leans by a few degrees, so that a little more wood lies over the same ground.
  expect(added / closed).toBeGreaterThan(0.97);
  expect(added / closed).toBeLessThan(1.05);
});

test('a plate whose halves differ balances as both halves together', () => {
  const woodOf = (areas: readonly ThickArea[]) =>
    woodOfBothHalves(plate(areas), (one) => plateWood(one, body, 420));
  const [none, some] = [woodOf([post(0), bar(0)]), woodOf([post(0.5), bar(0)])];
  expect(some.massG).toBeCloseTo((420 * some.volumeMm3) / 1e6, 6);
  // What was added pulls the balance toward the post by its lever.
  const addedG = some.massG - none.massG;
  expect(some.centreYMm).toBeCloseTo(none.centreYMm + (addedG * (152 - none.centreYMm)) / some.massG, 2);
  expect(some.aboutSquare).toBeGreaterThan(none.aboutSquare);
});

test('what is made alike on both halves spares the thicker wood of either', () => {
  fc.assert(
    fc.property(fc.double({ min: -80, max: 80, noNaN: true }), fc.integer({ min: 20, max: 330 }), (x, y) => {
      const both = insideOfBothHalves(uneven, x, y);
      expect(both).toBeLessThanOrEqual(insideHeight(uneven, x, y));
      expect(both).toBeLessThanOrEqual(insideHeight(uneven, -x, y));
      expect(insideOfBothHalves(even, x, y)).toBe(insideHeight(even, x, y));
    }),
  );
  expect(insideOfBothHalves(uneven, -16.5, 152)).toBeCloseTo(insideHeight(uneven, 16.5, 152), 9);
});

test('the least of post and bar is looked for on them, on their own sides', () => {
  const { zones, halves } = surveyThickness(uneven);
  expect(halves).toBe('apart');
  const least = (zone: string) => zones.find((one) => one.zone === zone);
  expect(least('bar')?.x).toBeLessThan(0);
  expect(least('post')?.x).toBeGreaterThan(0);
  const calm = surveyThickness(even);
  expect(calm.halves).toBe('alike');
  const before = calm.zones.find(({ zone }) => zone === 'post')?.leastMm ?? Number.NaN;
  expect(least('post')?.leastMm).toBeCloseTo(before + 0.5, 9);
  expect(least('waist')?.x).toBeLessThan(0);
});

test.each([
  ['less wood than there is', [post(-2.5), bar(0)], ['thickness.post']],
  ['both taking off more than there is', [post(-1.3), bar(-1.3)], ['thickness.post', 'thickness.bar']],
  ['no number', [post(Number.NaN), bar(0)], ['thickness.post']],
  ['no reach', [post(0.2, 0), bar(0)], ['thickness.post']],
])('%s is refused', (_what, areas, expected) => {
  const checked = map(areas);
  expect(checked.ok ? [] : checked.faults.map(({ code }) => code)).toEqual(
    expected.map(() => 'thickness.area'),
  );
  expect(checked.ok ? [] : checked.faults.map(({ at }) => at.replace('.top', ''))).toEqual(expected);
});
