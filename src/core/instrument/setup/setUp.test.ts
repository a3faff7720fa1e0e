import { describe, expect, test } from 'vitest';
import { type Design, draftDesign, type Family, VALUES, type ValueName } from '../../design/index.ts';
import { chosen } from '../../quantity/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import type { SetUp } from './setUp.ts';

function designOf(
  family: Family,
  bodyLengthMm: number,
  values: Partial<Record<ValueName, number>> = {},
): Design {
  const bodyLength = { value: bodyLengthMm, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: 'sample', values: { bodyLength } });
  if (!drafted.ok) throw new Error(drafted.faults.map(({ code }) => code).join());
  const given = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      { value, unit: VALUES[name as ValueName].unit, origin: chosen('test') },
    ]),
  );
  return { ...drafted.value.design, values: { ...drafted.value.design.values, ...given } };
}

function derived(design: Design) {
  const instrument = deriveInstrument(design);
  if (!instrument.ok) throw new Error(JSON.stringify(instrument.faults));
  return instrument.value;
}

const setUpOf = (...args: Parameters<typeof designOf>): SetUp => derived(designOf(...args)).setUp;
const codes = (setUp: SetUp): readonly string[] => setUp.findings.map(({ code }) => code);

test.each<[Family, number]>([
  ['violin', 355],
  ['violin', 335],
  ['violin', 285],
  ['violin', 230],
  ['viola', 380],
  ['viola', 390],
  ['viola', 406],
  ['viola', 440],
  ['cello', 755],
])('a %s of %d mm: two ways to the height of its bridge agree, and its parts fit', (family, length) => {
  const { neck, setUp } = derived(designOf(family, length));
  expect(Math.abs(setUp.crownHeightMm - neck.set.bridgeHeightMm)).toBeLessThan(0.5 * (length / 355));
  expect(setUp.load.lowFootN + setUp.load.highFootN).toBeCloseTo(setUp.load.downN, 9);
  expect(setUp.load.highFootN).toBeGreaterThan(setUp.load.lowFootN);
  expect(setUp.load.towardBoardN).toBeGreaterThan(0);
  expect(setUp.load.halvedDownN).toBeGreaterThan(setUp.load.downN);
  expect(setUp.findings.filter(({ weight }) => weight !== 'remark')).toEqual([]);
});

test('the pull goes with the square of the tuning, and a fifteenth less at 415 hertz presses less on the bridge', () => {
  const [usual, low] = [setUpOf('violin', 355), setUpOf('violin', 355, { tuningA: 415 })];
  expect(low.strings.totalN / usual.strings.totalN).toBeCloseTo((415 / 440) ** 2, 9);
  expect(low.load.downN / usual.load.downN).toBeCloseTo((415 / 440) ** 2, 9);
});

describe('the mass of a string', () => {
  test('is what was given, before what its packet says', () => {
    const { strings } = setUpOf('violin', 355, { string1Mass: 0.4 });
    expect(strings.strings.at(-1)).toMatchObject({
      letter: 'E',
      gramsPerMetre: 0.4,
      massFrom: ['string1Mass'],
    });
  });

  test('of a plain string follows from gauge and density', () => {
    const gut = setUpOf('violin', 355, { string2Diameter: 0.8, string2Density: 1300 });
    expect(gut.strings.strings.at(-2)?.gramsPerMetre).toBeCloseTo((Math.PI * 0.64 * 1300) / 4000, 9);
  });

  test('that gauge and density contradict is a caution', () => {
    const values = { string2Diameter: 0.8, string2Density: 1300, string2Mass: 0.9 };
    expect(codes(setUpOf('violin', 355, values))).toContain('strings.mass');
    expect(codes(setUpOf('violin', 355, { ...values, string2Mass: 0.66 }))).not.toContain('strings.mass');
  });
});

test('an after-length is a sixth of the string, or what is asked for', () => {
  const { afterLengthMm, strings } = setUpOf('violin', 355);
  expect(afterLengthMm).toBeCloseTo(strings.lengthMm / 6, 9);
  expect(setUpOf('violin', 355, { afterLength: 53 }).afterLengthMm).toBe(53);
});

describe('what cannot be strung as it stands is said', () => {
  const most = setUpOf('violin', 355).tailpieceMostMm;
  test.each<[string, Partial<Record<ValueName, number>>, string]>([
    ['a tailpiece without room for its gut', { tailpieceLength: most + 0.5 }, 'setup.tailpiece'],
    ['no room for a tailpiece', { afterLength: 160 }, 'setup.after-length'],
    ['a board so flat that the bow touches two strings', { boardRadius: 60 }, 'setup.bowing-room'],
    ['a saddle let in past its block', { saddleDepth: 30 }, 'setup.saddle-seat'],
    ['a saddle wider than its block', { saddleWidth: 50 }, 'setup.saddle-width'],
    ['a crest behind the saddle', { saddleCrest: 8 }, 'setup.saddle-crest'],
    ['strings twice as heavy', { string1Pull: 160 }, 'strings.total-pull'],
    ['a string that breaks', { string1Pull: 110 }, 'strings.pull'],
    ['a slack string', { string4Diameter: 1.2, string4Density: 1300 }, 'strings.pull'],
    ['a flat break', { saddleHeight: 20 }, 'setup.break-angle'],
    ['a low bridge', { projection: 22 }, 'setup.bridge-height'],
    ['a waist as wide as the bow needs', { boardRadius: 24, waist: 120 }, 'setup.bow-over-edge'],
  ])('%s', (_what, values, code) => {
    const design = designOf('violin', 355, values);
    expect(codes(derived(design).setUp)).toContain(code);
    expect(codes(setUpOf('violin', 355))).not.toContain(code);
  });

  test('a tailpiece that just fits is no matter', () => {
    expect(codes(setUpOf('violin', 355, { tailpieceLength: most - 0.1 }))).toEqual([]);
  });
});

test.each<[string, Partial<Record<ValueName, number>>, string]>([
  ['a string without gauge', { string3Diameter: 0 }, 'strings.value string3Diameter'],
  ['a tuning that is none', { tuningA: Number.NaN }, 'strings.value tuningA'],
  ['a mass below nothing', { string3Mass: -1 }, 'strings.value string3Mass'],
  ['a bridge without feet', { bridgeFootLength: 0 }, 'setup.value bridgeFootLength'],
  ['a saddle over the bridge', { saddleHeight: 60 }, 'neck.saddle saddleHeight'],
])('%s is refused', (_what, values, expected) => {
  const instrument = deriveInstrument(designOf('violin', 355, values));
  expect(instrument.ok ? [] : instrument.faults.map(({ code, at }) => `${code} ${at}`)).toContain(expected);
});

test('built left-handed, post and bar change sides and nothing else of the body does', () => {
  const [right, left] = [false, true].map((leftHanded) =>
    derived({ ...designOf('violin', 355), leftHanded }),
  );
  const [one, other] = [right, left].map((instrument) => instrument?.hollows.barAndPost);
  expect(other?.post.from.x).toBe(-(one?.post.from.x ?? 0));
  expect(other?.bar.to.x).toBe(-(one?.bar.to.x ?? 0));
  expect(other?.post.from.y).toBe(one?.post.from.y);
  expect(left?.setUp.load).toEqual(right?.setUp.load);
});
