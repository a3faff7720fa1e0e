import fc from 'fast-check';
import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { areaOf, containsPoint, lengthOf, nearestOn } from '../../curve/index.ts';
import {
  areaChain,
  distanceToArea,
  extraAt,
  type PlateArea,
  placesInArea,
  type ThickArea,
} from './plateArea.ts';

const post: PlateArea = { name: 'post', from: point(16, 150), to: point(16, 150), halfWidthMm: 3 };
const bar: PlateArea = { name: 'bar', from: point(-18, 40), to: point(-13, 310), halfWidthMm: 2.75 };
const thick = (area: PlateArea): ThickArea => ({ ...area, extraMm: 0.4, reachMm: 15 });
const anywhere = fc.tuple(
  fc.double({ min: -60, max: 60, noNaN: true }),
  fc.double({ min: 0, max: 355, noNaN: true }),
);

test('the edge of a post is a circle, of a bar two lines and two half circles', () => {
  expect(areaOf(areaChain(post))).toBeCloseTo(Math.PI * 9, 9);
  const lengthMm = Math.hypot(5, 270);
  expect(areaOf(areaChain(bar))).toBeCloseTo(Math.PI * 2.75 ** 2 + 5.5 * lengthMm, 9);
  expect(lengthOf(areaChain(bar))).toBeCloseTo(Math.PI * 5.5 + 2 * lengthMm, 9);
});

test.each([post, bar])('the distance to a $name is that to its edge, and 0 inside', (area) => {
  const edge = areaChain(area);
  fc.assert(
    fc.property(anywhere, ([x, y]) => {
      const at = point<'body'>(x, y);
      const expected = containsPoint(edge, at) ? 0 : nearestOn(edge, at).distanceMm;
      expect(distanceToArea(area, x, y)).toBeCloseTo(expected, 6);
    }),
  );
});

test.each([post, bar])(
  'a $name adds all of its extra in itself, none beyond its reach, and leaves level',
  (area) => {
    const wood = thick(area);
    fc.assert(
      fc.property(anywhere, ([x, y]) => {
        const [away, extra] = [distanceToArea(area, x, y), extraAt(wood, x, y)];
        if (away === 0) expect(extra).toBe(0.4);
        if (away >= 15) expect(extra).toBe(0);
        expect(extra).toBeGreaterThanOrEqual(0);
        expect(extra).toBeLessThanOrEqual(0.4);
        // The steepest place of the fall is its middle: 1.5 times the mean slope.
        const step = 0.01;
        expect(Math.abs(extraAt(wood, x + step, y) - extra)).toBeLessThanOrEqual(
          (1.5 * 0.4 * step) / 15 + WELD,
        );
      }),
    );
  },
);

const WELD = 1 / 1_000_000;

test('what an area adds leaves level, is half gone half way out, and comes in level', () => {
  const at = (share: number): number => extraAt(thick(post), 16 + 3 + 15 * share, 150) / 0.4;
  expect(at(0.25)).toBeCloseTo(27 / 32, 12);
  expect(at(0.5)).toBeCloseTo(1 / 2, 12);
  expect(at(0.75)).toBeCloseTo(5 / 32, 12);
  for (const share of [0.01, 0.99]) expect(Math.abs(at(share) - Math.round(at(share)))).toBeLessThan(0.0004);
});

test.each([post, bar])('the places of a $name lie in it, out to its sides and ends', (area) => {
  const places = placesInArea(area);
  for (const { x, y } of places) expect(distanceToArea(area, x, y)).toBeLessThan(WELD);
  const reach = (of: (at: { x: number; y: number }) => number): number =>
    Math.max(...places.map(of)) - Math.min(...places.map(of));
  expect(reach(({ y }) => y)).toBeGreaterThan(0.99 * (area.to.y - area.from.y + 2 * area.halfWidthMm));
  expect(reach(({ x }) => x)).toBeGreaterThan(1.9 * area.halfWidthMm);
});
