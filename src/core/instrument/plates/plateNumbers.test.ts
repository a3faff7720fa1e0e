import { expect, test } from 'vitest';
import { type Design, draftDesign, type Family, type ValueName } from '../../design/index.ts';
import { chosen, dependsOn } from '../../quantity/index.ts';
import { deriveInstrument, weighed } from '../deriveInstrument.ts';

function sampleDesign(family: Family, changes: Partial<Record<ValueName, number>> = {}): Design {
  const bodyLength = { violin: 355, viola: 406, cello: 755 }[family];
  const given = Object.entries({ bodyLength, ...changes }).map(([name, value]) => [
    name,
    { value, unit: 'mm', origin: chosen('test') },
  ]);
  const drafted = draftDesign({ family, name: 'sample', values: Object.fromEntries(given) });
  if (!drafted.ok) throw new Error('refused');
  return drafted.value.design;
}

function box(design: Design) {
  const instrument = deriveInstrument(design);
  const measured = instrument.ok ? weighed(instrument.value) : instrument;
  if (!measured.ok) throw new Error(measured.faults.map(({ code, found }) => `${code}: ${found}`).join());
  return measured.value;
}

function codes(design: Design): readonly string[] {
  const instrument = deriveInstrument(design);
  return instrument.ok ? [] : instrument.faults.map(({ code }) => code);
}

test.each([
  ['violin', [85, 120], [55, 75], [1.7, 2.1]],
  ['viola', [105, 150], [70, 100], [2.6, 4.2]],
  ['cello', [520, 800], [350, 500], [25, 31]],
] as const)('a %s has plates of the usual weight and air of the usual volume', (family, back, top, air) => {
  const { box: found, register } = box(sampleDesign(family));
  const between = (value: number, [least, most]: readonly [number, number]): void => {
    expect(value).toBeGreaterThan(least);
    expect(value).toBeLessThan(most);
  };
  between(found.back.wood.massG, back);
  between(found.top.wood.massG, top);
  between(found.airMm3 / 1_000_000, air);
  const mass = register.entries.find(({ name }) => name === 'back.mass');
  expect(mass && dependsOn(mass)).toEqual(['back.volume', 'densityBack']);
});

test('the thinnest place of the channel is the channel, of the middle more', () => {
  const { zones } = box(sampleDesign('violin')).box.back.survey;
  expect(zones.map(({ zone }) => zone)).toEqual([
    'middle',
    'lowerBout',
    'waist',
    'upperBout',
    'channel',
    'post',
  ]);
  expect(zones.find(({ zone }) => zone === 'channel')?.leastMm).toBeCloseTo(2.3, 2);
  expect(zones.find(({ zone }) => zone === 'middle')?.leastMm).toBeGreaterThan(3);
});

test('a plate too thick for its low channel is told to come out thinner, and where', () => {
  const findings = box(
    sampleDesign('violin', { thicknessBackChannel: 3.4, thicknessBackBouts: 3.5, thicknessBackFlanks: 3.5 }),
  ).findings;
  const told = findings.filter(({ code }) => code === 'thickness.too-low');
  expect(told).toHaveLength(1);
  expect(told[0]?.found).toMatch(
    /the back comes out 2\.\d mm thick instead of 3\.\d mm, \d+ mm above the lower end/,
  );
  expect(box(sampleDesign('violin')).findings.filter(({ code }) => code.startsWith('thickness'))).toEqual([]);
});

test('points of a layout are met, and one off the plate is refused', () => {
  const design = sampleDesign('violin');
  const laid: Design = {
    ...design,
    thickness: { back: { pattern: 'longitudinal', points: [[-20, 140, 1.9]] } },
  };
  const { zones } = box(laid).box.back.survey;
  expect(Math.min(...zones.map(({ leastMm }) => leastMm))).toBeLessThan(2.05);
  const astray: Design = { ...design, thickness: { top: { points: [[150, 140, 3]] } } };
  expect(codes(astray)).toEqual(['thickness.point']);
});
