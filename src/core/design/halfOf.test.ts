import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, type HalfOutline, type Vertex } from '../curve/index.ts';
import { FAMILIES, type Family, lengthOf, sizesOf } from '../knowledge/index.ts';
import { measured } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { draftDesign } from './draftDesign.ts';
import { halfOf, hasSameHalf } from './halfOf.ts';
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

test('the same values drawn with the habit of another family are another half', () => {
  const drafted = draftDesign({
    family: 'violin',
    name: 'x',
    values: { bodyLength: { value: 355, unit: 'mm', origin: measured('table') } },
  });
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  const { design } = drafted.value;
  const cello: Design = { ...design, family: 'cello' };
  expect(halfOf(cello)).not.toEqual(halfOf(design));
  expect(hasSameHalf(design, cello)).toBe(false);
  expect(hasSameHalf(design, { ...design, name: 'y' })).toBe(true);
});

describe('whether two traced outlines are the same', () => {
  const drawn = halfFrom('violin', { bodyLength: 355 });
  if (!drawn.ok) throw new Error(drawn.faults[0]?.found);
  const { half } = drawn.value;
  const traced = (of: HalfOutline): Design => ({
    format: 'garland-design',
    version: 1,
    name: 'x',
    family: 'violin',
    values: {},
    outline: { kind: 'traced', half: of, fitRmsMm: 0.1, fitMaxMm: 0.3, plusMinusMm: 0.2 },
  });
  const stretches = ['lowerBout', 'cBout', 'upperBout'] as const;
  const changedAt = (stretch: (typeof stretches)[number], change: (vertices: Vertex<'body'>[]) => void) => {
    const copy = structuredClone(half);
    const vertices = [...copy[stretch].vertices];
    change(vertices);
    return traced({ ...copy, [stretch]: { ...copy[stretch], vertices } });
  };

  test('a copy is the same', () => {
    expect(hasSameHalf(traced(half), traced(structuredClone(half)))).toBe(true);
  });

  test.each(stretches)('a single number of a single place of the %s makes another', (stretch) => {
    for (const place of half[stretch].vertices.keys())
      for (const number of ['x', 'y', 'bulge'] as const) {
        const other = changedAt(stretch, (vertices) => {
          const vertex = vertices[place] as Vertex<'body'>;
          vertices[place] = { ...vertex, [number]: vertex[number] + 0.001 };
        });
        expect(hasSameHalf(traced(half), other), `${place} ${number}`).toBe(false);
        expect(hasSameHalf(other, traced(half)), `${place} ${number}`).toBe(false);
      }
  });

  test.each(stretches)('a place more or less in the %s makes another', (stretch) => {
    const less = changedAt(stretch, (vertices) => vertices.pop());
    expect(hasSameHalf(traced(half), less)).toBe(false);
    expect(hasSameHalf(less, traced(half))).toBe(false);
  });
});
