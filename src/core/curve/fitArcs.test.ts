import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainFaults, simpleLoopFaults } from '../../../test/laws/chain.ts';
import { sampleHalf, tangentChain } from '../../../test/laws/chainSamples.ts';
import { type Point, point, seededNormal, seededRandom } from '../base/index.ts';
import {
  areaOf,
  type Chain,
  fitArcs,
  headingOn,
  nearestOn,
  outlineChain,
  sampleChain,
  segments,
  sweepOf,
} from './index.ts';

function accepted(points: readonly Point<'body'>[], options: Parameters<typeof fitArcs>[1]) {
  const fit = fitArcs(points, options);
  if (!fit.ok) throw new Error(JSON.stringify(fit.faults));
  return fit.value;
}

/** Points of an ellipse of half axes 178 and 104 mm, once round. */
function ellipse(count: number): Point<'body'>[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * index) / count;
    return point(178 * Math.cos(angle), 104 * Math.sin(angle));
  });
}

function kinksRad(chain: Chain<'body'>): readonly number[] {
  const all = segments(chain);
  return all.slice(chain.closed ? 0 : 1).map((segment, index) => {
    const before = chain.closed ? all.at(index - 1) : all[index];
    if (!before) throw new Error('no segment before');
    return Math.abs(Math.sin(headingOn(segment, 0) - headingOn(before, 1)));
  });
}

describe('arcs that were there are found again', () => {
  test('each section of a half outline gives back its own arcs', () => {
    for (const section of Object.values(sampleHalf()) as Chain<'body'>[]) {
      const fit = accepted(sampleChain(section, 0.0005), { toleranceMm: 0.002 });
      expect(segments(fit.chain)).toHaveLength(segments(section).length);
      expect(fit.maxMm).toBeLessThan(1e-9);
    }
  });

  test('a chain of 36 arcs gives back its 36 arcs', () => {
    const radii = [40, 90, 25, -60, 120, 33, -45, 80, 28];
    const chain = tangentChain(
      0,
      0,
      0,
      Array.from({ length: 36 }, (_, index) => [
        (radii[index % radii.length] ?? 1) * (1 + (index % 5) / 20),
        14 + (index % 4) * 6,
      ]),
    );
    const fit = accepted(sampleChain(chain, 0.001), { toleranceMm: 0.003 });
    expect(segments(fit.chain)).toHaveLength(36);
    expect(fit.maxMm).toBeLessThan(1e-6);
  });

  test('a straight run is one line and a circle a loop of few arcs', () => {
    const line = accepted(
      [0, 1, 2, 3, 4].map((x) => point(x, 2 * x)),
      { toleranceMm: 0.01 },
    );
    expect(segments(line.chain)).toHaveLength(1);
    expect(
      Math.abs(sweepOf(segments(line.chain)[0] ?? { start: point(0, 0), end: point(1, 0), bulge: 9 })),
    ).toBeLessThan(1e-9);
    const round = Array.from({ length: 60 }, (_, k) =>
      point<'body'>(9 * Math.cos(k / 9.55), 9 * Math.sin(k / 9.55)),
    );
    const fit = accepted(round, { toleranceMm: 0.01, closed: true });
    expect(areaOf(fit.chain)).toBeCloseTo(81 * Math.PI, 2);
  });
});

describe('laws of a fit', () => {
  test('joints are tangent, ends are kept, and ten times denser points keep the tolerance', () => {
    const dense = ellipse(2000);
    const fit = accepted(
      dense.filter((_, index) => index % 10 === 0),
      { toleranceMm: 0.1, closed: true },
    );
    expect(simpleLoopFaults(fit.chain)).toEqual([]);
    expect(Math.max(...kinksRad(fit.chain))).toBeLessThan(1e-9);
    for (const p of dense) expect(nearestOn(fit.chain, p).distanceMm).toBeLessThan(0.105);
    // 13.3 arcs are the least for this curve and tolerance, by k' h³ / 124.7.
    expect(segments(fit.chain).length).toBeLessThanOrEqual(Math.ceil(1.1 * 13.3) + 1);
  });

  test('through noise the line lies nearer to the truth than the points do', () => {
    const half = sampleHalf().lowerBout;
    const noise = seededNormal;
    const random = seededRandom(11);
    const truth = sampleChain(half, 0.0005);
    const last = truth.length - 1;
    const noisy = truth.map(({ x, y }, index) =>
      index === 0 || index === last
        ? point<'body'>(x, y)
        : point<'body'>(x + 0.03 * noise(random), y + 0.03 * noise(random)),
    );
    const fit = accepted(noisy, { toleranceMm: 0.12, startHeadingRad: 0 });
    expect(segments(fit.chain).length).toBeLessThanOrEqual(6);
    for (const p of truth) expect(nearestOn(fit.chain, p).distanceMm).toBeLessThan(0.06);
    const first = segments(fit.chain)[0];
    expect(first ? headingOn(first, 0) : 1).toBeCloseTo(0, 9);
  });

  test('marked corners stay corners, at their points', () => {
    const outline = outlineChain(sampleHalf());
    const points = sampleChain(outline, 0.002);
    const corners = outline.vertices
      .filter((vertex, index) => {
        const before = segments(outline).at(index - 1);
        const after = segments(outline)[index];
        return (
          before && after && Math.abs(Math.sin(headingOn(before, 1) - headingOn(after, 0))) > 1e-6 && vertex
        );
      })
      .map((vertex) => points.findIndex((p) => p.x === vertex.x && p.y === vertex.y));
    expect(corners).toHaveLength(8);
    const fit = accepted(points, { toleranceMm: 0.01, corners, closed: true });
    expect(simpleLoopFaults(fit.chain)).toEqual([]);
    expect(segments(fit.chain)).toHaveLength(28);
    for (const corner of corners) {
      const at = points[corner];
      expect(fit.chain.vertices.some(({ x, y }) => x === at?.x && y === at.y)).toBe(true);
    }
    expect(Math.abs(areaOf(fit.chain) - areaOf(outline))).toBeLessThan(1e-6);
  });

  test('any run of arcs is fitted within the tolerance by no more arcs than it has', () => {
    const stretch = fc.tuple(
      fc.double({ min: 15, max: 150, noNaN: true }),
      fc.double({ min: 20, max: 60, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(stretch, { minLength: 1, maxLength: 5 }), (stretches) => {
        const chain = tangentChain(
          3,
          4,
          20,
          stretches.map(([radius, sweep], index) => [index % 2 ? -radius : radius, sweep]),
        );
        const fit = accepted(sampleChain(chain, 0.002), { toleranceMm: 0.02 });
        expect(chainFaults(fit.chain)).toEqual([]);
        expect(fit.maxMm).toBeLessThanOrEqual(0.02);
        expect(segments(fit.chain).length).toBeLessThanOrEqual(stretches.length);
        expect(Math.max(0, ...kinksRad(fit.chain))).toBeLessThan(1e-9);
      }),
      { numRuns: 25 },
    );
  });
});

describe('what cannot be fitted is refused in words', () => {
  test('too few points, a corner that is no point, a tolerance of nothing', () => {
    const codes = (fit: ReturnType<typeof fitArcs>) => (fit.ok ? [] : fit.faults.map(({ code }) => code));
    expect(codes(fitArcs([point(1, 1), point(1, 1)], { toleranceMm: 0.1 }))).toEqual(['fit.points']);
    expect(codes(fitArcs([point(0, 0), point(1, Number.NaN)], { toleranceMm: 0.1 }))).toEqual(['fit.points']);
    expect(codes(fitArcs([point(0, 0), point(1, 1)], { toleranceMm: 0.1, corners: [7] }))).toEqual([
      'fit.points',
    ]);
    expect(codes(fitArcs([point(0, 0), point(1, 1)], { toleranceMm: 0 }))).toEqual(['fit.tolerance']);
  });

  test('points that scatter beyond the tolerance', () => {
    const random = seededRandom(3);
    const rough = Array.from({ length: 40 }, (_, index) => point<'body'>(index, random()));
    const fit = fitArcs(rough, { toleranceMm: 0.0001 });
    expect(fit.ok ? [] : fit.faults.map(({ code }) => code)).toEqual(['fit.rough']);
  });
});
