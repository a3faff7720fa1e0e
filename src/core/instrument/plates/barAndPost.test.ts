import { expect, test } from 'vitest';
import { type Design, draftDesign, type Family, type ValueName } from '../../design/index.ts';
import { chosen } from '../../quantity/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import { barHeightAt, barVolumeMm3 } from './barAndPost.ts';
import { distanceToArea } from './plateArea.ts';

const LENGTHS = { violin: 355, viola: 406, cello: 755 } as const;

function sample(family: Family, changes: Partial<Record<ValueName, number>> = {}): Design {
  const given = Object.entries({ bodyLength: LENGTHS[family], ...changes }).map(([name, value]) => [
    name,
    { value, unit: 'mm', origin: chosen('test') },
  ]);
  const drafted = draftDesign({ family, name: 'sample', values: Object.fromEntries(given) });
  if (!drafted.ok) throw new Error('refused');
  return drafted.value.design;
}

function placed(design: Design) {
  const instrument = deriveInstrument(design);
  if (!instrument.ok) throw new Error(instrument.faults.map(({ code, found }) => `${code}: ${found}`).join());
  return instrument.value.hollows.barAndPost;
}

function codes(design: Design): readonly string[] {
  const instrument = deriveInstrument(design);
  return instrument.ok ? [] : instrument.faults.map(({ code, at }) => `${code} ${at}`);
}

test.each(['violin', 'viola', 'cello'] as const)(
  'on a %s the bass foot reaches over the bar as the treble foot over the post, each on its own side',
  (family) => {
    const design = sample(family);
    const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
    const { post, bar } = placed(design);
    const footMm = value('bridgeFeet') / 2;
    const bridgeMm = value('bodyLength') - value('stop');
    expect(post.from.x + post.halfWidthMm).toBeCloseTo(footMm - value('footBeyondBar'), 9);
    // Half a foot behind the back of a foot whose middle stands on the bridge line.
    expect(post.from.y + post.halfWidthMm).toBeCloseTo(bridgeMm - value('bridgeFootThickness'), 9);
    // The outer face of the bar under the bridge, square to the body: half a thousandth of the bar is its slant.
    const outer = -(footMm - value('footBeyondBar'));
    expect(distanceToArea(bar, outer, bridgeMm)).toBeLessThan(0.01);
    expect(distanceToArea(bar, outer - 0.02, bridgeMm)).toBeGreaterThan(0.005);
  },
);

test('the bar keeps its share of the half width at both bouts, and ends as far from both ends', () => {
  const { bar, barShare, barAtUpperBoutMm, barAtLowerBoutMm } = placed(sample('violin'));
  expect(barAtUpperBoutMm / 84).toBeCloseTo(barShare, 12);
  expect(barAtLowerBoutMm / 103).toBeCloseTo(barShare, 12);
  expect(bar.from.y - bar.halfWidthMm).toBeCloseTo(40, 9);
  expect(355 - bar.to.y - bar.halfWidthMm).toBeCloseTo(40, 9);
});

test('a bar as high at its ends as at the bridge is a plain strip of wood', () => {
  const level = placed(sample('violin', { barHeight: 10, barEndHeight: 10 }));
  expect(barVolumeMm3(level)).toBeCloseTo(275 * 5.5 * 10, 6);
  const pointed = placed(sample('violin', { barHeight: 12, barEndHeight: 3 }));
  expect(barHeightAt(pointed, 0)).toBe(3);
  expect(barHeightAt(pointed, 1)).toBe(12);
  // Summed in small steps over one side; the other is as high at the same share of its length.
  const steps = 20_000;
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += barHeightAt(pointed, (step + 0.5) / steps) / steps;
  expect(barVolumeMm3(pointed)).toBeCloseTo(275 * 5.5 * sum, 2);
});

test.each<[string, Partial<Record<ValueName, number>>, string]>([
  ['a bar longer than the body', { barLength: 400 }, 'bar.place barLength'],
  ['a bar over the centre line', { barThickness: 25 }, 'bar.place bridgeFeet, footBeyondBar, barThickness'],
  [
    'a bridge too narrow for the bar',
    { bridgeFeet: 10 },
    'bar.place bridgeFeet, footBeyondBar, barThickness',
  ],
  ['a bar without height', { barHeight: 0 }, 'bar.size barHeight'],
  ['a post without number', { postDiameter: Number.NaN }, 'bar.size postDiameter'],
  [
    'a post as wide as the bridge',
    { postDiameter: 50 },
    'post.place bridgeFeet, footBeyondBar, postDiameter',
  ],
])('%s is refused', (_what, changes, expected) => {
  const design = sample('violin');
  const values = { ...design.values };
  for (const [name, value] of Object.entries(changes) as [ValueName, number][])
    values[name] = { value, unit: 'mm', origin: chosen('test') };
  expect(codes({ ...design, values })).toEqual([expected]);
});

test('looking at the outside of each plate the post stands right on the top and left on the back, one place of the body', () => {
  const instrument = deriveInstrument(sample('violin'));
  if (!instrument.ok) throw new Error('refused');
  const { back, top, barAndPost: placedAt } = instrument.value.hollows;
  const post = (plate: typeof back) => plate.thickness.areas.find(({ name }) => name === 'post')?.from;
  expect(post(top)).toEqual(placedAt.post.from);
  expect(post(back)).toEqual({ x: -placedAt.post.from.x, y: placedAt.post.from.y });
  expect(back.thickness.areas.map(({ name }) => name)).toEqual(['post']);
  expect(top.thickness.areas.find(({ name }) => name === 'bar')?.from.x).toBeLessThan(0);
});
