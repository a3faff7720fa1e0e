import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asymmetryMm, contourFaults } from '../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../test/laws/partsSamples.ts';
import { draftDesign, halfOf, type ValueName } from '../design/index.ts';
import { planParts } from './planParts.ts';
import { PLAN_VALUES } from './planValues.ts';

test.each(FAMILIES)('the same %s gives the same parts to the last bit', (family) => {
  const once = planParts(sampleDesign(family), sampleHalf(family));
  const twice = planParts(sampleDesign(family), sampleHalf(family));
  expect(JSON.stringify(once)).toBe(JSON.stringify(twice));
});

test('every missing value is named in one answer', () => {
  const design = sampleDesign('violin');
  const { overhang: _overhang, clampHolePitch: _pitch, ...values } = design.values;
  const parts = planParts({ ...design, values }, sampleHalf('violin'));
  expect(parts.ok ? [] : parts.faults.map((fault) => fault.at)).toEqual(['overhang', 'clampHolePitch']);
});

test('a value of nothing is refused', () => {
  const parts = planParts(sampleDesign('violin', { ribThickness: 0 }), sampleHalf('violin'));
  expect(parts.ok ? [] : parts.faults.map((fault) => fault.code)).toEqual(['design.value-not-positive']);
});

test('every derived dimension is a number, named once, and says what it comes from', () => {
  for (const family of FAMILIES) {
    const parts = planParts(sampleDesign(family), sampleHalf(family));
    if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
    const { registerEntries } = parts.value;
    expect(new Set(registerEntries.map((entry) => entry.name)).size).toBe(registerEntries.length);
    for (const entry of registerEntries) {
      expect(Number.isFinite(entry.value), entry.name).toBe(true);
      expect(entry.origin.kind === 'derived' && entry.origin.from.length > 0, entry.name).toBe(true);
    }
  }
});

test.each([
  ['violin', 355],
  ['violin', 245],
  ['violin', 190],
  ['viola', 380],
  ['viola', 430],
  ['cello', 755],
  ['cello', 580],
] as const)(
  'a %s of %d mm filled from the tables of the trade has all parts without a contradiction',
  (family, lengthMm) => {
    const bodyLength = { value: lengthMm, unit: 'mm', origin: { kind: 'chosen' } } as const;
    const drafted = draftDesign({ family, name: 'Sample', values: { bodyLength } });
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
    const outline = halfOf(drafted.value.design);
    if (!outline.ok) throw new Error(JSON.stringify(outline.faults));
    const parts = planParts(drafted.value.design, outline.value.half);
    if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
    expect(parts.value.findings.filter((finding) => finding.weight === 'contradiction')).toEqual([]);
    expect(parts.value.outline.bodyLengthMm).toBeCloseTo(lengthMm, 6);
    expect(contourFaults(parts.value.form.outline, 'anticlockwise')).toEqual([]);
  },
);

test('any values near the habits give sound parts or a refusal in words, never a broken line', () => {
  const factors = fc.array(fc.double({ min: 0.4, max: 2.5, noNaN: true }), {
    minLength: PLAN_VALUES.length,
    maxLength: PLAN_VALUES.length,
  });
  fc.assert(
    fc.property(fc.constantFrom(...FAMILIES), factors, (family, factor) => {
      const usual = sampleDesign(family).values;
      const change = Object.fromEntries(
        PLAN_VALUES.map((name, at) => [name, (usual[name]?.value ?? 1) * (factor[at] ?? 1)]),
      ) as Partial<Record<ValueName, number>>;
      const parts = planParts(sampleDesign(family, change), sampleHalf(family));
      if (!parts.ok) {
        for (const fault of parts.faults) expect(fault.found.length * fault.remedy.length).toBeGreaterThan(0);
        return;
      }
      const { form, ribs, purfling, blocks, outlineTemplate, innerTemplate } = parts.value;
      const pieces = [
        form.outline,
        form.halfOutline,
        ribs.outer.chain,
        ribs.inner.chain,
        purfling.outer.chain,
      ];
      const all = [
        ...pieces,
        outlineTemplate.half,
        innerTemplate.half,
        ...blocks.parts.map((part) => part.outline),
      ];
      for (const chain of all) expect(contourFaults(chain, 'anticlockwise')).toEqual([]);
      expect(asymmetryMm(form.outline)).toBeLessThan(1e-9);
    }),
    { numRuns: 30 },
  );
});
