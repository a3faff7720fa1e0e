import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boundsOf, type HalfOutline } from '../curve/index.ts';
import { FAMILIES, type Family, lengthOf, sizesOf } from '../knowledge/index.ts';
import { measured } from '../quantity/index.ts';
import { draftDesign } from './draftDesign.ts';
import { halfOf } from './halfOf.ts';
import type { ValueName } from './values.ts';

function halfFrom(family: Family, values: Partial<Record<ValueName, number>>) {
  const given = Object.entries(values).map(([name, value]) => [
    name,
    { value, unit: 'mm', origin: measured('table') },
  ]);
  const drafted = draftDesign({ family, name: 'x', values: Object.fromEntries(given) });
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  return halfOf(drafted.value.design);
}

function sizesIn(half: HalfOutline) {
  const cBout = boundsOf(half.cBout);
  return {
    bodyLength: boundsOf(half.upperBout).max.y,
    lowerBout: 2 * boundsOf(half.lowerBout).max.x,
    waist: 2 * cBout.min.x,
    upperBout: 2 * boundsOf(half.upperBout).max.x,
  };
}

test('every size of the trade is drafted from its length alone, and the outline has its sizes', () => {
  for (const family of FAMILIES)
    for (const size of sizesOf(family)) {
      const result = halfFrom(family, { bodyLength: lengthOf(size) });
      if (!result.ok) throw new Error(`${family} ${size.name}: ${JSON.stringify(result.faults)}`);
      const found = sizesIn(result.value.half);
      for (const [name, value] of Object.entries(found))
        expect(value, `${family} ${size.name} ${name}`).toBeCloseTo(size.values[name]?.value ?? 0, 6);
    }
});

test('given widths near the habit are met, whichever of them are given', () => {
  const factor = fc.double({ min: 0.96, max: 1.04, noNaN: true });
  fc.assert(
    fc.property(
      factor,
      factor,
      factor,
      fc.subarray(['upperBout', 'waist', 'lowerBout'] as const),
      (u, c, w, given) => {
        const all = { upperBout: 168 * u, waist: 112 * c, lowerBout: 206 * w };
        const values = Object.fromEntries(given.map((name) => [name, all[name]]));
        const result = halfFrom('violin', { bodyLength: 355, ...values });
        if (!result.ok) throw new Error(JSON.stringify(result.faults));
        const found = sizesIn(result.value.half);
        for (const name of given) expect(Math.abs(found[name] - all[name])).toBeLessThan(0.01);
      },
    ),
    { numRuns: 20 },
  );
});

test('a width that no outline can reach is refused at its own name, not at those that followed from it', () => {
  const result = halfFrom('violin', { bodyLength: 355, waist: 170 });
  expect(result.ok ? [] : result.faults.map(({ at }) => at)).toEqual(['waist']);
});
