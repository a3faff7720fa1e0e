import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asymmetryMm, contourFaults } from '../../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { areaOf, containsPoint, nearestOn } from '../../curve/index.ts';
import type { Family, ValueName } from '../../design/index.ts';
import { planParts } from '../planParts.ts';

function formOf(family: Family, change: Partial<Record<ValueName, number>> = {}) {
  const parts = planParts(sampleDesign(family, change), sampleHalf(family));
  if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
  return { ...parts.value.form, parts: parts.value };
}

test.each(FAMILIES)('the form of a %s is closed, simple, anticlockwise and symmetric', (family) => {
  const form = formOf(family);
  expect(contourFaults(form.outline, 'anticlockwise')).toEqual([]);
  expect(contourFaults(form.halfOutline, 'anticlockwise')).toEqual([]);
  expect(asymmetryMm(form.outline)).toBeLessThan(1e-9);
});

test.each(FAMILIES)('form and blocks of a %s together fill the inner outline', (family) => {
  const { outline, parts } = formOf(family);
  const blocks = parts.blocks.parts.reduce((sum, part) => sum + part.count * areaOf(part.outline), 0);
  expect(areaOf(outline) + blocks).toBeCloseTo(areaOf(parts.ribs.inner.chain), 6);
});

test.each([
  ['violin', 8, 10],
  ['viola', 8, 11],
  ['cello', 10, 16],
] as const)('the form of a %s has %d clamp holes a side with the asked wall', (family, count, wallMm) => {
  const form = formOf(family);
  expect(form.clampHoles.filter((hole) => hole.side === 'treble')).toHaveLength(count);
  expect(form.leastWallMm).toBeGreaterThanOrEqual(wallMm - 1e-6);
});

test('clamp holes keep their wall, stay in the wood and off each other, whatever their size', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...FAMILIES),
      fc.double({ min: 0.5, max: 1.6, noNaN: true }),
      fc.double({ min: 0.5, max: 1.6, noNaN: true }),
      fc.double({ min: 0.5, max: 1.6, noNaN: true }),
      (family, diameter, wall, pitch) => {
        const usual = sampleDesign(family).values;
        const times = (name: ValueName, factor: number) => (usual[name]?.value ?? 0) * factor;
        const wallMm = times('clampHoleWall', wall);
        const form = formOf(family, {
          clampHoleDiameter: times('clampHoleDiameter', diameter),
          clampHoleWall: wallMm,
          clampHolePitch: times('clampHolePitch', pitch),
        });
        for (const [index, hole] of form.clampHoles.entries()) {
          expect(containsPoint(form.outline, hole.centre)).toBe(true);
          const clearMm = nearestOn(form.outline, hole.centre).distanceMm - hole.radiusMm;
          expect(clearMm).toBeGreaterThanOrEqual(wallMm - 2e-6);
          for (const other of form.clampHoles.slice(index + 1)) {
            const between = Math.hypot(hole.centre.x - other.centre.x, hole.centre.y - other.centre.y);
            expect(between).toBeGreaterThanOrEqual(2 * hole.radiusMm + 0.6 * wallMm - 2e-6);
          }
        }
      },
    ),
    { numRuns: 12 },
  );
});

test('a pitch closer than the wood between holes allows still leaves that wood', () => {
  const centres = formOf('violin', { clampHolePitch: 23 }).clampHoles.map((hole) => hole.centre);
  const gaps = centres.flatMap((a, at) => centres.slice(at + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(20 + 0.6 * 10);
});

test('the check widths are the widths of the body less overhang and rib on both sides', () => {
  const { checkWidths, parts } = formOf('violin');
  expect(checkWidths.map((width) => width.name)).toEqual(['waist', 'lower bout']);
  expect(checkWidths[0]!.widthMm).toBeCloseTo(parts.outline.waist.widthMm - 7.2, 9);
  expect(checkWidths[1]!.widthMm).toBeCloseTo(parts.outline.lowerBout.widthMm - 7.2, 9);
});

test('holes too large for a section are left out in words', () => {
  const codes = formOf('violin', { clampHoleDiameter: 90 }).findings.map((finding) => finding.code);
  expect(codes).toContain('form.no-clamp-holes');
});

test.each([10, 177])('pins %d mm from the ends, in a block or in each other, are refused', (pinFromEnd) => {
  const parts = planParts(sampleDesign('violin', { pinFromEnd }), sampleHalf('violin'));
  expect(parts.ok ? [] : parts.faults.map((fault) => fault.code)).toEqual(['form.pin-misplaced']);
});

test('a form that cannot pass the linings is remarked on', () => {
  const codes = formOf('violin', { formThickness: 18 }).findings.map((finding) => finding.code);
  expect(codes).toContain('form.thick');
});
