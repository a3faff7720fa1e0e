import type { Unit } from '../quantity/index.ts';

/** Standard gravity, m/s² (ISO 80000-3 value), and kilograms to the pound: string packets print pulls in both. */
const NEWTONS_PER_KILOGRAM = 9.80665;
const KILOGRAMS_PER_POUND = 0.45359237;

interface UnitText {
  /** Endings that may follow a number, each with what the number is to be multiplied by. */
  readonly endings: Readonly<Record<string, number>>;
  /** What a text of this unit must be, and an example. */
  readonly need: string;
  readonly example: string;
}

const POUND = KILOGRAMS_PER_POUND * NEWTONS_PER_KILOGRAM;

/** How numbers that are no lengths may be written in a table of measurements; a number alone is in the unit itself. */
const UNIT_TEXTS: Readonly<Partial<Record<Unit, UnitText>>> = {
  deg: {
    endings: { '°': 1, deg: 1 },
    need: 'an angle in degrees and decimals',
    example: '6.2 or 6.2°; 6° 12′ is 6.2',
  },
  N: {
    endings: { N: 1, kg: NEWTONS_PER_KILOGRAM, lb: POUND, lbs: POUND },
    need: 'a pull in newtons, kilograms or pounds',
    example: '80, 80 N, 8.2 kg or 18 lb',
  },
  Hz: { endings: { Hz: 1 }, need: 'a frequency in hertz', example: '442 or 442 Hz' },
  'g/m': { endings: { 'g/m': 1 }, need: 'a mass in grams a metre', example: '0.43 or 0.43 g/m' },
  'kg/m³': { endings: { 'kg/m³': 1, 'kg/m3': 1 }, need: 'a density in kg/m³', example: '420 or 420 kg/m³' },
};

const PLAIN: UnitText = { endings: {}, need: 'a plain number without a unit', example: '-0.08' };

/** The words for a number of a unit that could not be read. */
export function unitText(unit: Unit): Pick<UnitText, 'need' | 'example'> {
  return UNIT_TEXTS[unit] ?? PLAIN;
}

/** A number that is no length, as a maker writes it: with or without its unit, a comma for a point. Undefined where it is none. */
export function readUnitText(text: string, unit: Unit): number | undefined {
  const match = /^\s*([+-]?\d+(?:[.,]\d+)?)\s*(\D.*?)?\s*$/.exec(text);
  if (!match) return undefined;
  const [, digits = '', ending] = match;
  const { endings } = UNIT_TEXTS[unit] ?? PLAIN;
  const factor = ending === undefined ? 1 : Object.hasOwn(endings, ending) ? endings[ending] : undefined;
  return factor === undefined ? undefined : Number(digits.replace(',', '.')) * factor;
}
