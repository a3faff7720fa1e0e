import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simpleLoopFaults } from '../../../test/laws/chain.ts';
import { convexLoops, sampleHalf } from '../../../test/laws/chainSamples.ts';
import { point } from '../base/index.ts';
import {
  areaOf,
  boundsOf,
  type Chain,
  chainThrough,
  circleChain,
  containsPoint,
  lengthOf,
  mirrorChain,
  nearestOn,
  offsetChain,
  outlineChain,
  placeChain,
  reverseChain,
  sampleChain,
  segments,
  selfCrossings,
} from './index.ts';

const outline = outlineChain(sampleHalf());
const square = chainThrough<'body'>([point(0, 0), point(10, 0), point(10, 10), point(0, 10)], true);

/** Loops of any shape: points at changing distances round a centre, joined by lines and arcs, kept when simple. */
const anyLoops: fc.Arbitrary<Chain<'body'>> = fc
  .array(
    fc.record({
      reach: fc.double({ min: 8, max: 100, noNaN: true }),
      bulge: fc.oneof(fc.constant(0), fc.double({ min: -0.6, max: 0.6, noNaN: true })),
    }),
    { minLength: 3, maxLength: 12 },
  )
  .map((rays) => ({
    closed: true,
    vertices: rays.map(({ reach, bulge }, index) => ({
      x: reach * Math.cos((2 * Math.PI * index) / rays.length),
      y: reach * Math.sin((2 * Math.PI * index) / rays.length),
      bulge,
    })),
  }))
  .filter((loop) => simpleLoopFaults(loop).length === 0 && areaOf(loop) > 1);

function totalArea(loops: readonly Chain<'body'>[]): number {
  return loops.reduce((sum, loop) => sum + areaOf(loop), 0);
}

function totalLength(loops: readonly Chain<'body'>[]): number {
  return loops.reduce((sum, loop) => sum + lengthOf(loop), 0);
}

function sourceDistances(loops: readonly Chain<'body'>[], source: Chain<'body'>): readonly number[] {
  return loops.flatMap((loop) =>
    segments(loop).length === 0 ? [] : sampleChain(loop, 0.05).map((p) => nearestOn(source, p).distanceMm),
  );
}

describe('offsets that can be checked by hand', () => {
  test('a circle of 10 mm grows to 13 mm, shrinks to 4 mm, and vanishes at 10 mm', () => {
    const circle = circleChain(point<'body'>(1, 2), 10);
    expect(totalArea(offsetChain(circle, 3, { join: 'round' }))).toBeCloseTo(169 * Math.PI, 9);
    expect(totalArea(offsetChain(circle, -6, { join: 'round' }))).toBeCloseTo(16 * Math.PI, 9);
    expect(offsetChain(circle, -10, { join: 'round' })).toEqual([]);
    expect(offsetChain(circle, -12, { join: 'mitre' })).toEqual([]);
  });

  test('a square keeps its corners with mitres and rounds them on request', () => {
    const mitred = offsetChain(square, 2, { join: 'mitre' });
    expect(totalArea(mitred)).toBeCloseTo(196, 9);
    expect(mitred[0]?.vertices).toHaveLength(8 + 4);
    expect(totalArea(offsetChain(square, 2, { join: 'round' }))).toBeCloseTo(100 + 80 + 4 * Math.PI, 9);
    expect(totalArea(offsetChain(square, -2, { join: 'round' }))).toBeCloseTo(36, 9);
    expect(offsetChain(square, -5, { join: 'round' })).toEqual([]);
  });

  test('a mitre beyond its limit is rounded', () => {
    const wedge = chainThrough<'body'>([point(0, 0), point(100, -2), point(100, 2)], true);
    const limited = offsetChain(wedge, 1, { join: 'mitre' });
    expect(boundsOf(limited[0] ?? wedge).min.x).toBeCloseTo(-1, 6);
    const free = offsetChain(wedge, 1, { join: 'mitre', mitreLimit: 100 });
    expect(boundsOf(free[0] ?? wedge).min.x).toBeCloseTo(-1 / Math.sin(Math.atan(0.02)), 6);
  });

  test('a dumbbell falls into two loops inwards, and a horseshoe closes round a hole outwards', () => {
    const dumbbell = chainThrough<'body'>(
      [
        point(0, 0),
        point(10, 0),
        point(10, 4),
        point(20, 4),
        point(20, 0),
        point(30, 0),
        point(30, 10),
        point(20, 10),
        point(20, 6),
        point(10, 6),
        point(10, 10),
        point(0, 10),
      ],
      true,
    );
    const inside = offsetChain(dumbbell, -1.5, { join: 'mitre' });
    expect(inside.map((loop) => Math.round(areaOf(loop) * 1e6) / 1e6)).toEqual([49, 49]);
    const horseshoe = chainThrough<'body'>(
      [
        point(0, 0),
        point(30, 0),
        point(30, 30),
        point(16, 30),
        point(16, 27),
        point(27, 27),
        point(27, 3),
        point(3, 3),
        point(3, 27),
        point(14, 27),
        point(14, 30),
        point(0, 30),
      ],
      true,
    );
    const outside = offsetChain(horseshoe, 1.5, { join: 'mitre' });
    expect(outside.map((loop) => Math.round(areaOf(loop) * 1e6) / 1e6)).toEqual([33 * 33, -21 * 21]);
  });
});

describe('laws of an offset', () => {
  test('the outline of an instrument keeps every distance to a millionth of a millimetre', () => {
    for (const distance of [-30, -20, -12, -7, -4, -1, -0.05, 0.05, 1, 4, 7, 12, 20, 30]) {
      const loops = offsetChain(outline, distance, { join: 'round' });
      expect(loops.length).toBeGreaterThan(0);
      for (const loop of loops) expect(simpleLoopFaults(loop)).toEqual([]);
      for (const found of sourceDistances(loops, outline)) {
        expect(Math.abs(found - Math.abs(distance))).toBeLessThan(1e-6);
      }
    }
  });

  test('any simple loop keeps the distance, on the right side, in simple closed loops', () => {
    fc.assert(
      fc.property(anyLoops, fc.double({ min: -60, max: 60, noNaN: true }), (loop, distance) => {
        fc.pre(Math.abs(distance) > 1e-3);
        const loops = offsetChain(loop, distance, { join: 'round' });
        for (const each of loops) expect(simpleLoopFaults(each)).toEqual([]);
        for (const found of sourceDistances(loops, loop)) {
          expect(Math.abs(found - Math.abs(distance))).toBeLessThan(1e-6);
        }
        for (const { vertices } of loops) {
          for (const vertex of vertices) expect(containsPoint(loop, vertex)).toBe(distance < 0);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('mitred loops are simple and enclose the round ones', () => {
    fc.assert(
      fc.property(anyLoops, fc.double({ min: -40, max: 40, noNaN: true }), (loop, distance) => {
        fc.pre(Math.abs(distance) > 1e-3);
        const mitred = offsetChain(loop, distance, { join: 'mitre' });
        const round = offsetChain(loop, distance, { join: 'round' });
        for (const each of mitred) expect(simpleLoopFaults(each)).toEqual([]);
        const grown = (totalArea(mitred) - totalArea(round)) * Math.sign(distance);
        expect(grown).toBeGreaterThan(-1e-5 * lengthOf(loop));
      }),
      { numRuns: 200 },
    );
  });

  test('a convex loop grows by L d + π d² and comes back when the offset is taken back', () => {
    fc.assert(
      fc.property(convexLoops, fc.double({ min: 0.01, max: 100, noNaN: true }), (loop, distance) => {
        const grown = offsetChain(loop, distance, { join: 'round' });
        expect(grown).toHaveLength(1);
        const wanted = areaOf(loop) + lengthOf(loop) * distance + Math.PI * distance * distance;
        expect(Math.abs(totalArea(grown) - wanted)).toBeLessThan(1e-6 * totalLength(grown));
        const back = grown.flatMap((each) => offsetChain(each, -distance, { join: 'round' }));
        expect(Math.abs(totalArea(back) - areaOf(loop))).toBeLessThan(1e-5 * lengthOf(loop));
        for (const found of sourceDistances(back, loop)) expect(found).toBeLessThan(3e-6);
      }),
      { numRuns: 120 },
    );
  });

  test('turned, enlarged, mirrored or walked backwards, a loop has the same offset so changed', () => {
    fc.assert(
      fc.property(
        anyLoops,
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (loop, distance, turnRad) => {
          fc.pre(Math.abs(distance) > 0.01);
          const plain = totalArea(offsetChain(loop, distance, { join: 'round' }));
          const near = 1e-4 * lengthOf(loop);
          const turned: Chain<'body'> = placeChain(loop, { turnRad, shift: [40, -7], scale: 2 });
          const placed = totalArea(offsetChain(turned, 2 * distance, { join: 'round' })) / 4;
          const backward = offsetChain(reverseChain(loop), distance, { join: 'round' });
          const mirrored = offsetChain(mirrorChain(loop), distance, { join: 'round' });
          for (const area of [placed, -totalArea(backward), -totalArea(mirrored)]) {
            expect(Math.abs(area - plain)).toBeLessThan(near);
          }
        },
      ),
      { numRuns: 100 },
    );
  });
});

test('an edge of many short lines that bend slightly either way is offset at every distance', () => {
  for (let bend = 1; bend <= 40; bend++) {
    const count = 160;
    const edge = Array.from({ length: count + 1 }, (_, index) => {
      const x = 0.656229654947917 * index;
      // Joints turn by a ten-thousandth to a hundredth of a radian: tails overlap by as much of the distance.
      return { x, y: -8 - bend * 0.07 * Math.cos((2.3 * Math.PI * index) / count), bulge: 0 };
    });
    const right = edge.at(-1)?.x ?? 0;
    const plate: Chain<'drawing'> = {
      closed: true,
      vertices: [...edge, { x: right, y: 14, bulge: 0 }, { x: 0, y: 14, bulge: 0 }],
    };
    for (const distanceMm of [-0.3, -0.75, -0.8, -1, 0.5]) {
      const [loop, ...others] = offsetChain(plate, distanceMm, { join: 'mitre' });
      expect(others).toEqual([]);
      expect(selfCrossings(loop as Chain<'drawing'>)).toEqual([]);
      const grownMm2 = areaOf(loop as Chain<'drawing'>) - areaOf(plate);
      expect(grownMm2 / (distanceMm * lengthOf(plate))).toBeGreaterThan(0.9);
    }
  }
});
