import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CORNER_TIPS, meantHalf } from '../../../../demo/villageFiddle.ts';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { outlineHabit } from '../../knowledge/index.ts';
import type { HalfOutline } from '../halfOutline.ts';
import { nearestOn } from '../nearestOn.ts';
import { outlineChain } from '../outlineChain.ts';
import { headingOn, pointOn, segmentLength, segments } from '../segment.ts';
import { draftHalfOutline } from './draftHalfOutline.ts';
import { type FittedHalf, fitHalfOutline } from './fitHalfOutline.ts';
import type { OutlinePoint } from './fitStart.ts';
import type { OutlineTargets } from './outlineTargets.ts';

const violin = outlineHabit('violin');

function drafted(change: Partial<OutlineTargets>): HalfOutline {
  const result = draftHalfOutline({ ...violin.usualSizes, ...change }, violin);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.half;
}

/** Points a millimetre apart along a half, corner ends too; `named` tells each its stretch. */
function pointsAlong(half: HalfOutline, stepMm: number, named = true): OutlinePoint[] {
  const tips = (a: { x: number; y: number } | undefined, b: { x: number; y: number } | undefined) => ({
    closed: false,
    vertices: [a, b].map((v) => ({ x: v?.x ?? 0, y: v?.y ?? 0, bulge: 0 })),
  });
  const stretches = [
    ['lowerBout', half.lowerBout],
    ['lowerCorner', tips(half.lowerBout.vertices.at(-1), half.cBout.vertices[0])],
    ['cBout', half.cBout],
    ['upperCorner', tips(half.cBout.vertices.at(-1), half.upperBout.vertices[0])],
    ['upperBout', half.upperBout],
  ] as const;
  return stretches.flatMap(([section, chain]) =>
    segments(chain).flatMap((segment) => {
      const count = Math.ceil(segmentLength(segment) / stepMm);
      return Array.from({ length: count }, (_, i) => ({
        ...pointOn(segment, (i + 0.5) / count),
        weight: 1,
        ...(named ? { section } : {}),
      }));
    }),
  );
}

function fitted(points: readonly OutlinePoint[], bodyLengthMm?: number): FittedHalf {
  const result = fitHalfOutline(points, violin, bodyLengthMm === undefined ? {} : { bodyLengthMm });
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

/** The farthest that the points of one half lie from the other. */
function apartMm(one: HalfOutline, other: HalfOutline): number {
  const whole = outlineChain(other);
  return Math.max(...pointsAlong(one, 0.7).map((p) => nearestOn(whole, p).distanceMm));
}

const ODD: Partial<OutlineTargets> = {
  waistMm: 106,
  upperBoutMm: 163,
  lowerCornerStationMm: 143,
  upperCornerStationMm: 235,
  upperCornersMm: 158,
};

test('the outline that the points were taken from comes back', () => {
  const half = drafted(ODD);
  const result = fitted(pointsAlong(half, 1), 355);
  expect(result.maxMm).toBeLessThan(0.01);
  expect(result.setAside).toBe(0);
  expect(apartMm(half, result.half)).toBeLessThan(0.02);
  expect(result.half.upperBout.vertices.at(-1)?.y).toBe(355);
});

test('points that do not say where they belong find their arcs too', () => {
  const half = drafted(ODD);
  expect(apartMm(half, fitted(pointsAlong(half, 1, false), 355).half)).toBeLessThan(0.02);
});

test('body length and lower end are found where they are not given', () => {
  const half = drafted(ODD);
  const raised = pointsAlong(half, 1).map((p) => ({ ...p, y: p.y + 40 }));
  const hidden = raised.filter(({ x, y }) => !(x < 20 && y > 300));
  const result = fitted(hidden);
  expect(result.lowerEndMm).toBeCloseTo(40, 2);
  expect(result.bodyLengthMm).toBeCloseTo(355, 1);
  // What has no weight says nothing, not even how far the body reaches.
  const weightless = [-60, 500].map((y) => ({ x: 20, y, weight: 0 }));
  expect(fitted([...hidden, ...weightless])).toEqual(result);
});

test('noise of a tenth and a few gross outliers leave the outline within a tenth', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000 }), (seed) => {
      const random = seededRandom(seed);
      const half = drafted(ODD);
      const noisy = pointsAlong(half, 1).map((p) => ({
        ...p,
        x: p.x + 0.1 * seededNormal(random) + (random() < 0.03 ? 4 : 0),
        y: p.y + 0.1 * seededNormal(random),
      }));
      const result = fitted(noisy, 355);
      expect(result.setAside).toBeGreaterThan(0.01);
      expect(result.setAside).toBeLessThan(0.08);
      const whole = outlineChain(result.half);
      const bouts = pointsAlong(half, 1).filter(({ section }) => section?.endsWith('Bout'));
      const off = bouts.map((p) => nearestOn(whole, p).distanceMm);
      expect(Math.sqrt(off.reduce((sum, d) => sum + d * d, 0) / off.length)).toBeLessThan(0.06);
      expect(Math.max(...off)).toBeLessThan(0.35);
    }),
    { numRuns: 8, seed: 11 },
  );
});

test('worn corners: tips rounded off by a millimetre come back as corners', () => {
  const half = drafted(ODD);
  const tips = [half.lowerBout.vertices.at(-1), half.upperBout.vertices[0]];
  const worn = pointsAlong(half, 0.5).filter(
    (p) => !tips.some((tip) => tip && Math.hypot(p.x - tip.x, p.y - tip.y) < 1.5),
  );
  const { half: found } = fitted(worn, 355);
  const tip = found.lowerBout.vertices.at(-1) ?? { x: 0, y: 0 };
  expect(Math.hypot(tip.x - (tips[0]?.x ?? 0), tip.y - (tips[0]?.y ?? 0))).toBeLessThan(0.15);
});

test('an invented outline of splines, not of arcs, is followed with its tips within a quarter of a millimetre', () => {
  const tips = CORNER_TIPS.map(({ x, y }) => ({ x, y }));
  const curve = meantHalf(1);
  const at = tips.map((tip) => curve.findIndex((p) => Math.hypot(p.x - tip.x, p.y - tip.y) < 1e-6));
  const section = (i: number) => (i <= at[0] ? 'lowerBout' : i <= at[2] ? 'cBout' : 'upperBout');
  const points: OutlinePoint[] = curve.map((p, i) => ({ x: p.x, y: p.y, weight: 1, section: section(i) }));
  for (const [which, from, to] of [
    ['lowerCorner', tips[0], tips[1]],
    ['upperCorner', tips[2], tips[3]],
  ] as const)
    for (const share of [0.1, 0.3, 0.5, 0.7, 0.9])
      points.push({
        x: from.x + share * (to.x - from.x),
        y: from.y + share * (to.y - from.y),
        weight: 1,
        section: which,
      });
  const { half, rmsMm, maxMm } = fitted(points, 356.4);
  expect(rmsMm).toBeLessThan(0.06);
  expect(maxMm).toBeLessThan(0.25);
  const found = [
    half.lowerBout.vertices.at(-1),
    half.cBout.vertices[0],
    half.cBout.vertices.at(-1),
    half.upperBout.vertices[0],
  ];
  found.forEach((tip, i) => {
    expect(Math.hypot((tip?.x ?? 0) - tips[i].x, (tip?.y ?? 0) - tips[i].y)).toBeLessThan(0.25);
  });
});

test('each stretch of a fitted outline is tangent throughout and level at both ends', () => {
  const random = seededRandom(5);
  const noisy = pointsAlong(drafted({}), 1.5).map((p) => ({ ...p, x: p.x + 0.2 * seededNormal(random) }));
  const { half } = fitted(noisy, 355);
  for (const chain of [half.lowerBout, half.cBout, half.upperBout]) {
    const all = segments(chain);
    all.slice(1).forEach((segment, i) => {
      const turn = headingOn(segment, 0) - headingOn(all[i], 1);
      expect(Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)))).toBeLessThan(1e-9);
    });
  }
  expect(Math.sin(headingOn(segments(half.lowerBout)[0], 0))).toBeCloseTo(0, 12);
});

test('points on the lower bout alone are refused with what is missing', () => {
  const low = pointsAlong(drafted({}), 1).filter(({ y }) => y < 110);
  expect(fitHalfOutline(low, violin, { bodyLengthMm: 355 })).toMatchObject({
    ok: false,
    faults: [{ code: 'fit.too-few-points', found: expect.stringContaining('waist') }],
  });
  expect(fitHalfOutline([], violin)).toMatchObject({ ok: false });
});

test('an edge that sways and does not show a corner is refused for its loops, and fitted without any where a rough outline will do', () => {
  const half = drafted({ ...ODD, upperCornersMm: 157, upperBoutMm: 165 });
  const [waistTip, boutTip] = [half.cBout.vertices.at(-1), half.upperBout.vertices[0]];
  const away = (p: OutlinePoint, tip: { x: number; y: number } | undefined) =>
    Math.hypot(p.x - (tip?.x ?? 0), p.y - (tip?.y ?? 0));
  const points = pointsAlong(half, 1)
    .map((p) => ({ ...p, x: p.x + 0.7 * Math.sin(p.y / 12.3) }))
    .filter(
      (p) =>
        !p.section?.endsWith('Corner') &&
        !(p.section === 'cBout' && away(p, waistTip) < 22) &&
        !(p.section === 'upperBout' && away(p, boutTip) < 5),
    );
  const strict = fitHalfOutline(points, violin);
  expect(strict.ok ? [] : strict.faults.map(({ code }) => code)).toEqual(['fit.crosses']);
  const rough = fitHalfOutline(points, violin, { isRough: true });
  expect(rough.ok).toBe(true);
  if (!rough.ok) return;
  // Away from the corner it keeps to the points; the corner itself is a guess.
  const whole = outlineChain(rough.value.half);
  const off = points.filter((p) => away(p, waistTip) > 40).map((p) => nearestOn(whole, p).distanceMm);
  expect(Math.max(...off)).toBeLessThan(1.5);
});
