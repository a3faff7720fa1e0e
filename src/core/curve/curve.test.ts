import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainFaults, simpleLoopFaults } from '../../../test/laws/chain.ts';
import { convexLoops, sampleHalf, tangentChain } from '../../../test/laws/chainSamples.ts';
import { type Point, point } from '../base/index.ts';
import {
  arcOf,
  areaOf,
  boundsOf,
  type Chain,
  chainThrough,
  circleChain,
  closeChain,
  containsPoint,
  headingOn,
  intersections,
  joinChains,
  lengthOf,
  mirrorChain,
  momentsOf,
  nearestOn,
  outlineChain,
  parallelChain,
  placeChain,
  pointAlong,
  pointOn,
  reverseChain,
  sampleChain,
  segments,
  selfCrossings,
  subChain,
} from './index.ts';

const circle = circleChain(point<'body'>(3, -2), 10);
const square = chainThrough<'body'>([point(0, 0), point(4, 0), point(4, 4), point(0, 4), point(0, 0)], true);
const outline = outlineChain(sampleHalf());
const anyPoint = fc
  .record({
    x: fc.double({ min: -250, max: 250, noNaN: true }),
    y: fc.double({ min: -250, max: 400, noNaN: true }),
  })
  .map((at): Point<'body'> => at);

function polygonArea(points: readonly Point<'body'>[]): number {
  return points.reduce((sum, a, index) => {
    const b = points[(index + 1) % points.length] ?? a;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

describe('one arc', () => {
  const quarter = segments<'body'>({
    closed: false,
    vertices: [
      { x: 10, y: 0, bulge: Math.tan(Math.PI / 8) },
      { x: 0, y: 10, bulge: 0 },
    ],
  })[0];
  if (!quarter) throw new Error('no segment');

  test('a quarter turn round the origin has its centre, radius and headings there', () => {
    const arc = arcOf(quarter);
    expect(arc?.centre.x).toBeCloseTo(0, 12);
    expect(arc?.centre.y).toBeCloseTo(0, 12);
    expect(arc?.radiusMm).toBeCloseTo(10, 12);
    expect(arc?.sweepRad).toBeCloseTo(Math.PI / 2, 12);
    expect(headingOn(quarter, 0)).toBeCloseTo(Math.PI / 2, 12);
    expect(headingOn(quarter, 1)).toBeCloseTo(Math.PI, 12);
    expect(pointOn(quarter, 0.5).x).toBeCloseTo(10 * Math.SQRT1_2, 12);
  });

  test('an arc as flat as a line keeps its length, points and headings', () => {
    for (const bulge of [0, 1e-12, 1e-9, 1e-7, 1e-5]) {
      const flat = { start: point<'body'>(0, 0), end: point<'body'>(100, 0), bulge };
      expect(pointOn(flat, 0.5).y).toBeCloseTo(-50 * bulge, 9);
      expect(
        lengthOf({
          closed: false,
          vertices: [
            { x: 0, y: 0, bulge },
            { x: 100, y: 0, bulge: 0 },
          ],
        }),
      ).toBeCloseTo(100, 7);
      expect(headingOn(flat, 0)).toBeCloseTo(-2 * bulge, 9);
    }
  });
});

describe('measures', () => {
  test('a circle of 10 mm has its length, area, moments and box', () => {
    expect(lengthOf(circle)).toBeCloseTo(20 * Math.PI, 10);
    expect(areaOf(circle)).toBeCloseTo(100 * Math.PI, 10);
    expect(areaOf(circleChain(point(0, 0), 10, true))).toBeCloseTo(-100 * Math.PI, 10);
    const moments = momentsOf(circle);
    expect(moments.centroid.x).toBeCloseTo(3, 10);
    expect(moments.centroid.y).toBeCloseTo(-2, 10);
    expect(moments.aboutXMm4).toBeCloseTo((Math.PI * 1e4) / 4, 6);
    expect(moments.productMm4).toBeCloseTo(0, 8);
    const box = boundsOf(circle);
    for (const [found, wanted] of [
      [box.min.x, -7],
      [box.min.y, -12],
      [box.max.x, 13],
      [box.max.y, 8],
    ] as const)
      expect(found).toBeCloseTo(wanted, 10);
  });

  test('a square of 4 mm has second moments a⁴ / 12', () => {
    expect(momentsOf(square).aboutYMm4).toBeCloseTo(256 / 12, 10);
    expect(momentsOf(square).areaMm2).toBeCloseTo(16, 12);
  });

  test('the exact area of any rounded loop is the limit of the areas of its polygons', () => {
    fc.assert(
      fc.property(convexLoops, (loop) => {
        const fine = polygonArea(sampleChain(loop, 1e-4));
        expect(Math.abs(areaOf(loop) - fine)).toBeLessThanOrEqual(1e-4 * lengthOf(loop) + 1e-9);
        expect(momentsOf(loop).areaMm2).toBe(areaOf(loop));
      }),
      { numRuns: 60 },
    );
  });

  test('sampled points keep within the chord error and inside the box', () => {
    fc.assert(
      fc.property(convexLoops, fc.double({ min: 0.001, max: 3, noNaN: true }), (loop, error) => {
        const points = sampleChain(loop, error);
        const { min, max } = boundsOf(loop);
        points.forEach((a, index) => {
          const b = points[(index + 1) % points.length] ?? a;
          const middle = point<'body'>((a.x + b.x) / 2, (a.y + b.y) / 2);
          expect(nearestOn(loop, middle).distanceMm).toBeLessThanOrEqual(error + 1e-9);
          expect(a.x).toBeGreaterThanOrEqual(min.x - 1e-9);
          expect(a.y).toBeLessThanOrEqual(max.y + 1e-9);
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe('nearest place and inside', () => {
  test('the side of a square is told at its edges and at its corners', () => {
    expect(nearestOn(square, point(2, 1))).toMatchObject({
      distanceMm: 1,
      segment: 0,
      fraction: 0.5,
      side: 1,
    });
    expect(nearestOn(square, point(2, -1))).toMatchObject({ distanceMm: 1, side: -1 });
    expect(nearestOn(square, point(5, -0.1)).side).toBe(-1);
    expect(nearestOn(square, point(4.1, -5)).side).toBe(-1);
    expect(nearestOn(square, point(4, 0)).side).toBe(0);
  });

  test('the nearest place is on the chain and no sampled point is nearer; its side agrees with inside', () => {
    const samples = sampleChain(outline, 0.01);
    fc.assert(
      fc.property(anyPoint, (p) => {
        const foot = nearestOn(outline, p);
        const segment = segments(outline)[foot.segment];
        if (!segment) throw new Error('no segment');
        const again = pointOn(segment, foot.fraction);
        expect(Math.hypot(again.x - foot.point.x, again.y - foot.point.y)).toBeLessThan(1e-9);
        for (const s of samples)
          expect(Math.hypot(s.x - p.x, s.y - p.y)).toBeGreaterThan(foot.distanceMm - 1e-9);
        if (foot.distanceMm > 1e-6) expect(containsPoint(outline, p)).toBe(foot.side === 1);
      }),
      { numRuns: 150 },
    );
  });
});

describe('crossings', () => {
  test('two circles of 5 mm, 8 mm apart, cross 3 mm above and below', () => {
    const found = intersections(circleChain(point<'body'>(0, 0), 5), circleChain(point<'body'>(8, 0), 5));
    expect(found.map(({ point: p }) => [p.x, p.y].map((value) => Math.round(value * 1e9) / 1e9))).toEqual([
      [4, 3],
      [4, -3],
    ]);
  });

  test('circles and lines that touch share one point', () => {
    const a = circleChain(point<'body'>(0, 0), 5);
    expect(intersections(a, circleChain(point<'body'>(6, 8), 5))).toHaveLength(1);
    expect(intersections(a, circleChain(point<'body'>(1.2, 1.6), 3))).toHaveLength(1);
    expect(intersections(a, chainThrough<'body'>([point(-9, 5), point(9, 5)], false))).toHaveLength(1);
    expect(intersections(a, chainThrough<'body'>([point(-9, 5.001), point(9, 5.001)], false))).toHaveLength(
      0,
    );
  });

  test('lines that run along each other share the ends of the common stretch', () => {
    const a = chainThrough<'body'>([point(0, 0), point(10, 0)], false);
    const b = chainThrough<'body'>([point(12, 0), point(6, 0)], false);
    expect(intersections(a, b).map(({ point: p }) => p.x)).toEqual([6, 10]);
  });

  test('crossings lie on both chains and do not depend on the order', () => {
    fc.assert(
      fc.property(
        convexLoops,
        anyPoint,
        fc.double({ min: 5, max: 150, noNaN: true }),
        (loop, centre, radius) => {
          const round = circleChain(centre, radius);
          const found = intersections(loop, round);
          for (const { point: p } of found) {
            expect(nearestOn(loop, p).distanceMm).toBeLessThan(1e-6);
            expect(nearestOn(round, p).distanceMm).toBeLessThan(1e-6);
          }
          expect(intersections(round, loop)).toHaveLength(found.length);
        },
      ),
      { numRuns: 80 },
    );
  });

  test('a figure of eight crosses itself once and a square never', () => {
    expect(selfCrossings(square)).toEqual([]);
    expect(selfCrossings(circle)).toEqual([]);
    const eight = chainThrough<'body'>([point(0, 0), point(4, 4), point(4, 0), point(0, 4)], true);
    expect(selfCrossings(eight)).toMatchObject([{ point: { x: 2, y: 2 } }]);
  });
});

describe('moving, turning, cutting', () => {
  test('twice reversed or twice mirrored is the same chain', () => {
    for (const chain of [outline, sampleHalf().cBout]) {
      expect(reverseChain(reverseChain(chain))).toEqual(chain);
      expect(mirrorChain(mirrorChain(chain))).toEqual(chain);
      expect(areaOf(mirrorChain(outline))).toBeCloseTo(-areaOf(outline), 8);
      expect(lengthOf(reverseChain(chain))).toBeCloseTo(lengthOf(chain), 9);
    }
  });

  test('a placed chain keeps its shape: lengths by the scale, areas by its square', () => {
    const placed: Chain<'drawing'> = placeChain(outline, { turnRad: 0.7, shift: [11, -5], scale: 2 });
    expect(lengthOf(placed)).toBeCloseTo(2 * lengthOf(outline), 9);
    expect(areaOf(placed)).toBeCloseTo(4 * areaOf(outline), 6);
  });

  test('a part of a closed chain and the part that is left make the whole length', () => {
    const there = subChain(outline, { segment: 3, fraction: 0.25 }, { segment: 9, fraction: 0.5 });
    const back = subChain(outline, { segment: 9, fraction: 0.5 }, { segment: 3, fraction: 0.25 });
    expect(lengthOf(there) + lengthOf(back)).toBeCloseTo(lengthOf(outline), 9);
    const whole = closeChain(joinChains(there, back));
    expect(areaOf(whole)).toBeCloseTo(areaOf(outline), 8);
    expect(simpleLoopFaults(whole)).toEqual([]);
  });

  test('chains that do not meet are not joined', () => {
    const a = chainThrough<'body'>([point(0, 0), point(1, 0)], false);
    const b = chainThrough<'body'>([point(1.1, 0), point(2, 0)], false);
    expect(() => joinChains(a, b)).toThrow(/apart/);
  });

  test('half the length along a circle is its opposite point', () => {
    const p = pointAlong(circle, 10 * Math.PI);
    expect([p.x, p.y].map((value) => Math.round(value * 1e9) / 1e9)).toEqual([-7, -2]);
    expect(pointAlong(circle, 30 * Math.PI).x).toBeCloseTo(-7, 9);
  });
});

describe('parallels', () => {
  test('the parallel of a section keeps headings and lies at the distance everywhere', () => {
    const { cBout } = sampleHalf();
    const moved = parallelChain(cBout, 4);
    if (!moved.ok) throw new Error('refused');
    expect(chainFaults(moved.value)).toEqual([]);
    const radii = (chain: Chain<'body'>) => segments(chain).map((segment) => arcOf(segment)?.radiusMm ?? 0);
    radii(moved.value).forEach((radius, index) => {
      expect(radius).toBeCloseTo((radii(cBout)[index] ?? 0) + 4, 9);
    });
    for (const p of sampleChain(moved.value, 0.1)) expect(nearestOn(cBout, p).distanceMm).toBeCloseTo(4, 9);
  });

  test('an arc that the distance uses up is refused with its radius and the distance', () => {
    const moved = parallelChain(tangentChain(0, 0, 0, [[5, 90]]), 5.5);
    expect(moved.ok).toBe(false);
    if (!moved.ok) expect(moved.faults[0]?.found).toMatch(/5\.00 mm.*5\.50 mm/);
    expect(parallelChain(chainThrough<'body'>([point(0, 0), point(9, 0), point(9, 9)], false), 1).ok).toBe(
      false,
    );
  });
});

describe('the whole outline of a half', () => {
  test('it is closed, simple, anticlockwise and the mirror image of itself to the last bit', () => {
    expect(simpleLoopFaults(outline)).toEqual([]);
    expect(areaOf(outline)).toBeGreaterThan(0);
    const key = (chain: Chain<'body'>) =>
      segments(chain)
        .map(({ start, end, bulge }) => [start.x, start.y, end.x, end.y, bulge].join(' '))
        .sort();
    expect(key(reverseChain(mirrorChain(outline)))).toEqual(key(outline));
  });

  test('its end arcs cross the centre line without a vertex and it keeps the length of the body', () => {
    expect(outline.vertices.every(({ x }) => Math.abs(x) > 1)).toBe(true);
    const box = boundsOf(outline);
    expect(box.min.y).toBeCloseTo(0, 9);
    expect(box.max.y).toBeCloseTo(sampleHalf().upperBout.vertices.at(-1)?.y ?? 0, 9);
    expect(outline.vertices).toHaveLength(28);
  });
});
