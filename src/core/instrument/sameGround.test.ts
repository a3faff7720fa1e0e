import { expect, test } from 'vitest';
import {
  type Design,
  draftDesign,
  halfOf,
  overrule,
  VALUES_OVER_GROUND,
  type ValueName,
} from '../design/index.ts';
import { bothArches } from './arching/bothArches.ts';
import { deriveInstrument } from './deriveInstrument.ts';
import { planParts } from './planParts.ts';
import { isOnSameGround } from './sameGround.ts';

function drafted(): Design {
  const bodyLength = { value: 355, unit: 'mm', origin: { kind: 'measured', from: 'rule' } } as const;
  const made = draftDesign({ name: 'one', family: 'violin', values: { bodyLength } });
  if (!made.ok) throw new Error(made.faults[0]?.found);
  return made.value.design;
}

function groundParts(design: Design): unknown {
  const half = halfOf(design);
  if (!half.ok) throw new Error(half.faults[0]?.found);
  return [planParts(design, half.value.half), bothArches(design, half.value.half)];
}

function derived(design: Design, before?: Parameters<typeof deriveInstrument>[1]) {
  const instrument = deriveInstrument(design, before);
  if (!instrument.ok) throw new Error(instrument.faults[0]?.found);
  return instrument.value;
}

/** Everything but the functions, which no two derivations share. */
function written(parts: unknown): string {
  return JSON.stringify(parts);
}

test('numbers over the ground change neither the parts in the plane nor the arches, all of them at once', () => {
  const design = drafted();
  const changed = Object.entries(design.values).map(([name, quantity]) =>
    VALUES_OVER_GROUND.has(name)
      ? [name, { ...quantity, value: quantity.value * 1.1 + 0.3 }]
      : [name, quantity],
  );
  const other: Design = { ...design, values: Object.fromEntries(changed) };
  expect(changed.filter(([name]) => VALUES_OVER_GROUND.has(String(name))).length).toBeGreaterThan(50);
  expect(isOnSameGround(design, other)).toBe(true);
  expect(written(groundParts(other)) === written(groundParts(design))).toBe(true);
});

test.each(['stop', 'archHeightTop', 'overhang', 'bodyLength'] as const)(
  '%s is part of the ground',
  (name: ValueName) => {
    const design = drafted();
    const value = (design.values[name]?.value ?? 0) + 0.2;
    expect(isOnSameGround(design, overrule(design, name, value))).toBe(false);
  },
);

const CHANGES: readonly (readonly [
  name: ValueName,
  by: number,
  keepsPlates: boolean,
  keepsGround: boolean,
])[] = [
  ['holeLength', 0.4, true, true],
  ['overstand', 0.4, true, true],
  ['thicknessBackMiddle', 0.4, true, true],
  ['stop', 0.4, false, true],
  ['fullnessWaist', 0.04, false, true],
  ['archHeightTop', 0.4, false, true],
  ['overhang', 0.4, false, true],
  ['channelAtBouts', 0.4, false, false],
  ['lowerBout', 0.4, false, false],
];

test.each(CHANGES)(
  'derived from what was derived before, after %s has changed, the instrument is the same as derived anew',
  (name, by, keepsPlates, keepsGround) => {
    const design = drafted();
    const before = derived(design);
    const other = overrule(design, name, (design.values[name]?.value ?? 0) + by);
    const after = derived(other, before);
    expect(written(after) === written(derived(other))).toBe(true);
    expect(after.plates.top === before.plates.top).toBe(keepsPlates);
    expect(after.ground === before.ground).toBe(keepsGround);
  },
);
