import { expect, test } from 'vitest';
import { containsPoint, lengthOf, nearestOn, pointAlong } from '../../curve/index.ts';
import { draftDesign, type Family } from '../../design/index.ts';
import { chosen } from '../../quantity/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';

function instrumentOf(family: Family, lengthMm: number, change: Record<string, number> = {}) {
  const mm = (value: number) => ({ value, unit: 'mm', origin: chosen('test') }) as const;
  const values = Object.fromEntries(
    Object.entries({ bodyLength: lengthMm, ...change }).map(([name, value]) => [name, mm(value)]),
  );
  const drafted = draftDesign({ family, name: 'sample', values });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error(JSON.stringify(derived.faults));
  return derived.value;
}

test.each([
  ['violin', 355],
  ['viola', 400],
  ['cello', 755],
] as const)('the mortise of a %s cuts both upper ribs between neck root and button', (family, length) => {
  const { neck, plan } = instrumentOf(family, length);
  const { atTop, atBack, shortOfCentreMm } = neck.inRibs;
  const { root } = neck.shape;
  // Narrower toward the back, and between the widths of the root at the edge of the top and at the button.
  expect(atTop.asideMm).toBeGreaterThan(atBack.asideMm);
  expect(atTop.asideMm).toBeLessThan(root.edgeWidthMm / 2 + 0.5);
  expect(atBack.asideMm).toBeGreaterThan(root.backWidthMm / 2 - 0.7);
  // A bent rib is longer than it is wide in plan, by little so near the centre.
  for (const { asideMm, takenMm } of [atTop, atBack]) {
    expect(takenMm).toBeGreaterThan(asideMm - 0.3);
    expect(takenMm).toBeLessThan(1.03 * asideMm);
  }
  expect(shortOfCentreMm).toBeCloseTo(atBack.asideMm - 3, 9);
  // The place along the strip is the place on the body: as far from the centre line.
  const face = plan.ribs.outer.sections.upperBout;
  const share = atTop.takenMm / plan.ribs.upperBout.developed.lengthMm;
  const at = pointAlong(face, (1 - share) * lengthOf(face));
  expect(Math.abs(at.x - atTop.asideMm)).toBeLessThan(0.2);
});

test('a wider root takes more of the ribs, half of it on either side', () => {
  const usual = instrumentOf('violin', 355).neck.inRibs;
  const wide = instrumentOf('violin', 355, { rootWidthBack: 25 }).neck.inRibs;
  expect(wide.atBack.asideMm - usual.atBack.asideMm).toBeCloseTo(2, 6);
  expect(wide.atBack.takenMm - usual.atBack.takenMm).toBeGreaterThan(1.99);
});

test('the hole of the end button lies in rib and block, half way up, and is drilled narrower than it is reamed', () => {
  const { setUp, plan, design } = instrumentOf('violin', 355);
  const { diameterMm, insideMm, drillMm, upMm, besideMm } = setUp.endpin;
  expect(diameterMm).toBe(design.values.endpinDiameter?.value);
  expect(insideMm).toBeCloseTo(7.5 - (1.1 + 14) / 17, 9);
  expect(drillMm).toBe(6);
  expect(upMm).toBe(15);
  const { lower } = plan.blocks;
  for (const x of [-diameterMm / 2, diameterMm / 2])
    expect(containsPoint(lower.outline, { x, y: lower.faceStationMm - 1 })).toBe(true);
  expect(nearestOn(lower.outline, { x: diameterMm / 2, y: lower.faceStationMm - 5 }).distanceMm).toBeLessThan(
    besideMm,
  );
});

test('an end button too thick for its block, and one that tapers to nothing, are named', () => {
  const found = (change: Record<string, number>) =>
    instrumentOf('violin', 355, change).setUp.findings.map(({ code }) => code);
  expect(found({})).not.toContain('setup.endpin-block');
  expect(found({ endpinDiameter: 24 })).toContain('setup.endpin-block');
});

test('a hole wider than its block, a mortise through its block and a tuning that is none are named once each', () => {
  const codes = (change: Record<string, number>) => {
    const { findings } = instrumentOf('violin', 355, change);
    return findings
      .filter(({ weight }) => weight === 'contradiction')
      .map(({ code, at }) => `${code}: ${at}`);
  };
  expect(codes({ endpinDiameter: 60 })).toEqual(['setup.endpin-block: endpinDiameter, lowerBlockWidth']);
  expect(codes({ mortiseDepth: 20 })).toEqual([
    'neck.mortise-through: mortiseDepth, upperBlockDepth, rootAngle',
  ]);
  const untuned = instrumentOf('violin', 355).design;
  const hz = { value: 300, unit: 'Hz', origin: chosen('test') } as const;
  const derived = deriveInstrument({ ...untuned, values: { ...untuned.values, tuningA: hz } });
  if (!derived.ok) throw new Error('refused');
  const strings = derived.value.findings.filter(({ code }) => code.startsWith('strings.'));
  expect(strings.map(({ code, at }) => `${code}: ${at}`)).toEqual(['strings.tuning: tuningA']);
});
