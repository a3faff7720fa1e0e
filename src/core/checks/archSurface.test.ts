import { describe, expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../base/index.ts';
import { type Design, draftDesign, type Family, type ValueName } from '../design/index.ts';
import { deriveInstrument, type PlateArch, surfaceProbes } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { archSurfaceFindings, surfaceTrouble } from './archSurface.ts';

function archOf(
  family: Family,
  lengthMm: number,
  changes: Partial<Record<ValueName, number>> = {},
  measuredHeights: Design['measuredHeights'] = {},
): PlateArch {
  const given = Object.entries({ bodyLength: lengthMm, ...changes }).map(([name, value]) => [
    name,
    { value, unit: name.startsWith('fullness') ? 'ratio' : 'mm', origin: chosen('test') },
  ]);
  const drafted = draftDesign({ family, name: 'sample', values: Object.fromEntries(given), measuredHeights });
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

describe('a surface drawn to measured heights', () => {
  const plain = archOf('violin', 355);
  const drawnTo = (over: (x: number, y: number) => number, plusMinus: number): PlateArch => {
    const heights = surfaceProbes(plain, 7)
      .filter(({ insideMm }) => insideMm > 3)
      .map(({ xMm, yMm, shape }) => [xMm, yMm, shape.zMm + over(xMm, yMm)] as const);
    return archOf('violin', 355, {}, { back: { heights, plusMinus } });
  };

  test('that follows their scatter is told to ripple, with its place', () => {
    const random = seededRandom(5);
    const arch = drawnTo(() => 0.25 * seededNormal(random), 0.1);
    const ripple = archSurfaceFindings(arch).find(({ code }) => code === 'check.arch-ripple');
    expect(ripple?.found).toMatch(
      /turns round \d\d times .* mm from the lower end, \d+ mm from the centre line/,
    );
    expect(ripple?.remedy).toContain('plusMinus');
  });

  test('that follows a slow difference is not', () => {
    const arch = drawnTo((x, y) => 0.4 * Math.cos(x / 60) * Math.sin(y / 60), 0.1);
    expect(arch.pull?.moved.mm).not.toBe(0);
    expect(codes(arch)).not.toContain('check.arch-ripple');
  });

  test('whose crest they raise is told so as a caution', () => {
    const arch = drawnTo((x, y) => 0.6 * Math.exp(-(x * x + (y - 180) ** 2) / 3000), 0.05);
    const crest = archSurfaceFindings(arch).find(({ code }) => code === 'check.arch-crest');
    expect(crest).toMatchObject({ weight: 'caution', remedy: expect.stringContaining('archHeightBack') });
  });
});

test('a bend of a few millimetres inside the channel looks like a crease', () => {
  const arch = archOf('violin', 355);
  const probes = surfaceProbes(arch, 2).map((probe) =>
    probe.row === 80 && probe.column === 12
      ? { ...probe, shape: { ...probe.shape, bendXX: -0.15, bendXY: 0, bendYY: 0, slopeX: 0, slopeY: 0 } }
      : probe,
  );
  const crease = surfaceTrouble(arch, probes).find(({ code }) => code === 'check.arch-crease');
  expect(crease?.found).toContain(
    'radius of only 6.7 mm in the waist, 160 mm from the lower end, 24 mm from',
  );
});
