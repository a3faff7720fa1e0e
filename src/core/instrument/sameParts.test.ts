import { describe, expect, test } from 'vitest';
import {
  type Design,
  draftDesign,
  halfOf,
  overrule,
  VALUE_NAMES,
  VALUES,
  VALUES_OVER_PLATES,
  type ValueName,
} from '../design/index.ts';
import { bothArches } from './arching/bothArches.ts';
import { deriveInstrument } from './deriveInstrument.ts';
import { planParts } from './planParts.ts';
import { hasSamePlates } from './sameParts.ts';

function drafted(): Design {
  const bodyLength = { value: 355, unit: 'mm', origin: { kind: 'measured', from: 'rule' } } as const;
  const made = draftDesign({ name: 'one', family: 'violin', values: { bodyLength } });
  if (!made.ok) throw new Error(made.faults[0]?.found);
  return made.value.design;
}

function halfOfSure(design: Design) {
  const half = halfOf(design);
  if (!half.ok) throw new Error(half.faults[0]?.found);
  return half.value.half;
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

/** All that is taken from what was derived before, worked out afresh. */
function madeAfresh(design: Design): string {
  const half = halfOfSure(design);
  const plan = planParts(design, half);
  const { ground, back, top } = bothArches(design, half);
  if (!plan.ok || !ground.ok || !back.ok || !top.ok) throw new Error('not made');
  return written([plan.value, ground.value, back.value, top.value]);
}

/** The same as it comes out where an instrument was derived before. */
function madeAfter(design: Design, before: ReturnType<typeof derived>): string {
  const { plan, ground, plates } = derived(design, before);
  return written([plan, ground, plates.back, plates.top]);
}

const DRAFTED = drafted();
const BEFORE = derived(DRAFTED);

function changed(name: ValueName, value: number): Design {
  const { unit } = VALUES[name];
  const now = DRAFTED.values[name] ?? { unit, origin: { kind: 'chosen' } };
  return { ...DRAFTED, values: { ...DRAFTED.values, [name]: { ...now, value } } };
}

test('numbers over the plates change neither the parts in the plane nor the arches, all of them at once', () => {
  const values = Object.entries(DRAFTED.values).map(([name, quantity]) =>
    VALUES_OVER_PLATES.has(name)
      ? [name, { ...quantity, value: quantity.value * 1.1 + 0.3 }]
      : [name, quantity],
  );
  const other: Design = { ...DRAFTED, values: Object.fromEntries(values) };
  expect(values.filter(([name]) => VALUES_OVER_PLATES.has(String(name))).length).toBeGreaterThan(50);
  expect(hasSamePlates(DRAFTED, other)).toBe(true);
  expect(madeAfresh(other) === madeAfresh(DRAFTED)).toBe(true);
});

/** What a maker may give that is worked out where it is not given. */
const NOT_DRAFTED: Readonly<Partial<Record<ValueName, number>>> = {
  upperBoutStation: 282,
  waistStation: 196,
  lowerBoutStation: 76,
  upperCornerStation: 240,
  lowerCornerStation: 150,
  upperCorners: 156,
  lowerCorners: 186,
  fullnessTopUpperBout: 0.05,
  fullnessTopUpperCorner: 0.05,
  fullnessTopWaist: 0.05,
  fullnessTopLowerCorner: 0.05,
  fullnessTopLowerBout: 0.05,
  afterLength: 56,
  tailpieceLength: 112,
  blankHeightBack: 20,
  blankHeightTop: 20,
};

describe('derived after another instrument, plates and parts in the plane are the same as derived afresh', () => {
  test.each(VALUE_NAMES.filter((name) => !VALUES_OVER_PLATES.has(name)))('with another %s', (name) => {
    const stood = DRAFTED.values[name]?.value;
    const value =
      stood === undefined ? NOT_DRAFTED[name] : stood + (VALUES[name].unit === 'ratio' ? 0.02 : 0.2);
    if (value === undefined) throw new Error('say what it may be');
    const other = changed(name, value);
    expect(hasSamePlates(DRAFTED, other)).toBe(false);
    expect(madeAfter(other, BEFORE) === madeAfresh(other)).toBe(true);
  });

  const traced = (design: Design): Design => ({
    ...design,
    outline: { kind: 'traced', half: halfOfSure(design), fitRmsMm: 0.1, fitMaxMm: 0.3, plusMinusMm: 0.2 },
  });
  const heights = { heights: [[0, 190, 13.5]] as const, plusMinus: 0.1 };
  const others: Readonly<Record<string, Design>> = {
    'habit of a viola': { ...DRAFTED, family: 'viola' },
    'traced outline': traced(changed('waist', 113)),
    'joint of the ribs': { ...DRAFTED, ribs: { joint: 'mitred' } },
    'form of the long arch': { ...DRAFTED, longArch: { top: { form: 'cycloid' } } },
    'height measured on the back': { ...DRAFTED, measuredHeights: { back: heights } },
  };
  test.each(Object.keys(others))('with another %s', (what) => {
    const other = others[what] as Design;
    expect(madeAfter(other, BEFORE) === madeAfresh(other)).toBe(true);
  });
});

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
    const other = overrule(DRAFTED, name, (DRAFTED.values[name]?.value ?? 0) + by);
    const after = derived(other, BEFORE);
    expect(written(after) === written(derived(other))).toBe(true);
    expect(after.plates.top === BEFORE.plates.top).toBe(keepsPlates);
    expect(after.ground === BEFORE.ground).toBe(keepsGround);
  },
);
