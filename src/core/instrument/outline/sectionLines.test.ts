import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asymmetryMm, contourFaults } from '../../../../test/laws/parts.ts';
import { FAMILIES, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { nearestOn, outlineChain, sampleChain } from '../../curve/index.ts';
import { sectionLines } from './sectionLines.ts';

const family = fc.constantFrom(...FAMILIES);

test('section lines are closed, simple, anticlockwise and symmetric at any inset of the trade', () => {
  fc.assert(
    fc.property(
      family,
      fc.double({ min: 1, max: 12, noNaN: true }),
      fc.double({ min: 0.5, max: 6, noNaN: true }),
      (which, inset, depth) => {
        const lines = sectionLines(sampleHalf(which), inset, depth);
        if (!lines.ok) throw new Error(JSON.stringify(lines.faults));
        expect(contourFaults(lines.value.chain, 'anticlockwise')).toEqual([]);
        expect(asymmetryMm(lines.value.chain)).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 60 },
  );
});

test.each(FAMILIES)('along the bouts of a %s every point keeps its distance from the edge', (which) => {
  const half = sampleHalf(which);
  const edge = outlineChain(half);
  const lines = sectionLines(half, 3.6, 2.2);
  if (!lines.ok) throw new Error(JSON.stringify(lines.faults));
  for (const section of ['lowerBout', 'cBout', 'upperBout'] as const) {
    const points = sampleChain(lines.value.sections[section], 0.001);
    const clear = points.slice(Math.ceil(points.length * 0.15), Math.floor(points.length * 0.85));
    for (const point of clear) expect(nearestOn(edge, point).distanceMm).toBeCloseTo(3.6, 6);
  }
});

test('sides that meet deep enough run to a point, others stop on a straight end at the asked depth', () => {
  const half = sampleHalf('violin');
  const pointed = sectionLines(half, 3.75, 1);
  const flat = sectionLines(half, 3.75, 3);
  if (!pointed.ok || !flat.ok) throw new Error('refused');
  expect(pointed.value.lowerCorner.kind).toBe('pointed');
  expect(pointed.value.lowerCorner.widthMm).toBe(0);
  expect(pointed.value.lowerCorner.depthMm).toBeCloseTo(2.239, 3);
  expect(flat.value.lowerCorner.kind).toBe('flat');
  expect(flat.value.lowerCorner.depthMm).toBe(3);
  expect(flat.value.lowerCorner.widthMm).toBeGreaterThan(0);
});

/** The depths a drafting prototype of the same outline gave, to its printed decimals. */
test.each([
  [5, 5.3, 5.3],
  [6, 7.3, 7.3],
  [8, 10.75, 10.8],
  [10, 13.8, 13.9],
])('parallels %d mm inside a violin meet at the known depths', (inset, lower, upper) => {
  const lines = sectionLines(sampleHalf('violin'), inset, 0);
  if (!lines.ok) throw new Error(JSON.stringify(lines.faults));
  expect(Math.abs(lines.value.lowerCorner.depthMm - lower)).toBeLessThan(0.1);
  expect(Math.abs(lines.value.upperCorner.depthMm - upper)).toBeLessThan(0.1);
});

test('an inset that swallows an arc is refused with its radius', () => {
  const lines = sectionLines(sampleHalf('violin'), 70, 2);
  expect(lines.ok ? [] : lines.faults.map((fault) => fault.code)).toContain('parallel.collapse');
});

test('a plate whose corners run to a point has section lines too', () => {
  const meeting = sectionLines(sampleHalf('violin'), 6, 0);
  if (!meeting.ok) throw new Error(JSON.stringify(meeting.faults));
  const plate = meeting.value.sections;
  expect(plate.cBout.vertices[0]).toMatchObject({ x: plate.lowerBout.vertices.at(-1)!.x });
  const lines = sectionLines(plate, 3, 1);
  if (!lines.ok) throw new Error(JSON.stringify(lines.faults));
  expect(contourFaults(lines.value.chain, 'anticlockwise')).toEqual([]);
  expect(lines.value.lowerCorner.kind).toBe('pointed');
  expect(lines.value.lowerCorner.depthMm).toBeGreaterThan(3);
});
