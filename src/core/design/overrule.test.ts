import { expect, test } from 'vitest';
import { measured } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { draftDesign } from './draftDesign.ts';
import { overrule, takeProposal } from './overrule.ts';
import type { ValueName } from './values.ts';

function drafted(values: Readonly<Record<string, number>>): Design {
  const quantities = Object.entries(values).map(([name, value]) => [
    name,
    { value, unit: 'mm', origin: measured('a table') },
  ]);
  const made = draftDesign({ name: 'x', family: 'violin', values: Object.fromEntries(quantities) });
  if (!made.ok) throw new Error(made.faults[0]?.found);
  return made.value.design;
}

test('an overruled number is chosen, and the proposal is kept beside it', () => {
  const before = drafted({ bodyLength: 355 });
  const after = overrule(before, 'overhang', 2.6);
  expect(after.values.overhang).toEqual({ value: 2.6, unit: 'mm', origin: { kind: 'chosen' } });
  expect(after.overruled?.overhang).toEqual(before.values.overhang);
  expect(takeProposal(after, 'overhang')).toEqual(before);
});

test('overruled twice, the proposal is still the first one', () => {
  const before = drafted({ bodyLength: 355 });
  const after = overrule(overrule(before, 'overhang', 2.6), 'overhang', 2.8);
  expect(after.overruled?.overhang).toEqual(before.values.overhang);
});

test('proposals that say the same as before are the very ones that stood', () => {
  // Not the length of a size in the tables, so that every habit is worked out for it.
  const before = drafted({ bodyLength: 351.5 });
  const after = overrule(before, 'stop', 190);
  const changed = Object.keys(before.values).filter(
    (name) => before.values[name as ValueName] !== after.values[name as ValueName],
  );
  expect(changed).toContain('stop');
  expect(changed).toContain('neckStop');
  for (const name of changed)
    expect(after.values[name as ValueName], name).not.toEqual(before.values[name as ValueName]);
});

test('proposals follow the number that they were worked out from', () => {
  const after = overrule(drafted({ bodyLength: 355 }), 'bodyLength', 345);
  expect(after.values.lowerBout?.value).toBeCloseTo(
    drafted({ bodyLength: 345 }).values.lowerBout?.value ?? 0,
    9,
  );
  expect(overrule(drafted({ bodyLength: 355 }), 'stop', 189).values.neckStop?.value).toBeCloseTo(126, 9);
});

test('what was measured or chosen stays when another number changes', () => {
  const before = overrule(drafted({ bodyLength: 355, waist: 110 }), 'lowerBout', 207);
  const after = overrule(before, 'bodyLength', 345);
  expect(after.values.waist).toEqual(before.values.waist);
  expect(after.values.lowerBout).toEqual(before.values.lowerBout);
});

test('a number that was set otherwise than we would fill it stays too', () => {
  const before = drafted({ bodyLength: 355 });
  const published = { value: 204, unit: 'mm', origin: { kind: 'published', source: 'a book' } } as const;
  const set = { ...before, values: { ...before.values, lowerBout: published } };
  expect(overrule(set, 'bodyLength', 345).values.lowerBout).toEqual(published);
});

test('one width changes alone', () => {
  const before = drafted({ bodyLength: 355 });
  const after = overrule(before, 'waist', 111);
  expect({ ...after.values, waist: before.values.waist }).toEqual(before.values);
});

test('without a proposal there is nothing to go back to', () => {
  const before = drafted({ bodyLength: 355 });
  expect(takeProposal(before, 'overhang')).toBe(before);
});
