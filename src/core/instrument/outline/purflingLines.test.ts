import fc from 'fast-check';
import { expect, test } from 'vitest';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { contourFaults } from '../../../../test/laws/parts.ts';
import {
  type Chain,
  closeChain,
  containsPoint,
  type HalfOutline,
  headingOn,
  joinChains,
  nearestOn,
  pointOn,
  sampleChain,
  segments,
} from '../../curve/index.ts';
import { type PurflingLines, purflingLines } from './purflingLines.ts';
import type { StingSizes } from './purflingSting.ts';

const STING: StingSizes = { lengthMm: 0.8, asideMm: 0.7 };

function drawn(half: HalfOutline, toEdge: number, width: number, sting = STING): PurflingLines {
  const lines = purflingLines(half, 355, { purflingToEdge: toEdge, purflingWidth: width }, sting);
  if (!lines.ok) throw new Error(lines.faults[0]?.found);
  return lines.value;
}

const half = violinHalf();
const WIDE = [2.6, 3, 3.3] as const;

test('where the parallels meet inside the corner nothing is bent', () => {
  const lines = drawn(half, 3.75, 1.2);
  expect(lines.findings.map(({ code }) => code)).not.toContain('purfling.bent');
  for (const section of ['lowerBout', 'cBout', 'upperBout'] as const)
    for (const at of sampleChain(lines.outer.sections[section], 0.01))
      expect(nearestOn(half[section], at).distanceMm).toBeCloseTo(3.75, 6);
});

test.each(WIDE)('with %s mm to the edge both sides of a wide corner are bent to meet inside it', (toEdge) => {
  const lines = drawn(half, toEdge, 1.2);
  expect(lines.findings.map(({ code }) => code)).toContain('purfling.bent');
  for (const corner of ['lowerCorner', 'upperCorner'] as const) {
    expect(lines.outer[corner].kind).toBe('pointed');
    expect(lines.outer[corner].depthMm).toBeGreaterThan(0.25 * toEdge);
    expect(lines.inner[corner].depthMm).toBeGreaterThan(lines.outer[corner].depthMm + 1.2);
  }
  expect(contourFaults(lines.outer.chain, 'anticlockwise')).toEqual([]);
  expect(contourFaults(lines.inner.chain, 'anticlockwise')).toEqual([]);
});

test.each(WIDE)('with %s mm to the edge every joint of a bent side is tangent', (toEdge) => {
  const { outer } = drawn(half, toEdge, 1.2);
  for (const section of Object.values(outer.sections) as Chain<'body'>[]) {
    const pieces = segments(section);
    for (const [index, piece] of pieces.slice(1).entries()) {
      const before = pieces[index];
      if (!before) throw new Error('no piece');
      const turn = headingOn(piece, 0) - headingOn(before, 1);
      expect(Math.abs(Math.sin(turn))).toBeLessThan(1e-6);
    }
  }
});

test('both lines and the middle stay parallel, bent or not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 260, max: 420 }), fc.integer({ min: 90, max: 160 }), (edge, width) => {
      const [toEdge, wide] = [edge / 100, width / 100];
      const lines = drawn(half, toEdge, wide);
      for (const section of ['lowerBout', 'cBout', 'upperBout'] as const) {
        for (const at of sampleChain(lines.inner.sections[section], 0.02))
          expect(nearestOn(lines.outer.sections[section], at).distanceMm).toBeCloseTo(wide, 5);
        for (const at of sampleChain(lines.centre.sections[section], 0.02))
          expect(nearestOn(lines.outer.sections[section], at).distanceMm).toBeCloseTo(wide / 2, 5);
      }
    }),
    { numRuns: 12 },
  );
});

test('outside the last stretch before a corner a bent line is the parallel', () => {
  const lines = drawn(half, 3, 1.2);
  const off = (section: keyof HalfOutline): number =>
    Math.max(
      ...sampleChain(lines.outer.sections[section], 0.01)
        .filter(({ x, y }) =>
          [lines.corners.lower.apex, lines.corners.upper.apex].every(
            (apex) => Math.hypot(x - apex.x, y - apex.y) > 2.5 * 3 + 3,
          ),
        )
        .map((at) => Math.abs(nearestOn(half[section], at).distanceMm - 3)),
    );
  for (const section of ['lowerBout', 'cBout', 'upperBout'] as const) expect(off(section)).toBeLessThan(1e-6);
});

const TREBLE = closeChain(
  joinChains(
    half.lowerBout,
    link(half.lowerBout, half.cBout),
    half.cBout,
    link(half.cBout, half.upperBout),
    half.upperBout,
  ),
);
function link(arriving: Chain<'body'>, leaving: Chain<'body'>): Chain<'body'> {
  return {
    closed: false,
    vertices: [...arriving.vertices.slice(-1), ...leaving.vertices.slice(0, 1)].map(({ x, y }) => ({
      x,
      y,
      bulge: 0,
    })),
  };
}

test('a point of the purfling leaves along the middle of the mitre and bends toward the waist', () => {
  for (const [which, waistUp] of [
    ['lower', 1],
    ['upper', -1],
  ] as const) {
    const { corners } = drawn(half, 3.75, 1.2);
    const { apex, outwardRad, sting, shape } = corners[which];
    const tip = shape?.vertices[1];
    if (!tip) throw new Error('no point');
    const ahead = (tip.x - apex.x) * Math.cos(outwardRad) + (tip.y - apex.y) * Math.sin(outwardRad);
    const left = (tip.y - apex.y) * Math.cos(outwardRad) - (tip.x - apex.x) * Math.sin(outwardRad);
    expect(ahead).toBeCloseTo(sting.lengthMm, 9);
    expect(left).toBeCloseTo(waistUp * sting.asideMm, 9);
    // The waist lies above the lower corners and below the upper ones.
    expect(Math.sign(tip.y - (apex.y + sting.lengthMm * Math.sin(outwardRad)))).toBe(waistUp);
  }
});

test('a point is a clean shape inside the plate, leaves wood outside it, and its sides touch there', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 300, max: 420 }),
      fc.integer({ min: 20, max: 300 }),
      fc.integer({ min: -150, max: 150 }),
      (edge, length, aside) => {
        const toEdge = edge / 100;
        const lines = drawn(half, toEdge, 1.2, {
          lengthMm: length / 100,
          asideMm: (aside * length) / 10_000,
        });
        for (const { shape, sting } of Object.values(lines.corners)) {
          if (!shape) {
            expect(sting.lengthMm).toBe(0);
            continue;
          }
          expect(contourFaults(shape, 'anticlockwise')).toEqual([]);
          for (const at of sampleChain(shape, 0.01)) {
            expect(containsPoint(TREBLE, at)).toBe(true);
            expect(nearestOn(TREBLE, at).distanceMm).toBeGreaterThan(0.2 * toEdge - 0.02);
          }
          const [intoTip, fromTip] = segments(shape);
          if (!intoTip || !fromTip) throw new Error('no sides');
          expect(Math.cos(headingOn(intoTip, 1) - headingOn(fromTip, 0))).toBeCloseTo(-1, 9);
          expect(pointOn(intoTip, 1)).toEqual(pointOn(fromTip, 0));
        }
      },
    ),
    { numRuns: 40 },
  );
});

test('where a corner has no room for the point wished it is shorter, and a remark says so', () => {
  const lines = drawn(half, 3.75, 1.2, { lengthMm: 3, asideMm: 0.7 });
  expect(lines.corners.lower.sting.lengthMm).toBeLessThan(3);
  expect(lines.findings.filter(({ code }) => code === 'purfling.sting')).toHaveLength(2);
});

test('no length, no point and no remark', () => {
  const lines = drawn(half, 3.75, 1.2, { lengthMm: 0, asideMm: 0 });
  expect(lines.corners.lower.shape).toBeUndefined();
  expect(lines.findings).toEqual([]);
});

test.each([
  [{ lengthMm: -1, asideMm: 0 }, 'stingLength'],
  [{ lengthMm: Number.NaN, asideMm: 0 }, 'stingLength'],
  [{ lengthMm: 0.5, asideMm: 2 }, 'stingAside'],
])('a point of sizes %o is refused in words', (sting, at) => {
  const lines = purflingLines(half, 355, { purflingToEdge: 3.75, purflingWidth: 1.2 }, sting);
  expect(lines.ok ? [] : lines.faults.map((fault) => fault.at)).toEqual([at]);
});
