import { expect, test } from 'vitest';
import { faultSentence } from '../base/index.ts';
import { type Design, draftDesign, type Family } from '../design/index.ts';
import { FAMILIES, lengthOf, sizesOf } from '../knowledge/index.ts';
import { chosen, originText } from '../quantity/index.ts';
import { deriveInstrument, weighed } from './deriveInstrument.ts';
import { leastFindings } from './leastThicknesses.ts';
import { surveyThickness } from './plates/thicknessZones.ts';

function sample(family: Family, bodyLengthMm: number): Design {
  const bodyLength = { value: bodyLengthMm, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: 'sample', values: { bodyLength } });
  if (!drafted.ok) throw new Error('refused');
  return drafted.value.design;
}

function derived(design: Design) {
  const instrument = deriveInstrument(design);
  const whole = instrument.ok ? weighed(instrument.value) : instrument;
  if (!whole.ok) throw new Error(whole.faults.map(faultSentence).join());
  return whole.value;
}

type Pattern = 'concentric' | 'longitudinal';

/** What is found of the plates of a design, in each of the patterns, without weighing them, which takes long. */
function least(design: Design, patterns: readonly Pattern[] = ['concentric']) {
  const instrument = deriveInstrument(design);
  if (!instrument.ok) throw new Error('refused');
  const { plan, hollows } = instrument.value;
  return patterns.flatMap((pattern) => {
    const survey = (plate: 'back' | 'top') =>
      surveyThickness({ ...hollows[plate], thickness: { ...hollows[plate].thickness, pattern } });
    return leastFindings(instrument.value.design, plan.outline, {
      back: survey('back'),
      top: survey('top'),
    });
  });
}

test.each(
  FAMILIES.flatMap((family) => sizesOf(family)).map((size) => [`${size.family} ${size.name}`, size] as const),
)('a %s thinned as its table prints falls below nothing', (_name, size) => {
  expect(least(sample(size.family, lengthOf(size)), ['concentric', 'longitudinal'])).toEqual([]);
});

test('a thin place is told with its part of the plate, by how much, and where it lies', () => {
  const design: Design = {
    ...sample('violin', 355),
    thickness: { top: { points: [[-40, 90, 1.8]] } },
  };
  const [finding, ...more] = least(design);
  expect(more).toEqual([]);
  if (!finding) throw new Error('nothing found');
  expect(finding.at).toBe('thickness.top.least.lowerBout');
  const sentence = faultSentence(finding);
  const told =
    /the top comes down to (1\.8\d) mm in the lower bout, (0\.\d\d) mm short \(lower bout, (\d+) mm to either side, (\d+) mm above the lower end\)/.exec(
      sentence,
    );
  const [, foundMm, shortMm, x, y] = (told ?? []).map(Number);
  // Places are looked at every 4 mm.
  expect(Math.hypot((x ?? 0) - 40, (y ?? 0) - 90)).toBeLessThan(3);
  expect((foundMm ?? 0) + (shortMm ?? 0)).toBeCloseTo(2.2, 9);
  expect(sentence).toMatch(/needs 2\.2 mm or more there \(.*memory/);
});

test('thin wood under the bar is told on the bass side, under the post on the treble side', () => {
  const found = least({
    ...sample('violin', 355),
    thickness: { top: { bar: { extra: -0.5 }, post: { extra: -0.6 } } },
  });
  const of = (zone: string): string =>
    found.find(({ at }) => at === `thickness.top.least.${zone}`)?.found ?? '';
  expect(of('bar')).toMatch(/under the bar, 0\.\d\d mm short \(.* to the bass side/);
  expect(of('post')).toMatch(/under the post, 0\.\d\d mm short \(.* to the treble side/);
  const back = least({ ...sample('violin', 355), thickness: { back: { post: { extra: -1 } } } });
  expect(back.find(({ at }) => at === 'thickness.back.least.post')?.found).toMatch(/to the treble side/);
});

test('the design’s own least stands for the usual one, in the register too', () => {
  const design = sample('violin', 355);
  const strict: Design = { ...design, thickness: { back: { least: { waist: 2.6, post: 3.7 } } } };
  const { register, findings } = derived(strict);
  const thin = findings.filter(({ code }) => code.startsWith('thickness.'));
  expect(thin.map(({ code, at }) => `${code} ${at}`)).toEqual(['thickness.least thickness.back.least.waist']);
  const entry = (name: string) => register.entries.find((one) => one.name === name);
  expect(entry('thickness.back.least.waist')).toMatchObject({ value: 2.6, origin: { kind: 'chosen' } });
  expect(entry('thickness.top.least.waist')).toMatchObject({ value: 2.2, origin: { kind: 'from-memory' } });
  const viola = derived(sample('viola', 406)).register.entries.find(
    ({ name }) => name === 'thickness.back.least.channel',
  );
  expect(viola && originText(viola.origin)).toMatch(/The viola: small, medium and large/);
});

test('wood, bar and post stand in the register with what they depend on', () => {
  const { register, box } = derived(sample('violin', 355));
  const value = (name: string): number =>
    register.entries.find((one) => one.name === name)?.value ?? Number.NaN;
  expect(value('top.massWithBar')).toBeCloseTo(box.top.wood.massG + value('bar.mass'), 9);
  expect(value('bar.mass')).toBeCloseTo((value('bar.volume') * 420) / 1000, 9);
  expect(value('back.thicknessAtPost')).toBeLessThan(4.3);
  expect(value('back.thicknessAtPost')).toBeGreaterThan(value('back.leastThickness.post'));
  // Ribs of 30 mm and both arches, less both plates: about 50 mm on a violin.
  expect(value('post.length')).toBeGreaterThan(46);
  expect(value('post.length')).toBeLessThan(54);
});

test('more wood at the post is in the register, and in the wood under it', () => {
  const design = sample('violin', 355);
  const value = ({ register }: ReturnType<typeof derived>, name: string): number =>
    register.entries.find((one) => one.name === name)?.value ?? Number.NaN;
  const [none, some] = [
    derived(design),
    derived({ ...design, thickness: { top: { post: { extra: 0.3, reach: 10 } } } }),
  ];
  expect(value(some, 'thickness.top.post.extra')).toBe(0.3);
  expect(value(some, 'thickness.top.post.reach')).toBe(10);
  expect(value(none, 'thickness.top.post.extra')).toBeNaN();
  expect(value(some, 'top.thicknessAtPost')).toBeCloseTo(value(none, 'top.thicknessAtPost') + 0.3, 9);
  expect(value(some, 'back.thicknessAtPost')).toBe(value(none, 'back.thicknessAtPost'));
  // As much shorter is the post, but for the slope of the arch there.
  expect(value(none, 'post.length') - value(some, 'post.length')).toBeCloseTo(0.3, 2);
  const below = derived({ ...design, thickness: { back: { post: { extra: 0.3, reach: 10 } } } });
  expect(value(none, 'post.length') - value(below, 'post.length')).toBeCloseTo(0.3, 2);
  expect(value(below, 'back.thicknessAtPost')).toBeCloseTo(value(none, 'back.thicknessAtPost') + 0.3, 9);
});

test('a bar that runs over the blocks is told', () => {
  const design = sample('violin', 355);
  const barLength = { value: 335, unit: 'mm', origin: chosen('test') } as const;
  const codes = derived({ ...design, values: { ...design.values, barLength } }).findings.map(
    ({ code }) => code,
  );
  expect(codes).toContain('bar.too-long');
});
