import { expect, test } from 'vitest';
import { faultSentence } from '../base/index.ts';
import { type Design, draftDesign, VALUES, type ValueName } from '../design/index.ts';
import { FAMILIES, type Family, lengthOf, sizesOf } from '../knowledge/index.ts';
import { checkInstrument } from './checkInstrument.ts';

function designOf(
  family: Family,
  lengthMm: number,
  changed: Partial<Record<ValueName, number>> = {},
): Design {
  const origin = { kind: 'chosen' } as const;
  const drafted = draftDesign({
    family,
    name: 'Test',
    values: { bodyLength: { value: lengthMm, unit: 'mm', origin } },
  });
  if (!drafted.ok) throw new Error('refused');
  const values = { ...drafted.value.design.values };
  for (const [name, value] of Object.entries(changed) as [ValueName, number][])
    values[name] = { value, unit: VALUES[name].unit, origin };
  return { ...drafted.value.design, values };
}

/** The ordinary size of each family and the smallest of all; deriving every size takes seconds. */
const sizes = FAMILIES.flatMap((family) => {
  const all = sizesOf(family);
  return (family === 'violin' ? [all[0], all.at(-1)] : [all[0]]).flatMap((size) =>
    size ? [[family, size.name, size] as const] : [],
  );
});

test.each(sizes)(
  'the %s %s can be built from its length alone, with remarks at most',
  (family, _name, size) => {
    const weighty = checkInstrument(designOf(family, lengthOf(size))).filter(
      ({ weight }) => weight !== 'remark',
    );
    expect(weighty.map(faultSentence)).toEqual([]);
  },
);

test('what only the parts can show is found too, and nothing is told twice', () => {
  const findings = checkInstrument(designOf('cello', 755));
  expect(findings.map(({ at }) => at)).toContain('purflingToEdge');
  const keys = findings.map(({ code, at }) => `${code} ${at}`);
  expect(new Set(keys).size).toBe(keys.length);
});

test('a design that contradicts itself is told its causes, not the parts that fail from them', () => {
  const findings = checkInstrument(designOf('violin', 355, { waist: 160 }));
  const contradictions = findings.filter(({ weight }) => weight === 'contradiction');
  expect(new Set(contradictions.map(({ at }) => at))).toEqual(new Set(['waist']));
});

test('parts that cannot be made from a design without contradiction are contradictions of it', () => {
  const findings = checkInstrument(designOf('violin', 355, { lowerBlockWidth: 300 }));
  expect(findings[0]).toMatchObject({ weight: 'contradiction', at: 'lowerBlockWidth' });
});

test('more numbers of a neck than it can have are told with those that are off, and the nearest that fit', () => {
  const findings = checkInstrument(
    designOf('violin', 355, {
      stop: 195,
      neckStop: 130,
      stringLength: 335,
      overstand: 6,
      projection: 27,
      neckAngle: 7.5,
      boardEndHeight: 20.4,
    }),
  ).filter(({ code }) => code === 'neck.contradiction');
  expect(findings.map(({ at }) => at.split(', ')[0])).toEqual(['neckAngle', 'stringLength']);
  const [angle, strings] = findings.map(faultSentence);
  expect(angle).toMatch(/neck angle 7\.5° where the others need (5\.9\d|6(\.0\d)?)° \(1\.(4|5)\d?° off\)/);
  expect(angle).toContain('the nearest are overstand');
  // Half a millimetre more than the stops of a usual neck make: that of the nearest, steeper one.
  expect(strings).toContain('string length 335 mm where the others need 328.5 mm (6.5 mm off)');
});
