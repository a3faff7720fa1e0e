import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seededRandom } from '../../base/index.ts';
import { nearestOn } from '../../curve/index.ts';
import { type Design, draftDesign } from '../../design/index.ts';
import { chosen } from '../../quantity/index.ts';
import { type DrillBit, plateHeight, type RoughNumbers } from '../arching/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import { type HollowPlate, insideHeight } from './hollow.ts';
import { type HollowHole, hollowHoles } from './hollowHoles.ts';
import { thicknessAt } from './thicknessMap.ts';

const SIZES = [
  ['violin', 355],
  ['viola', 410],
  ['cello', 755],
] as const;

interface Drilled {
  readonly name: string;
  readonly plate: HollowPlate;
  readonly rough: RoughNumbers;
}

function drilled(
  family: Design['family'],
  lengthMm: number,
  thickness?: Design['thickness'],
): readonly Drilled[] {
  const bodyLength = { value: lengthMm, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: family, values: { bodyLength } });
  if (!drafted.ok) throw new Error('refused');
  const made = deriveInstrument({ ...drafted.value.design, ...(thickness && { thickness }) });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  const { hollows, roughing } = made.value;
  return (['back', 'top'] as const).map((plate) => ({
    name: `${plate} of a ${family}`,
    plate: hollows[plate],
    rough: roughing[plate],
  }));
}

const plates = SIZES.flatMap(([family, lengthMm]) => drilled(family, lengthMm));

/** How far a random place of the bit in a hole is from the finished inside, less the allowance; on a random half. */
function roomAt(
  { plate, rough }: Drilled,
  { at, depthMm }: HollowHole,
  { diameterMm, pointMm }: DrillBit,
  random: () => number,
): number {
  // A third of the places on the rim, where a bit on a slope comes deepest.
  const out = random() < 1 / 3 ? 1 : Math.sqrt(random());
  const turn = 2 * Math.PI * random();
  const side = random() < 1 / 2 ? 1 : -1;
  const x = side * (at.x + (out * diameterMm * Math.cos(turn)) / 2);
  const y = at.y + (out * diameterMm * Math.sin(turn)) / 2;
  return insideHeight(plate, x, y) - (depthMm - out * pointMm) - rough.insideAllowanceMm;
}

/** The bits that are tried: as usual, flat and wide, long and thin, wide with a short point. */
const BITS: readonly (DrillBit & { readonly pitchMm: number })[] = [
  { diameterMm: 6, pointMm: 1.8, pitchMm: 12 },
  { diameterMm: 12, pointMm: 0, pitchMm: 20 },
  { diameterMm: 3, pointMm: 3, pitchMm: 20 },
  { diameterMm: 20, pointMm: 2, pitchMm: 30 },
];

test.each(plates)(
  'nowhere in the $name does a bit come nearer to the finished inside than the allowance',
  (one) => {
    const random = seededRandom(17);
    let looked = 0;
    let violations = 0;
    for (const drill of BITS)
      for (const hole of hollowHoles(one.plate, { ...one.rough, drill }))
        for (let tries = 0; tries < 20; tries++) {
          looked++;
          if (roomAt(one, hole, drill, random) < 0) violations++;
        }
    expect(looked).toBeGreaterThan(4000);
    expect(violations).toBe(0);
  },
);

test.each([
  { extra: 1, reach: 0.5 },
  { extra: 1, reach: 12 },
  { extra: -0.8, reach: 5 },
])('wood added or taken along the bar is spared on both halves, up to the rim of a flat bit: %o', (bar) => {
  const random = seededRandom(23);
  const [, top] = drilled('violin', 355, { top: { bar } });
  const area = top?.plate.thickness.areas.find(({ name }) => name === 'bar');
  if (!top || !area) throw new Error('no bar');
  const heading = Math.atan2(area.to.y - area.from.y, area.to.x - area.from.x);
  let looked = 0;
  for (let tries = 0; tries < 8; tries++) {
    const bit = { diameterMm: 6, pointMm: 0, pitchMm: 7.5 + 3 * random() };
    for (const { at, depthMm } of hollowHoles(top.plate, { ...top.rough, drill: bit }))
      for (let turn = -2; turn <= 2; turn++)
        for (const side of [0, Math.PI]) {
          // Square to the bar, and a little beside that: where a bit first meets its wood. The bar is on the other half.
          const angle = Math.PI - (heading + Math.PI / 2 + side) + turn / 10;
          const [x, y] = [at.x + 3 * Math.cos(angle), at.y + 3 * Math.sin(angle)];
          looked++;
          expect(insideHeight(top.plate, -x, y) - depthMm).toBeGreaterThanOrEqual(
            top.rough.insideAllowanceMm,
          );
        }
  }
  expect(looked).toBeGreaterThan(5000);
});

test('wood added at the post is spared on both halves, of back and top', () => {
  const random = seededRandom(29);
  const post = { extra: 1, reach: 3 };
  for (const one of drilled('violin', 355, { back: { post }, top: { post } }))
    for (const drill of BITS)
      for (const hole of hollowHoles(one.plate, { ...one.rough, drill }))
        for (let tries = 0; tries < 20; tries++)
          expect(roomAt(one, hole, drill, random)).toBeGreaterThanOrEqual(0);
});

test('every tip leaves at least the thickness of the plate to every place of the outside near it', () => {
  const known = plates.map(({ plate, rough }) => ({ plate, holes: hollowHoles(plate, rough) }));
  fc.assert(
    fc.property(
      fc.constantFrom(...known),
      fc.nat(),
      fc.array(fc.tuple(fc.integer({ min: -120, max: 120 }), fc.integer({ min: -120, max: 120 })), {
        minLength: 60,
        maxLength: 60,
      }),
      ({ plate, holes }, pick, places) => {
        const hole = holes[pick % holes.length];
        if (!hole) throw new Error('no hole');
        for (const [across, along] of [[0, 0] as const, ...places]) {
          const [x, y] = [hole.at.x + across / 10, hole.at.y + along / 10];
          const up = plateHeight(plate.arch, x, y, 'finished') - hole.depthMm;
          expect(Math.hypot(across / 10, along / 10, up)).toBeGreaterThan(thicknessAt(plate.thickness, x, y));
        }
      },
    ),
    { numRuns: 100 },
  );
});

test.each(plates)(
  'holes of the $name stand on the even grid, off the slope to the gluing face, and stop at half millimetres',
  (one) => {
    const { plate, rough } = one;
    const { pitchMm, diameterMm } = rough.drill;
    const holes = hollowHoles(plate, rough);
    expect(holes.length).toBeGreaterThan(100);
    const deepest = Math.max(...holes.map(({ depthMm }) => depthMm));
    // The deepest hole comes within the allowance, a setting and what a bit needs on a slope of the deepest place.
    expect(deepest).toBeGreaterThan(
      insideHeight(plate, 0, plate.arch.bodyLengthMm / 2) - rough.insideAllowanceMm - 1,
    );
    for (const { at, depthMm, leftMm } of holes) {
      expect(at.x / pitchMm - 1 / 2).toBeCloseTo(Math.round(at.x / pitchMm - 1 / 2), 9);
      expect(nearestOn(plate.line, at).distanceMm).toBeGreaterThanOrEqual(diameterMm / 2 + plate.rampMm);
      expect(depthMm * 2).toBe(Math.round(depthMm * 2));
      expect(depthMm).toBeGreaterThanOrEqual(0.5);
      expect(leftMm + depthMm).toBeCloseTo(plateHeight(plate.arch, at.x, at.y, 'finished'), 9);
    }
  },
);

test('more allowance leaves shallower holes, and fewer of them', () => {
  const [one] = plates;
  if (!one) throw new Error('no plate');
  const usual = hollowHoles(one.plate, one.rough);
  const careful = hollowHoles(one.plate, {
    ...one.rough,
    insideAllowanceMm: one.rough.insideAllowanceMm + 1,
  });
  expect(careful.length).toBeLessThan(usual.length);
  for (const { at, depthMm } of careful)
    expect(usual.find((hole) => hole.at.x === at.x && hole.at.y === at.y)?.depthMm).toBe(depthMm + 1);
});
