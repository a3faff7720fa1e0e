import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NO_SHEET_TRUST, SHEET_TRUST, scaleFromKnown } from './knownLengths.ts';

const codesOf = (result: ReturnType<typeof scaleFromKnown>) =>
  result.ok ? result.value.findings.map((one) => one.code) : result.faults.map((one) => one.code);

const scene = [
  { name: 'bodyLength', mm: 3540 },
  { name: 'upperBout', mm: 1680 },
  { name: 'lowerBout', mm: 2060 },
];

describe('without a calibration sheet', () => {
  test('one known length gives the scale, and a finding says that nothing checks it', () => {
    const result = scaleFromKnown(scene, [{ name: 'bodyLength', mm: 354 }], NO_SHEET_TRUST);
    if (!result.ok) throw new Error();
    expect(result.value.along).toBeCloseTo(0.1, 9);
    expect(result.value.across).toBeCloseTo(0.1, 9);
    expect(result.value.acrossPlusMinus).toBeGreaterThan(0.03);
    expect(codesOf(result)).toEqual(['known.unchecked']);
  });

  test('a length that does not help names those that do: no more than were measured', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'lowerBout', mm: 206 },
      { name: 'upperCorners', mm: 150 },
    ];
    const result = scaleFromKnown(scene, known, NO_SHEET_TRUST);
    if (!result.ok) throw new Error();
    expect(result.value.findings).toMatchObject([
      { code: 'known.unused', at: 'upperCorners', need: 'one of bodyLength, upperBout, lowerBout' },
    ]);
  });

  test('a length and a width that agree leave nothing to say', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'lowerBout', mm: 206 },
    ];
    expect(codesOf(scaleFromKnown(scene, known, NO_SHEET_TRUST))).toEqual([]);
  });

  test('each known length is told with what it misses by once the scale is set', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'upperBout', mm: 168.4 },
      { name: 'lowerBout', mm: 205.6 },
    ];
    const result = scaleFromKnown(scene, known, NO_SHEET_TRUST);
    if (!result.ok) throw new Error();
    const { across, misfits } = result.value;
    expect(misfits.map(({ name }) => name)).toEqual(['bodyLength', 'upperBout', 'lowerBout']);
    expect(misfits[1]!.misfitMm).toBeCloseTo(1680 * across - 168.4, 9);
    expect(misfits[1]!.misfitMm).toBeLessThan(-0.2);
    expect(misfits[2]!.misfitMm).toBeGreaterThan(0.2);
  });

  test('a picture stretched by 2 % is corrected, and said to be', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'lowerBout', mm: 206 * 1.02 },
    ];
    const result = scaleFromKnown(scene, known, NO_SHEET_TRUST);
    if (!result.ok) throw new Error();
    expect(result.value.across / result.value.along).toBeCloseTo(1.02, 3);
    expect(codesOf(result)).toEqual(['known.uneven']);
  });

  test('a length and a width a tenth apart are refused with both names', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'lowerBout', mm: 226 },
    ];
    const result = scaleFromKnown(scene, known, NO_SHEET_TRUST);
    expect(codesOf(result)).toEqual(['known.contradict']);
    if (!result.ok) expect(result.faults[0]!.at).toBe('bodyLength, lowerBout');
  });

  test('two widths that cannot both be true are refused', () => {
    const known = [
      { name: 'upperBout', mm: 168 },
      { name: 'lowerBout', mm: 210 },
    ];
    expect(codesOf(scaleFromKnown(scene, known, NO_SHEET_TRUST))).toEqual(['known.contradict']);
  });

  test('no length, or only one that the outline does not show, is refused', () => {
    expect(codesOf(scaleFromKnown(scene, [], NO_SHEET_TRUST))).toEqual(['known.none']);
    expect(codesOf(scaleFromKnown(scene, [{ name: 'stop', mm: 195 }], NO_SHEET_TRUST))).toEqual([
      'known.none',
    ]);
  });
});

describe('with the calibration sheet', () => {
  const seen = [
    { name: 'bodyLength', mm: 354.4 },
    { name: 'lowerBout', mm: 206.1 },
  ];

  test('callipers pull the scale most of the way to what they read, the sheet the rest', () => {
    const known = [
      { name: 'bodyLength', mm: 354 },
      { name: 'lowerBout', mm: 206 },
    ];
    const result = scaleFromKnown(seen, known, SHEET_TRUST);
    if (!result.ok) throw new Error();
    expect(result.value.along * 354.4).toBeGreaterThan(353.9);
    expect(result.value.along * 354.4).toBeLessThan(354.2);
    expect(result.value.alongPlusMinus).toBeLessThan(0.0015);
    expect(codesOf(result)).toEqual([]);
  });

  test('a length a little beyond both intervals is believed, with a finding; one far beyond is refused', () => {
    const with3mm = scaleFromKnown(seen, [{ name: 'bodyLength', mm: 351.5 }], SHEET_TRUST);
    expect(codesOf(with3mm)).toEqual(['known.offSheet']);
    expect(codesOf(scaleFromKnown(seen, [{ name: 'bodyLength', mm: 340 }], SHEET_TRUST))).toEqual([
      'known.contradict',
    ]);
  });

  test('nothing known leaves the sheet as it is', () => {
    const result = scaleFromKnown(seen, [], SHEET_TRUST);
    if (!result.ok) throw new Error();
    expect([result.value.along, result.value.across]).toEqual([1, 1]);
  });
});

test('a known length inside what a square-on view leaves open corrects the scale; beyond it the two contradict', () => {
  const seen = [{ name: 'bodyLength', mm: 331 }];
  const squareOn = { ...SHEET_TRUST, scalePlusMinus: 0.08 };
  const inside = scaleFromKnown(seen, [{ name: 'bodyLength', mm: 354 }], squareOn);
  if (!inside.ok) throw new Error(inside.faults[0]!.found);
  expect(inside.value.along * 331).toBeCloseTo(354, 0);
  const beyond = scaleFromKnown(seen, [{ name: 'bodyLength', mm: 365 }], squareOn);
  expect(codesOf(beyond)).toEqual(['known.contradict']);
});

test('a body of three metres is refused, and one in inches or centimetres is recognised', () => {
  for (const [mm, hint] of [
    [3000, /measure again/],
    [13.94, /inches/],
    [35.4, /centimetres/],
  ] as const) {
    const result = scaleFromKnown(scene, [{ name: 'bodyLength', mm }], NO_SHEET_TRUST);
    expect(codesOf(result)).toEqual(['known.absurd']);
    if (!result.ok) expect(result.faults[0]!.remedy).toMatch(hint);
  }
});

test('lengths in the scene multiplied by any factor give the correction divided by it', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (factor) => {
      const known = [
        { name: 'bodyLength', mm: 354 },
        { name: 'upperBout', mm: 168.2 },
      ];
      const plain = scaleFromKnown(
        scene.map((one) => ({ ...one, plusMinusMm: 1 })),
        known,
        NO_SHEET_TRUST,
      );
      const larger = scene.map(({ name, mm }) => ({ name, mm: mm * factor, plusMinusMm: factor }));
      const scaled = scaleFromKnown(larger, known, NO_SHEET_TRUST);
      if (!plain.ok || !scaled.ok) throw new Error();
      expect(scaled.value.along * factor).toBeCloseTo(plain.value.along, 9);
      expect(scaled.value.across * factor).toBeCloseTo(plain.value.across, 9);
    }),
  );
});
