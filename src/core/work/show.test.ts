import { describe, expect, test } from 'vitest';
import { type Design, draftDesign, halfOf, overrule, type ValueName } from '../design/index.ts';
import { FAMILIES, type Family } from '../knowledge/index.ts';
import { chosen } from '../quantity/index.ts';
import { shownPlate } from '../showing/index.ts';
import {
  type KeptGround,
  keptGround,
  showable,
  showBody,
  showBodyUnderHand,
  showGaugesUnderHand,
  showPlateRoughly,
  standsOn,
} from './show.ts';

const LENGTHS_MM: Readonly<Record<Family, number>> = { violin: 355, viola: 410, cello: 755 };

function drafted(family: Family): Design {
  const bodyLength = { value: LENGTHS_MM[family], unit: 'mm', origin: chosen('test') } as const;
  const result = draftDesign({ family, name: 'Test', values: { bodyLength } });
  if (!result.ok) throw new Error(result.faults[0]?.found);
  return result.value.design;
}

function valueOf(design: Design, name: ValueName): number {
  return design.values[name]?.value ?? Number.NaN;
}

/** A number as a hand drags it to and fro, in the steps that it is shown in. */
function dragged(design: Design, name: ValueName, reach: number, decimals: number): readonly Design[] {
  const from = valueOf(design, name);
  return [-1, -0.6, -0.1, 0.2, 0.7, 1].map((share) =>
    overrule(design, name, Number((from + share * reach).toFixed(decimals))),
  );
}

function traced(design: Design): Design {
  const half = halfOf(design);
  if (!half.ok) throw new Error(half.faults[0]?.found);
  const fit = { fitRmsMm: 0.1, fitMaxMm: 0.3, plusMinusMm: 0.2 };
  return { ...design, outline: { kind: 'traced', half: half.value.half, ...fit } };
}

describe('under the hand', () => {
  test.each(FAMILIES)('%s: outline and form are those of the whole body, to the letter', (family) => {
    const design = drafted(family);
    const reach = 0.02 * LENGTHS_MM[family];
    const designs = [
      ...(['lowerBout', 'waist', 'upperBout'] as const).flatMap((name) => dragged(design, name, reach, 1)),
      ...dragged({ ...design, ribs: { corners: 'parallel' } }, 'waist', reach, 1),
      ...dragged(design, 'overhang', 0.5, 1),
      ...dragged(design, 'upperBlockWidth', 5, 1),
      traced(design),
    ];
    for (const one of designs) {
      const [whole, under] = [showBody(one), showBodyUnderHand(one)];
      if (!whole.ok || !under.ok) throw new Error('not drawn');
      const { edge, form, ...measures } = under.value;
      expect(whole.value).toMatchObject(measures);
      expect(whole.value.lines.filter(({ kind }) => kind === 'edge')).toEqual([edge]);
      expect(whole.value.lines.filter(({ kind }) => kind === 'form')).toEqual([form]);
    }
  });

  test('an outline that cannot be drawn is refused in the same words', () => {
    const design = overrule(drafted('violin'), 'waist', 230);
    const under = showBodyUnderHand(design);
    expect(under.ok).toBe(false);
    expect(under).toEqual(showBody(design));
  });

  test.each(FAMILIES)(
    '%s: a gauge is that of the whole plate, to the letter, on a ground sent over',
    (family) => {
      const design = overrule(drafted(family), 'fullnessTopWaist', 0.02);
      const laid = keptGround(design, null);
      if (!laid.ok) throw new Error(laid.faults[0]?.found);
      // As it comes from a worker.
      const sent: KeptGround = structuredClone(laid.value);
      const held: readonly (readonly [ValueName, 'back' | 'top'])[] = [
        ['fullnessWaist', 'back'],
        ['fullnessTopWaist', 'top'],
        ['fullnessLowerBout', 'top'],
        ['fullnessUpperCorner', 'back'],
      ];
      for (const [name, plate] of held)
        for (const one of dragged(design, name, 0.12, 2).slice(0, 3)) {
          expect(standsOn(one, sent)).toBe(true);
          const [whole, under] = [
            showPlateRoughly(one, plate, null),
            showGaugesUnderHand(one, plate, name, sent),
          ];
          if (!whole.ok || !under.ok) throw new Error('not drawn');
          const those = whole.value.shown.stations.filter(({ fullnessFrom }) => fullnessFrom === name);
          expect(those).toHaveLength(1);
          expect(under.value).toEqual(those);
          const settled = showable(one);
          if (!settled.ok) throw new Error('not derived');
          expect(shownPlate(settled.value, plate, 'finished').stations).toEqual(whole.value.shown.stations);
        }
    },
  );

  test('a fullness that no arch can have is refused in the same words', () => {
    const design = overrule(drafted('violin'), 'fullnessWaist', 0.4);
    const laid = keptGround(design, null);
    if (!laid.ok) throw new Error(laid.faults[0]?.found);
    const under = showGaugesUnderHand(design, 'back', 'fullnessWaist', laid.value);
    expect(under.ok).toBe(false);
    expect(under).toEqual(showPlateRoughly(design, 'back', null));
  });
});

describe('a ground that was kept', () => {
  test('is taken again for heights and fullness, and laid anew for all that it stands on', () => {
    const design = drafted('violin');
    const laid = keptGround(design, null);
    if (!laid.ok) throw new Error(laid.faults[0]?.found);
    const isKept = (name: ValueName, by: number): boolean => {
      const one = overrule(design, name, valueOf(design, name) + by);
      const next = keptGround(one, laid.value);
      expect(standsOn(one, laid.value)).toBe(next.ok && next.value === laid.value);
      return standsOn(one, laid.value);
    };
    for (const name of ['fullnessWaist', 'archHeightTop', 'edgeHeightBack', 'ribHeightNeck'] as const)
      expect(isKept(name, 0.1), name).toBe(true);
    for (const name of ['lowerBout', 'waist', 'lowerCornerEnd', 'channelAtBouts', 'bodyLength'] as const)
      expect(isKept(name, 0.1), name).toBe(false);
    expect(standsOn(overrule(design, 'waistStation', 190), laid.value)).toBe(false);
  });

  test('of a traced outline is that of the same places, and of no other outline', () => {
    const design = traced(drafted('violin'));
    const laid = keptGround(design, null);
    if (!laid.ok) throw new Error(laid.faults[0]?.found);
    expect(standsOn(structuredClone(design), laid.value)).toBe(true);
    expect(standsOn(traced(overrule(drafted('violin'), 'waist', 113)), laid.value)).toBe(false);
    expect(standsOn(drafted('violin'), laid.value)).toBe(false);
  });
});
