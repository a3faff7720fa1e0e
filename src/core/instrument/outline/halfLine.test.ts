import { expect, test } from 'vitest';
import { areaOf, type Chain, lengthOf } from '../../curve/index.ts';
import { closeAcrossCentre, closeOnCentreLine, notchedEdge } from './halfLine.ts';

/** A quarter round of radius 10 into a straight side into a quarter round: half of a slot 20 wide and 50 long. */
const QUARTER = Math.tan(Math.PI / 8);
const HALF: Chain<'body'> = {
  closed: false,
  vertices: [
    { x: 0, y: 0, bulge: QUARTER },
    { x: 10, y: 10, bulge: 0 },
    { x: 10, y: 40, bulge: QUARTER },
    { x: 0, y: 50, bulge: 0 },
  ],
};

test('a half line and its mirror image make one closed line with whole arcs across the centre', () => {
  const closed = closeAcrossCentre(HALF);
  expect(closed.closed).toBe(true);
  expect(closed.vertices.map(({ x, y }) => [x, y])).toEqual([
    [10, 10],
    [10, 40],
    [-10, 40],
    [-10, 10],
  ]);
  expect(closed.vertices.map((vertex) => vertex.bulge)).toEqual([
    0,
    expect.closeTo(1, 12),
    0,
    expect.closeTo(1, 12),
  ]);
  expect(areaOf(closed)).toBeCloseTo(20 * 30 + Math.PI * 100, 9);
});

test('a half template is half the area with its straight edge on the centre line', () => {
  const template = closeOnCentreLine(HALF);
  expect(areaOf(template)).toBeCloseTo((20 * 30 + Math.PI * 100) / 2, 9);
  expect(lengthOf(template)).toBeCloseTo(30 + Math.PI * 10 + 50, 9);
});

test('each pin takes half its circle out of the straight edge', () => {
  const pins = [10, 40].map((y) => ({ centre: { x: 0, y }, radiusMm: 2 }));
  const template = closeOnCentreLine(HALF, notchedEdge(pins));
  expect(areaOf(template)).toBeCloseTo((20 * 30 + Math.PI * 100) / 2 - Math.PI * 4, 9);
  expect(template.vertices.slice(4).map(({ y }) => y)).toEqual([42, 38, 12, 8]);
});
