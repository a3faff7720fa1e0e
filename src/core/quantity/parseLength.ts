import { accept, type Checked, refuse } from '../base/index.ts';
import { type LengthUnit, MM_PER_UNIT, printLength, readsAsThousands } from './printLength.ts';

/** A length as it was understood. */
export interface LengthReading {
  readonly mm: number;
  /** What was understood, to stand beside the field. */
  readonly echo: string;
}

/** What is known beforehand about a length that is to be read. */
export interface LengthOptions {
  /** Which sign marks the decimals, where the maker has said so; it settles `1,234`. */
  readonly notation?: 'point' | 'comma';
  /** Name of the value, for the fault's place. */
  readonly at?: string;
}

/**
 * The length that a maker typed, in mm, with an echo of what was understood.
 *
 * Reads `355.5`, `355,5`, `355 mm`, `35.6 cm`, `14"`, `14 1/8 in`, `13 63/64 in`, with typographic quotes,
 * primes and fractions too; a bare number is mm. What can be read in two ways is refused, never guessed:
 * `1,234` (unless `notation` settles it, or one reading would be longer than 3 m), two separators, feet,
 * a fraction without a unit. Faults: `length.empty`, `length.unit`, `length.two-separators`, `length.thousands`,
 * `length.notation`, `length.feet`, `length.fraction`, `length.fraction-unit`, `length.unreadable`.
 */
export function parseLength(text: string, options: LengthOptions = {}): Checked<LengthReading> {
  const fault = refusalFor(text, options.at);
  const plain = plainText(text);
  if (plain === '') return fault('empty', 'a length such as 355.5 or 14 1/8 in', 'type the length');
  if (/'/.test(plain))
    return fault('feet', 'mm, cm, m or inches', 'feet are not read: give the whole length in inches or mm');
  const match = /^([^a-z"]*?)\s*([a-z]+|")?\.?$/.exec(plain);
  if (!match || !/\d/.test(plain))
    return fault('unreadable', 'one number and one unit', 'write it like 355.5, 35.6 cm or 14 1/8 in');
  const unit = unitNamed(match[2]);
  if (unit === undefined)
    return fault('unit', 'mm, cm, m, in or "', `write the unit as one of these instead of “${match[2]}”`);
  const number = match[1] as string;
  const value = number.includes('/')
    ? fractionValue(number, match[2], fault)
    : decimalValue(number, unit, options.notation, fault);
  if (!value.ok) return value;
  const mm = value.value * MM_PER_UNIT[unit];
  return accept({
    mm,
    echo: unit === 'mm' ? printLength(mm) : `${printLength(mm, unit)} = ${printLength(mm)}`,
  });
}

type Refusal = (code: string, need: string, remedy: string) => ReturnType<typeof refuse>;

function refusalFor(text: string, at = 'length'): Refusal {
  return (code, need, remedy) =>
    refuse({ code: `length.${code}`, at, found: text.trim() === '' ? 'nothing' : `“${text}”`, need, remedy });
}

/** One spelling for every dash, prime, quote, space and fraction sign that keyboards and word processors make. */
function plainText(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign}`)
    .normalize('NFKC')
    .replace(/\u2044/g, '/')
    .replace(/[\u2032\u2018\u2019\u00b4`]/g, "'")
    .replace(/[\u2033\u201c\u201d\u201e]|''/g, '"')
    .replace(/^[\u2212\u2013]/, '-')
    .replace(/[\u2010-\u2015]/g, '-')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

function unitNamed(word: string | undefined): LengthUnit | undefined {
  switch (word) {
    case undefined:
    case 'mm':
    case 'millimetre':
    case 'millimetres':
    case 'millimeter':
    case 'millimeters':
      return 'mm';
    case 'cm':
    case 'centimetre':
    case 'centimetres':
    case 'centimeter':
    case 'centimeters':
      return 'cm';
    case 'm':
      return 'm';
    case '"':
    case 'in':
    case 'inch':
    case 'inches':
      return 'in';
    default:
      return undefined;
  }
}

function fractionValue(number: string, unit: string | undefined, fault: Refusal): Checked<number> {
  const match = /^(-?)(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(number);
  if (!match) return fault('fraction', 'a whole number and one fraction', 'write it like 14 1/8 in');
  const [, sign, whole, top, bottom] = match;
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (denominator === 0) return fault('fraction', 'a fraction not over zero', 'correct the fraction');
  if (whole !== undefined && numerator >= denominator)
    return fault('fraction', 'a fraction below one after the whole number', 'correct the fraction');
  if (unit === undefined)
    return fault('fraction-unit', 'a unit after the fraction', 'write in for inches, or mm');
  return accept((sign === '-' ? -1 : 1) * (Number(whole ?? 0) + numerator / denominator));
}

function decimalValue(
  number: string,
  unit: LengthUnit,
  notation: LengthOptions['notation'],
  fault: Refusal,
): Checked<number> {
  if ((number.match(/[.,]/g) ?? []).length > 1)
    return fault(
      'two-separators',
      'at most one point or comma',
      'leave out the separator of the thousands, so that one sign for the decimals is left',
    );
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(number))
    return fault('unreadable', 'one number and one unit', 'write it like 355.5, 35.6 cm or 14 1/8 in');
  if (notation === undefined && readsAsThousands(number.replace(/^\+/, ''), unit))
    return fault(
      'thousands',
      'one meaning: this can be decimals or thousands',
      `write ${number.replace(/[.,]/, '')} for thousands, or ${number}0 for decimals`,
    );
  if ((notation === 'point' && number.includes(',')) || (notation === 'comma' && number.includes('.')))
    return fault(
      'notation',
      `a ${notation} for the decimals, as set`,
      `use the ${notation}, or change the setting`,
    );
  return accept(Number(number.replace(',', '.')));
}
