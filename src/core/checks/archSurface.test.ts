import { describe, expect, test } from 'vitest';
import { type Design, draftDesign, type Family, type ValueName } from '../design/index.ts';
import { deriveInstrument, type PlateArch, surfaceProbes } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { archSurfaceFindings, surfaceTrouble } from './archSurface.ts';

function archOf(
  family: Family,
  lengthMm: number,
  changes: Partial<Record<ValueName, number>> = {},
): PlateArch {
  const given = Object.entries({ bodyLength: lengthMm, ...changes }).map(([name, value]) => [
    name,
    { value, unit: name.startsWith('fullness') ? 'ratio' : 'mm', origin: chosen('test') },
  ]);
  const drafted = draftDesign({ family, name: 'sample', values: Object.fromEntries(given) });
  const made = drafted.ok ? deriveInstrument(drafted.value.design as Design) : drafted;
  if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
  return made.value.plates.back;
}

const codes = (arch: PlateArch): readonly string[] => archSurfaceFindings(arch).map(({ code }) => code);

test.each([
  ['violin', 285],
  ['violin', 355],
  ['viola', 390],
  ['viola', 430],
  ['cello', 690],
  ['cello', 755],
] as const)('the usual back of a %s of %d mm is sound', (family, lengthMm) => {
  expect(archSurfaceFindings(archOf(family, lengthMm))).toEqual([]);
});

test('a low cello arch with the corners of a violin is dished a little beside them, which is told as a caution', () => {
  const corners = { fullnessUpperCorner: -0.08, fullnessLowerCorner: -0.08 };
  const found = archSurfaceFindings(archOf('cello', 755, corners));
  expect(found.map(({ code, weight }) => [code, weight])).toEqual([['check.arch-hollow', 'caution']]);
});

describe('what is wrong with an arch is told with its place', () => {
  test('too steep for a gouge', () => {
    const found = archSurfaceFindings(archOf('violin', 355, { archHeightBack: 21 }));
    const steep = found.find(({ code }) => /arch-steep/.test(code));
    expect(steep?.found).toMatch(/falls at \d+\.\d degrees in the waist, \d+ mm from the lower end/);
  });

  test('dished between the corners and the middle', () => {
    const thin = { fullnessUpperCorner: -0.17, fullnessLowerCorner: -0.17, archHeightBack: 13 };
    expect(codes(archOf('violin', 355, thin))).toContain('check.arch-hollow');
  });

  test('flat spots, heights below the channel and above the crest, and sag, in a surface so changed', () => {
    const arch = archOf('violin', 355);
    const probes = surfaceProbes(arch, 2);
    const told = (
      change: (probe: (typeof probes)[number]) => Partial<(typeof probes)[number]>,
    ): readonly string[] =>
      surfaceTrouble(
        arch,
        probes.map((probe) => ({ ...probe, ...change(probe) })),
      ).map(({ code }) => code);
    const near = ({ xMm, yMm }: (typeof probes)[number]): boolean => Math.hypot(xMm - 20, yMm - 90) < 12;
    const level = { bendXX: 0, bendXY: 0, bendYY: 0, slopeX: 0, slopeY: 0 };
    expect(told((probe) => (near(probe) ? { shape: { ...probe.shape, ...level } } : {}))).toEqual([
      'check.arch-flat',
    ]);
    expect(told((probe) => (near(probe) ? { shape: { ...probe.shape, zMm: 2 } } : {}))).toEqual([
      'check.arch-below-channel',
    ]);
    expect(told((probe) => (near(probe) ? { shape: { ...probe.shape, zMm: 15 } } : {}))).toEqual([
      'check.arch-crest',
    ]);
    expect(
      told((probe) =>
        probe.share > 0.3 && probe.share < 0.5 && Math.abs(probe.yMm - 150) < 4 ? { correctionMm: -1.2 } : {},
      ),
    ).toEqual(['check.arch-sag']);
  });
});
