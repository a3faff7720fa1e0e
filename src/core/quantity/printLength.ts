import { WRITE_MM } from '../base/index.ts';

/** The units in which a length is typed or shown; inside it is always mm. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in';

export const MM_PER_UNIT: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4 };

/**
 * mm. The longest thing that a bare number is taken for; above it, `12,345` cannot mean twelve thousand.
 * Longer than a cello from scroll to end pin, so that no true size is beyond it. Chosen by us.
 */
const LONGEST_THING_MM = 3000;

const DECIMALS = 4;
const FINEST_FRACTION = 64;

/**
 * The length as text with its unit, to a ten thousandth, without trailing zeros; what `parseLength` reads
 * back to the same text. Inches come as a fraction where one down to 1/64 fits, else as decimals.
 */
export function printLength(lengthMm: number, unit: LengthUnit = 'mm'): string {
  const text = decimals(lengthMm / MM_PER_UNIT[unit], unit);
  if (unit !== 'in') return `${text} ${unit}`;
  // Decimals that are a fraction exactly, such as 0.0625, would be read back as that fraction.
  return `${inchFraction(lengthMm) ?? inchFraction(Number(text) * MM_PER_UNIT.in) ?? text} in`;
}

function inchFraction(lengthMm: number): string | undefined {
  const parts = Math.round((Math.abs(lengthMm) / MM_PER_UNIT.in) * FINEST_FRACTION);
  const exactMm = (parts / FINEST_FRACTION) * MM_PER_UNIT.in;
  if (Math.abs(exactMm - Math.abs(lengthMm)) > WRITE_MM / 2) return undefined;
  const whole = Math.floor(parts / FINEST_FRACTION);
  let numerator = parts % FINEST_FRACTION;
  let denominator = FINEST_FRACTION;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const sign = lengthMm < 0 && parts > 0 ? '-' : '';
  if (numerator === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${numerator}/${denominator}` : `${sign}${whole} ${numerator}/${denominator}`;
}

function decimals(value: number, unit: LengthUnit): string {
  const text = value.toFixed(DECIMALS).replace(/\.?0+$/, '');
  const plain = text === '-0' || text === '' ? '0' : text;
  return readsAsThousands(plain, unit) ? value.toFixed(DECIMALS) : plain;
}

/** Whether digits such as `1.234` could be thousands as well as decimals: three of them, and not absurdly long. */
export function readsAsThousands(number: string, unit: LengthUnit): boolean {
  const match = /^-?([1-9]\d{0,2})[.,](\d{3})$/.exec(number);
  if (!match) return false;
  return Number(`${match[1]}${match[2]}`) * MM_PER_UNIT[unit] <= LONGEST_THING_MM;
}
