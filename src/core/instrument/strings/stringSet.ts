import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { type Design, VALUES, type ValueName } from '../../design/index.ts';
import { PACKET_TUNING_HZ, STRING_PITCHES } from '../../knowledge/index.ts';
import { pitchHz, plainStringMass, stringMass, stringTension } from './stringTension.ts';

/** A string on the instrument, tuned. */
export interface TunedString {
  /** 1 the highest, as players count. */
  readonly number: 1 | 2 | 3 | 4;
  readonly letter: string;
  readonly diameterMm: number;
  readonly soundsHz: number;
  readonly gramsPerMetre: number;
  /** What its mass is known from. */
  readonly massFrom: readonly ValueName[];
  readonly tensionN: number;
}

/** The strings from the lowest to the highest, as they lie from the bass side over, and their pull together. */
export interface StringSet {
  readonly lengthMm: number;
  readonly strings: readonly TunedString[];
  readonly totalN: number;
  readonly findings: readonly Finding[];
}

const NUMBERS = [4, 3, 2, 1] as const;

/** No unit. Two masses of one string that differ by more contradict each other; gauges are known to about 2 %. */
const SAME_MASS = 0.06;

/**
 * The strings of a design at a length, tuned: each by Mersenne's law from its mass. The mass is what was given; else that of a
 * plain string of the given density; else what its packet's pull says.
 *
 * Faults: `strings.value` (a value that is no number above 0). Finding: `strings.mass` (two masses of one string).
 */
export function stringSet(design: Design, lengthMm: number): Checked<StringSet> {
  const value = (name: ValueName): number | undefined => design.values[name]?.value;
  const needed: readonly ValueName[] = [
    'tuningA',
    'pullLength',
    ...NUMBERS.flatMap((number): ValueName[] => [`string${number}Pull`, `string${number}Diameter`]),
  ];
  const optional = NUMBERS.flatMap((n): ValueName[] => [`string${n}Mass`, `string${n}Density`]);
  const isWrong = (name: ValueName): boolean => !((value(name) ?? Number.NaN) > 0);
  const unsound = [
    ...needed.filter(isWrong),
    ...optional.filter((name) => value(name) !== undefined && isWrong(name)),
  ];
  if (unsound.length > 0) return refuse(...unsound.map((name) => noNumber(name, value(name))));
  const findings: Finding[] = [];
  const strings = NUMBERS.map((number): TunedString => {
    const { letter = '', stepsFromA = 0 } = STRING_PITCHES[design.family][number - 1] ?? {};
    const diameterMm = value(`string${number}Diameter`) ?? Number.NaN;
    const mass = massOf(design, number, stepsFromA);
    findings.push(...mass.findings);
    const soundsHz = pitchHz(value('tuningA') ?? Number.NaN, stepsFromA);
    return {
      number,
      letter,
      diameterMm,
      soundsHz,
      gramsPerMetre: mass.gramsPerMetre,
      massFrom: mass.from,
      tensionN: stringTension(mass.gramsPerMetre, lengthMm, soundsHz),
    };
  });
  return accept({
    lengthMm,
    strings,
    totalN: strings.reduce((sum, { tensionN }) => sum + tensionN, 0),
    findings,
  });
}

interface KnownMass {
  readonly gramsPerMetre: number;
  readonly from: readonly ValueName[];
  readonly findings: readonly Finding[];
}

function massOf({ values }: Design, number: 1 | 2 | 3 | 4, stepsFromA: number): KnownMass {
  const value = (name: ValueName): number | undefined => values[name]?.value;
  const [massName, densityName, diameterName, pullName] = [
    `string${number}Mass`,
    `string${number}Density`,
    `string${number}Diameter`,
    `string${number}Pull`,
  ] as const satisfies readonly ValueName[];
  const given = value(massName);
  const density = value(densityName);
  const plain =
    density === undefined ? undefined : plainStringMass(value(diameterName) ?? Number.NaN, density);
  const findings =
    given !== undefined && plain !== undefined && Math.abs(given / plain - 1) > SAME_MASS
      ? [twoMasses(massName, densityName, given, plain)]
      : [];
  if (given !== undefined) return { gramsPerMetre: given, from: [massName], findings };
  if (plain !== undefined) return { gramsPerMetre: plain, from: [diameterName, densityName], findings };
  const soundsHz = pitchHz(PACKET_TUNING_HZ, stepsFromA);
  const packetMm = value('pullLength') ?? Number.NaN;
  return {
    gramsPerMetre: stringMass(value(pullName) ?? Number.NaN, packetMm, soundsHz),
    from: [pullName, 'pullLength'],
    findings,
  };
}

function noNumber(name: ValueName, value: number | undefined): Fault {
  return {
    code: 'strings.value',
    at: name,
    found: value === undefined ? 'no value' : `${value}`,
    need: `a number above 0, in ${VALUES[name].unit}`,
    remedy: `correct it: the ${VALUES[name].says}`,
  };
}

function twoMasses(mass: ValueName, density: ValueName, given: number, plain: number): Finding {
  return {
    code: 'strings.mass',
    weight: 'caution',
    at: `${mass}, ${density}`,
    found: `a string of ${given.toFixed(3)} g/m, which its gauge and density make ${plain.toFixed(3)} g/m`,
    need: 'one mass; a wound string has no density to be worked out with',
    remedy: 'leave the density out where the string is wound, or correct one of them; the mass is used',
  };
}
