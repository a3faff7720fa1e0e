import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultSentence } from '../base/index.ts';
import { type Design, draftDesign, halfOf, VALUE_NAMES, VALUES, type ValueName } from '../design/index.ts';
import { FAMILIES, type Family, lengthOf, sizesOf } from '../knowledge/index.ts';
import { checkDesign } from './checkDesign.ts';

function designOf(
  family: Family,
  bodyLengthMm: number,
  changed: Partial<Record<ValueName, number>> = {},
): Design {
  const origin = { kind: 'measured', from: 'table' } as const;
  const drafted = draftDesign({
    family,
    name: 'Test',
    values: { bodyLength: { value: bodyLengthMm, unit: 'mm', origin } },
  });
  if (!drafted.ok) throw new Error('refused');
  const values = { ...drafted.value.design.values };
  for (const [name, value] of Object.entries(changed) as [ValueName, number][])
    values[name] = { value, unit: VALUES[name].unit, origin };
  return { ...drafted.value.design, values };
}

const weighty = (design: Design) => checkDesign(design).filter(({ weight }) => weight !== 'remark');

test('no size of the trade contradicts itself or needs caution', () => {
  for (const family of FAMILIES)
    for (const size of sizesOf(family))
      expect(weighty(designOf(family, lengthOf(size))).map(faultSentence), `${family} ${size.name}`).toEqual(
        [],
      );
});

test('a full-size design drafted from its length alone has nothing unusual either', () => {
  expect(checkDesign(designOf('violin', 355))).toEqual([]);
  expect(checkDesign(designOf('cello', 755))).toEqual([]);
});

const contradictions: readonly (readonly [string, Partial<Record<ValueName, number>>, string, RegExp])[] = [
  ['a stop longer than the body', { stop: 360 }, 'check.stop-beyond-body', /stop.*shorter than the body/],
  ['an overhang below zero', { overhang: -1 }, 'check.overhang-negative', /ribs would stand out/],
  ['ribs flush with the plate', { overhang: 0 }, 'check.overhang-none', /flush with the ribs.*above zero/],
  [
    'an arch lower than its edge',
    { archHeightTop: 3.5 },
    'check.arch-below-edge',
    /archHeightTop.*higher than/,
  ],
  [
    'an arch so high that the cycloid loops',
    { archHeightBack: 36 },
    'check.arch-loop',
    /would loop.*31.2 mm/,
  ],
  [
    'channels that meet in the waist',
    { channelAtWaist: 57 },
    'check.channel-beyond-waist',
    /less than 56 mm/,
  ],
  [
    'purfling lines that meet in the waist',
    { purflingToEdge: 60 },
    'check.purfling-beyond-waist',
    /less than 56 mm/,
  ],
  ['a scoop deeper than the edge', { scoopDepthBack: 4 }, 'check.scoop-through', /wood left/],
  ['a form thicker than the ribs', { formThickness: 31 }, 'check.form-thicker-than-ribs', /lowest rib/],
  [
    'a form thicker than the lower end of tapered ribs',
    { ribHeightTail: 32, formThickness: 30.5 },
    'check.form-thicker-than-ribs',
    /ribHeightNeck/,
  ],
  ['corner ends that the overhang eats up', { lowerCornerEnd: 4 }, 'check.corner-end', /lowerCornerEnd/],
  ['a crest inside the channel', { edgeCrestInset: 8 }, 'check.crest-inside', /crest outside/],
  ['a wild fullness', { fullnessWaist: 0.3 }, 'check.fullness', /0.3/],
  ['a pin in a block', { pinFromEnd: 15 }, 'check.pin-in-block', /clear of the recess/],
  ['a fillet wider than the arch', { longArchFillet: 3000 }, 'check.long-arch-fillet', /smaller fillet/],
  ['a rib of no thickness', { ribThickness: 0 }, 'check.not-positive', /ribThickness/],
  ['a waist that no outline reaches', { waist: 160 }, 'draft.waist-too-wide', /waist/],
  ['a body of three metres', { bodyLength: 3000 }, 'size.body-length', /longer than any violin/],
];

test.each(contradictions)(
  '%s is a contradiction, in a sentence with its names',
  (_what, changed, code, words) => {
    const found = checkDesign(designOf('violin', 355, changed)).find((finding) => finding.code === code);
    expect(found?.weight).toBe('contradiction');
    expect(found && faultSentence(found)).toMatch(words);
  },
);

const cautions: readonly (readonly [string, Partial<Record<ValueName, number>>, string])[] = [
  ['a neck far from two thirds', { neckStop: 140 }, 'check.neck-to-stop'],
  ['a bridge too near the middle', { stop: 170, neckStop: 113 }, 'check.stop-share'],
  ['an arch near the loop', { archHeightBack: 23 }, 'check.arch-loop'],
  ['a form too thick for its linings', { formThickness: 18 }, 'check.form-and-linings'],
  ['ribs lower at the tail', { ribHeightTail: 28 }, 'check.rib-taper'],
  ['purfling inside the channel', { purflingToEdge: 6.5 }, 'check.purfling-inside'],
  ['a flat edge that reaches into the channel', { edgeLand: 7.5 }, 'check.land-inside'],
  ['a violin of 370 mm', { bodyLength: 370 }, 'size.unusual-length'],
];

test.each(cautions)('%s is a caution', (_what, changed, code) => {
  const found = checkDesign(designOf('violin', 355, changed)).find((finding) => finding.code === code);
  expect(found?.weight).toBe('caution');
});

test('an absurd or unusual length is told once', () => {
  for (const [bodyLength, code] of [
    [3000, 'size.body-length'],
    [370, 'size.unusual-length'],
  ] as const) {
    const told = checkDesign(designOf('violin', 355, { bodyLength })).filter(
      ({ at, weight }) => at === 'bodyLength' && weight !== 'remark',
    );
    expect(told.map((finding) => finding.code)).toEqual([code]);
  }
});

test('seven tenths is right for a cello and wrong for a violin', () => {
  const codes = (design: Design) => checkDesign(design).map(({ code }) => code);
  expect(codes(designOf('cello', 755, { stop: 390, neckStop: 273 }))).not.toContain('check.neck-to-stop');
  expect(codes(designOf('violin', 355, { stop: 195, neckStop: 136.5 }))).toContain('check.neck-to-stop');
});

test('a value outside its range is a remark that names the range and its source', () => {
  const [remark] = checkDesign(designOf('violin', 355, { ribHeightNeck: 34, ribHeightTail: 34 }));
  expect(remark).toMatchObject({
    weight: 'remark',
    at: 'ribHeightNeck',
    need: 'usually 28 to 33 mm (from memory)',
  });
});

test('a traced outline whose width was changed by hand contradicts itself', () => {
  const drafted = designOf('violin', 355);
  const half = halfOf(drafted);
  if (!half.ok) throw new Error('refused');
  const outline = {
    kind: 'traced',
    half: half.value.half,
    fitRmsMm: 0,
    fitMaxMm: 0,
    plusMinusMm: 0,
  } as const;
  const traced: Design = { ...drafted, outline };
  expect(checkDesign(traced)).toEqual([]);
  const changed = {
    ...traced,
    values: { ...traced.values, waist: { ...traced.values.waist, value: 110 } },
  } as Design;
  expect(checkDesign(changed)).toEqual([
    expect.objectContaining({ code: 'check.traced-disagrees', at: 'waist', weight: 'contradiction' }),
  ]);
});

test('several contradictions of one design are all told, the heaviest first', () => {
  const findings = checkDesign(
    designOf('violin', 355, { stop: 400, overhang: -2, archHeightBack: 3, formThickness: 40 }),
  );
  const codes = findings.map(({ code }) => code);
  for (const code of [
    'check.stop-beyond-body',
    'check.overhang-negative',
    'check.arch-below-edge',
    'check.form-thicker-than-ribs',
  ])
    expect(codes).toContain(code);
  const weights = findings.map(({ weight }) => ['contradiction', 'caution', 'remark'].indexOf(weight));
  expect(weights).toEqual(weights.toSorted((a, b) => a - b));
});

test('whatever the numbers, every finding has a place among the names and says something', () => {
  const changed = fc.dictionary(
    fc.constantFrom(...VALUE_NAMES),
    fc.oneof(fc.constant(0), fc.double({ min: -50, max: 1000, noNaN: true })),
    {
      maxKeys: 6,
    },
  );
  fc.assert(
    fc.property(changed, (values) => {
      for (const finding of checkDesign(designOf('violin', 355, values))) {
        expect(finding.at).not.toBe('');
        expect(faultSentence(finding)).not.toMatch(/NaN|undefined|Infinity/);
      }
    }),
    { numRuns: 60 },
  );
});

test('a value in a finding of several is not called unusual on top of it', () => {
  const findings = checkDesign(designOf('violin', 355, { archHeightTop: 3 }));
  expect(findings.filter(({ at }) => at.includes('archHeightTop')).map(({ code }) => code)).toEqual([
    'check.arch-below-edge',
  ]);
});
