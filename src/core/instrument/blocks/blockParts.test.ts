import { expect, test } from 'vitest';
import { asymmetryMm, contourFaults, doubledFaults } from '../../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { boundsOf } from '../../curve/index.ts';
import type { Family, RibChoice, ValueName } from '../../design/index.ts';
import { planParts } from '../planParts.ts';

function partsOf(family: Family, change: Partial<Record<ValueName, number>> = {}, ribs: RibChoice = {}) {
  const parts = planParts({ ...sampleDesign(family, change), ribs }, sampleHalf(family));
  if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
  return parts.value;
}

/** Printed by a drafting prototype of the same outlines: recess corners and boxes, width by height. */
test.each([
  ['violin', [65.0, 128.1], [59.0, 248.4], [23.9, 25.6], [18.8, 22.2]],
  ['viola', [75.0, 146.0], [68.3, 284.6], [27.6, 31.6], [21.6, 27.1]],
  ['cello', [138.9, 278.9], [121.2, 528.0], [49.3, 51.1], [37.6, 48.1]],
] as const)(
  'the corner blocks of a %s with parallel ribs stand at the known places in the known size',
  (family, lowerN, upperN, lowerBox, upperBox) => {
    const { blocks } = partsOf(family, {}, { corners: 'parallel' });
    const size = (name: string) => {
      const part = blocks.parts.find((each) => each.name === name);
      return [part?.acrossMm ?? 0, part?.alongMm ?? 0];
    };
    const close = (found: readonly number[], known: readonly number[]) =>
      found.forEach((value, index) => expect(Math.abs(value - (known[index] as number))).toBeLessThan(0.1));
    close([blocks.lowerCorner.recessCorner.x, blocks.lowerCorner.recessCorner.y], lowerN);
    close([blocks.upperCorner.recessCorner.x, blocks.upperCorner.recessCorner.y], upperN);
    close(size('lower corner block'), lowerBox);
    close(size('upper corner block'), upperBox);
  },
);

test.each(FAMILIES)('every block of a %s is a simple closed piece inside its blank', (family) => {
  for (const part of partsOf(family).blocks.parts) {
    expect(contourFaults(part.outline, 'anticlockwise')).toEqual([]);
    const [block, blank] = [boundsOf(part.outline), boundsOf(part.blank.outline)];
    expect(blank.min.x).toBeLessThanOrEqual(block.min.x);
    expect(blank.min.y).toBeLessThanOrEqual(block.min.y);
    expect(blank.max.x).toBeGreaterThanOrEqual(block.max.x);
    expect(blank.max.y).toBeGreaterThanOrEqual(block.max.y);
    expect(doubledFaults([part.shaped, part.blank.outline])).toEqual([]);
  }
});

test('an end block is as wide and as deep on the centre line as asked', () => {
  const { lower, upper } = partsOf('violin').blocks;
  expect(boundsOf(lower.outline).max.x).toBeCloseTo(22.5, 9);
  expect(boundsOf(lower.outline).max.y - boundsOf(lower.outline).min.y).toBeCloseTo(14, 9);
  expect(boundsOf(upper.outline).max.y - boundsOf(upper.outline).min.y).toBeCloseTo(15, 9);
  expect(asymmetryMm(lower.outline)).toBe(0);
});

test('the faces of a corner recess are square, one along the centre line', () => {
  for (const block of [partsOf('violin').blocks.lowerCorner, partsOf('violin').blocks.upperCorner]) {
    const [first, corner, last] = block.recess.vertices;
    const square = [first!, last!].map((end) => [Math.abs(end.x - corner!.x), Math.abs(end.y - corner!.y)]);
    expect(square.flat().filter((gap) => gap < 1e-9)).toHaveLength(2);
  }
});

test('a block too shallow for its width is refused with the way out', () => {
  const parts = planParts(
    sampleDesign('violin', { lowerBlockWidth: 120, lowerBlockDepth: 4 }),
    sampleHalf('violin'),
  );
  expect(parts.ok ? [] : parts.faults.map((fault) => fault.code)).toEqual(['blocks.end-block']);
});

test('corner blocks that meet in the waist are refused', () => {
  const parts = planParts(sampleDesign('violin', { lowerCornerBlockAlongWaist: 70 }), sampleHalf('violin'));
  expect(parts.ok ? [] : parts.faults.map((fault) => fault.code)).toContain('blocks.corner-reach');
});
