import { expect, test } from 'vitest';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { compassTable } from './compassTable.ts';

const table = compassTable(violinHalf());

test('the table lists the arcs that the outline was drawn with, from the lower to the upper end', () => {
  expect(table.map(({ radiusMm }) => radiusMm)).toEqual([
    206.3, 71.5, 72.3, 133, 22.4, 18.7, 89.3, 14.6, 21.3, 149.8, 65.3, 63.3, 130.1,
  ]);
  expect(table.map(({ number }) => number)).toEqual(table.map((_, i) => i + 1));
});

test('hollow arcs are the ones before the corners and those of the waist', () => {
  const hollow = table.filter(({ kind }) => kind === 'hollow').map(({ number }) => number);
  expect(hollow).toEqual([5, 6, 7, 8, 9]);
});

test('only the two end arcs have their centres on the centre line', () => {
  expect(table.filter(({ onCentreLine }) => onCentreLine).map(({ number }) => number)).toEqual([1, 13]);
});

test('every centre lies its radius away from both ends of its arc', () => {
  for (const { centre, radiusMm, from, to } of table) {
    if (centre === null || radiusMm === null) throw new Error('a straight piece');
    for (const end of [from, to])
      expect(Math.abs(Math.hypot(end.x - centre.x, end.y - centre.y) - radiusMm)).toBeLessThan(0.051);
  }
});

test('a straight piece has neither radius nor centre', () => {
  const half = violinHalf();
  const [first, second] = half.cBout.vertices;
  if (!first || !second) throw new Error('no waist');
  const straight = {
    closed: false,
    vertices: [
      { ...first, bulge: 0 },
      { ...second, bulge: 0 },
    ],
  };
  const row = compassTable({ ...half, cBout: straight })[5];
  expect(row).toMatchObject({ radiusMm: null, centre: null, kind: 'straight', onCentreLine: false });
});
