import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { closeChain, containsPoint, joinChains } from '../../curve/index.ts';
import { lowestTip } from './drillBit.ts';
import { drillPoints } from './drillPoints.ts';
import { plateArch } from './plateArch.ts';
import { plateHeight } from './plateHeight.ts';
import { roughNumbers } from './roughNumbers.ts';
import { terraces } from './terraces.ts';

const ROUGH = {
  roughAllowance: 1,
  roughStep: 2,
  hollowAllowance: 0.5,
  drillPitch: 12,
  drillDiameter: 6,
  drillPoint: 1.8,
};
const values = archValues(ROUGH);
const plates = (['back', 'top'] as const).map((plate) => {
  const made = plateArch(values, violinHalf(), plate);
  if (!made.ok) throw new Error('refused');
  const rough = roughNumbers(values, made.value);
  if (!rough.ok) throw new Error('refused');
  const steps = terraces(made.value, rough.value);
  return { arch: made.value, rough: rough.value, steps };
});
const treble = closeChain(joinChains(...(plates[0]?.arch.edge ?? [])));
/** Even over an interval, which fast-check's own doubles are not. */
function even(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((share) => from + ((to - from) * share) / 1_000_000);
}
const onPlate = fc
  .record({
    x: even(0.01, 103),
    y: even(0, 355),
  })
  .filter((at) => containsPoint(treble, at));

test('terraces rise from the flat edge and its allowance in even steps, and stop under the crest', () => {
  for (const { arch, rough, steps } of plates) {
    expect(steps[0]?.levelMm).toBeCloseTo(arch.numbers.edgeHeightMm + 1, 9);
    steps.forEach(({ levelMm, depthMm }, index) => {
      expect(levelMm).toBeCloseTo(arch.numbers.edgeHeightMm + 1 + 2 * index, 9);
      expect(levelMm + depthMm).toBeCloseTo(rough.boardMm, 9);
    });
    const last = steps.at(-1)?.levelMm ?? 0;
    expect(last).toBeLessThan(arch.archHeightMm + 1);
    expect(last + 2).toBeGreaterThan(arch.archHeightMm + 1 - 0.4);
  }
});

test('what is cut down to the terraces never goes below the arched plate and its allowance', () => {
  fc.assert(
    fc.property(fc.constantFrom(...plates), onPlate, ({ arch, rough, steps }, { x, y }) => {
      const outside = steps.find(({ half }) => !containsPoint(closeChain(half), { x, y }));
      const left = outside?.levelMm ?? rough.boardMm;
      expect(left).toBeGreaterThanOrEqual(plateHeight(arch, x, y, 'arched') + 1 - 1e-9);
    }),
    { numRuns: 3000 },
  );
});

test('no terrace leaves more wood than its step and what its line is drawn outside', () => {
  fc.assert(
    fc.property(fc.constantFrom(...plates), onPlate, ({ arch, rough, steps }, { x, y }) => {
      const outside = steps.find(({ half }) => !containsPoint(closeChain(half), { x, y }));
      const left = outside?.levelMm ?? rough.boardMm;
      expect(left - (plateHeight(arch, x, y, 'arched') + 1)).toBeLessThan(2 + 0.2);
    }),
    { numRuns: 1000 },
  );
});

test('each terrace lies within the one below it', () => {
  for (const { steps } of plates)
    steps.slice(1).forEach(({ half }, index) => {
      const below = steps[index]?.half;
      if (!below) throw new Error('none below');
      for (const { x, y } of half.vertices)
        expect(containsPoint(closeChain(below), { x: Math.max(x, 1e-4), y })).toBe(true);
    });
});

test('no part of a bit, flat or pointed, comes below the arched plate and its allowance', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...plates),
      even(3, 12),
      fc.constantFrom(0, 1.8, 4),
      fc.array(
        fc.record({
          turn: even(0, 7),
          out: even(0, 1),
        }),
        {
          minLength: 20,
          maxLength: 20,
        },
      ),
      even(0, 0.999),
      ({ arch, rough }, diameterMm, pointMm, probes, pick) => {
        const drill = { pitchMm: 30, diameterMm, pointMm };
        const holes = drillPoints(arch, { ...rough, drill });
        const hole = holes[Math.floor(pick * holes.length)];
        if (!hole) throw new Error('no hole');
        for (const { turn, out } of probes) {
          const [x, y] = [
            hole.at.x + (out * diameterMm * Math.cos(turn)) / 2,
            hole.at.y + (out * diameterMm * Math.sin(turn)) / 2,
          ];
          const bit = hole.leftMm + out * pointMm;
          expect(bit).toBeGreaterThanOrEqual(plateHeight(arch, x, y, 'arched') + rough.allowanceMm);
        }
      },
    ),
    { numRuns: 50 },
  );
});

test('a flat bit on a slope stops as high as the slope is at its rim, a sharp cone at its tip', () => {
  const slope = ({ x }: { x: number }): number => 10 + x;
  expect(lowestTip(slope, { x: 0, y: 0 } as never, { diameterMm: 6, pointMm: 0 })).toBeCloseTo(13.05, 9);
  expect(lowestTip(slope, { x: 0, y: 0 } as never, { diameterMm: 6, pointMm: 3 })).toBeCloseTo(10.05, 9);
});

test('holes stand on an even grid about the centre line, clear of the edge, and stop at half millimetres', () => {
  for (const { arch, rough } of plates) {
    const holes = drillPoints(arch, rough);
    expect(holes.length).toBeGreaterThan(100);
    for (const { at, leftMm, depthMm } of holes) {
      expect((at.x - 6) % 12).toBeCloseTo(0, 9);
      expect(leftMm * 2).toBeCloseTo(Math.round(leftMm * 2), 9);
      expect(leftMm + depthMm).toBeCloseTo(rough.boardMm, 9);
    }
  }
});

test.each([
  [{ blankHeightBack: 12 }, 'rough.board'],
  [{ roughStep: 0 }, 'rough.number'],
  [{ roughAllowance: -1 }, 'rough.number'],
  [{ hollowAllowance: -0.5 }, 'rough.number'],
  [{ drillPitch: 6 }, 'rough.pitch'],
  [{ drillPoint: Number.NaN }, 'rough.number'],
])('what cannot be roughed out so is refused in words: %o', (change, code) => {
  const arch = plates[0]?.arch;
  if (!arch) throw new Error('no plate');
  const read = roughNumbers(archValues({ ...ROUGH, ...change }), arch);
  expect(read.ok ? [] : read.faults.map((fault) => fault.code)).toEqual([code]);
});
