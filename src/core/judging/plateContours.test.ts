import { expect, test } from 'vitest';
import { archValues } from '../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { containsPoint, nearestOn, outlineChain } from '../curve/index.ts';
import { plateArch, plateHeight } from '../instrument/index.ts';
import { placesOf } from '../surface/index.ts';
import { channelArea, insideArea } from './channelArea.ts';
import { plateContours } from './plateContours.ts';

const half = violinHalf();
const outline = outlineChain(half);
const made = plateArch(archValues(), half, 'back');
if (!made.ok) throw new Error('the usual back is refused');
const back = made.value;

test('contours of a finished plate are rings inside its outline: one round the arch, three where edge and channel lie about a level', () => {
  const { lines, unsettled } = plateContours(back, outline, 'finished', 3.4, 1);
  expect(unsettled).toBe(0);
  const rings = (level: number) => lines.filter(({ levelMm }) => levelMm === level);
  // Down over the rounding, down into the channel and up out of it; then the arch alone, 14.5 high.
  expect([3.4, 6.8, 10.2, 13.6].map((level) => rings(level).length)).toEqual([3, 1, 1, 1]);
  for (const line of lines) {
    expect(line.closed).toBe(true);
    for (const [x, y] of placesOf(line)) expect(containsPoint(outline, { x, y })).toBe(true);
  }
});

test('no line runs along the channel or the crest of the edge, which are as high all round: only where the plate passes that height', () => {
  expect([back.channelZMm, back.numbers.edgeHeightMm]).toEqual([2.8, 3.8]);
  // At the channel's height the rounding of the edge, at the edge's height the arch.
  for (const level of [2.8, 3.8]) {
    const { lines, unsettled } = plateContours(back, outline, 'finished', level, 1);
    expect(unsettled).toBe(0);
    const rings = lines.filter(({ levelMm }) => levelMm === level);
    expect(rings).toHaveLength(1);
    for (const [x, y] of rings.flatMap((line) => placesOf(line)))
      expect(plateHeight(back, x, y, 'finished')).toBeCloseTo(level, 3);
  }
});

test('the flat edge of an arched plate has no line, even where its height is a level', () => {
  const { lines } = plateContours(back, outline, 'arched', 1.9, 2);
  expect(back.numbers.edgeHeightMm).toBe(3.8);
  expect(new Set(lines.map(({ levelMm }) => levelMm))).toEqual(new Set([5.7, 7.6, 9.5, 11.4, 13.3]));
});

test('the area of the arch is bounded by the channel, on both sides', () => {
  const area = channelArea(back);
  for (const { x, y } of area.vertices) {
    expect(containsPoint(outline, { x, y })).toBe(true);
    expect(nearestOn(outline, { x, y }).distanceMm).toBeGreaterThan(6.5);
  }
  const grid = { fromXMm: -100, fromYMm: 0, stepMm: 50, columns: 5, rows: 3 };
  const { zMm } = insideArea({ ...grid, zMm: new Float64Array(15).fill(1) }, area);
  expect([...zMm].map((z) => (Number.isNaN(z) ? 0 : 1))).toEqual([
    0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1, 1, 1, 0,
  ]);
});
