import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VIOLIN_NECK } from '../../../../test/fixtures/neckSizes.ts';
import { neckContradiction } from './neckContradiction.ts';
import { neckSet } from './neckSet.ts';
import { numberOf, type SetName, type SetReading, type SettledNeck, settledNeck } from './settledNeck.ts';

const SPREAD: Record<SetName, number> = {
  neckStop: 0.5,
  overstand: 0.3,
  projection: 0.5,
  neckAngle: 0.15,
  boardEndHeight: 0.5,
  bridgeHeight: 0.5,
  stringLength: 1,
};

function readings(given: Partial<Record<SetName, number>>): readonly SetReading[] {
  const habits = { neckStop: 130, overstand: 6, projection: 27 };
  return (Object.keys(SPREAD) as SetName[]).flatMap((name): SetReading[] => {
    const own = given[name];
    const habit = (habits as Partial<Record<SetName, number>>)[name];
    if (own !== undefined) return [{ name, value: own, spread: SPREAD[name], isGiven: true }];
    return habit === undefined ? [] : [{ name, value: habit, spread: SPREAD[name], isGiven: false }];
  });
}

function settled(given: Partial<Record<SetName, number>>): SettledNeck {
  const checked = settledNeck(VIOLIN_NECK, readings(given));
  if (!checked.ok) throw new Error(checked.faults.map(({ code }) => code).join());
  return checked.value;
}

function told(given: Partial<Record<SetName, number>>) {
  return neckContradiction(VIOLIN_NECK, readings(given), settled(given))[0];
}

test('habits alone are kept to the last figure, and nothing is surplus', () => {
  const { sizes, met } = settled({});
  expect([sizes.overstandMm, sizes.projectionMm, sizes.neckStopMm]).toEqual([6, 27, 130]);
  expect(met).toEqual([]);
});

test.each(['neckAngle', 'boardEndHeight', 'bridgeHeight', 'stringLength'] as const)(
  'a %s that is given alone is met, and the overstand keeps its habit',
  (name) => {
    const value = { neckAngle: 6.3, boardEndHeight: 21.3, bridgeHeight: 34, stringLength: 331 }[name];
    const { sizes, set, met } = settled({ [name]: value });
    expect(numberOf(name, sizes, set)).toBeCloseTo(value, 3);
    expect(sizes.overstandMm).toBe(6);
    expect(met.map((one) => one.name)).toEqual([name]);
    if (name === 'stringLength') expect(sizes.projectionMm).toBe(27);
    else expect(sizes.neckStopMm).toBe(130);
  },
);

test('whatever a neck measures, all of its numbers given together settle to that neck and are no contradiction', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 4.5, max: 8, noNaN: true }),
      fc.double({ min: 24, max: 30, noNaN: true }),
      fc.double({ min: 125, max: 135, noNaN: true }),
      (overstandMm, projectionMm, neckStopMm) => {
        const sizes = { ...VIOLIN_NECK, overstandMm, projectionMm, neckStopMm };
        const set = neckSet(sizes);
        if (!set.ok) throw new Error('cannot be set');
        const all = Object.fromEntries(
          (Object.keys(SPREAD) as SetName[]).map((name) => [name, numberOf(name, sizes, set.value)]),
        );
        const found = settled(all);
        expect(found.sizes.overstandMm).toBeCloseTo(overstandMm, 5);
        expect(found.sizes.projectionMm).toBeCloseTo(projectionMm, 5);
        expect(found.sizes.neckStopMm).toBeCloseTo(neckStopMm, 5);
        expect(found.questions.map(({ surplus }) => surplus)).toEqual([3, 1]);
        expect(told(all)).toBeUndefined();
      },
    ),
    { numRuns: 40 },
  );
});

describe('numbers that cannot all hold', () => {
  test('a board end of 18 under a projection of 27 is a contradiction of both, with what each would have to be', () => {
    const given = { overstand: 6, projection: 27, boardEndHeight: 18 };
    const { sizes, met, questions } = settled(given);
    // Worked elsewhere from the same construction: overstand 5.83, projection 25.90, residuals −0.58, −2.21, +3.17 spreads.
    expect(sizes.overstandMm).toBeCloseTo(5.83, 2);
    expect(sizes.projectionMm).toBeCloseTo(25.9, 2);
    expect(questions[0]?.sumOfSquares).toBeCloseTo(15.3, 1);
    expect(questions[0]?.surplus).toBe(1);
    expect(met.map(({ value, settled: at, spread }) => ((at - value) / spread).toFixed(2))).toEqual([
      '-0.58',
      '-2.21',
      '3.17',
    ]);
    const finding = told(given);
    expect(finding?.code).toBe('neck.contradiction');
    expect(finding?.at).toBe('boardEndHeight, projection, overstand');
    expect(finding?.found).toContain(
      'height of the board’s end 18 mm where the others need 20.4 mm (2.4 mm off)',
    );
    expect(finding?.found).toContain('projection 27 mm where the others need 23.5 mm');
    expect(finding?.need).toContain(
      'overstand 5.8 mm, projection 25.9 mm and height of the board’s end 19.6 mm',
    );
  });

  test('of everything given at once, the one that is wrong is named alone', () => {
    const finding = told({
      neckStop: 130,
      overstand: 6,
      projection: 27,
      neckAngle: 7.5,
      boardEndHeight: 20.41,
      stringLength: 328.1,
    });
    expect(finding?.code).toBe('neck.contradiction');
    expect(finding?.at.split(', ')[0]).toBe('neckAngle');
    expect(finding?.found).toMatch(
      /^neck angle 7\.5° where the others need (5\.9|6(\.0)?)\d?° \(1\.5\d?° off\): /,
    );
  });

  test('a string that is longer than its stops make it names string length and neck stop', () => {
    const finding = told({ neckStop: 130, stringLength: 335 });
    expect(finding?.at.split(', ').sort()).toEqual(['neckStop', 'stringLength']);
    expect(finding?.found).toContain('string length 335 mm where the others need 328.1 mm (6.9 mm off)');
  });

  test('two numbers that are wrong in two ways are told apart: a string too long, and an angle', () => {
    const given = {
      neckStop: 130,
      overstand: 6,
      projection: 27,
      neckAngle: 7.5,
      boardEndHeight: 20.41,
      stringLength: 335,
    };
    const found = neckContradiction(VIOLIN_NECK, readings(given), settled(given));
    expect(found.map(({ at }) => at.split(', ')[0])).toEqual(['neckAngle', 'stringLength']);
    expect(found[0]?.found).not.toContain('more than one');
  });

  test('where no single reading explains it, that is said', () => {
    const given = { overstand: 6, projection: 27, neckAngle: 7.5, boardEndHeight: 15, bridgeHeight: 29 };
    expect(told(given)?.found).toContain('more than one of them is off');
  });

  test('a small misfit is only doubtful, and one within the spreads is nothing', () => {
    expect(told({ overstand: 6, projection: 27, boardEndHeight: 19 })?.code).toBe('neck.doubtful');
    expect(told({ overstand: 6, projection: 27, boardEndHeight: 20 })).toBeUndefined();
  });
});

test('bridge and projection say the same thing: neither chooses the overstand', () => {
  const surplus = (given: Partial<Record<SetName, number>>) => settled(given).questions[0]?.surplus;
  expect(surplus({ projection: 27, bridgeHeight: 33 })).toBe(1);
  expect(settled({ projection: 27, bridgeHeight: 33 }).sizes.overstandMm).toBe(6);
  expect(surplus({ overstand: 6, projection: 27 })).toBe(0);
  expect(surplus({ projection: 27, neckAngle: 6 })).toBe(0);
});
