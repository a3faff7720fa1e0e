import {
  type Checked,
  parseLength,
  type Quantity,
  type RegisterEntry,
  spreadDecimals,
} from '../../core/index.ts';
import { print } from '../words/words.ts';

/** How a number is written in the notebook: no more decimals than it is good for by its ±, or than a maker can use. */
export function numberText({
  value,
  unit,
  plusMinus,
}: Pick<Quantity, 'value' | 'unit' | 'plusMinus'>): string {
  if (plusMinus) return print(value, spreadDecimals(plusMinus)) + (unit === 'deg' ? '°' : '');
  switch (unit) {
    case 'mm':
      return print(value, Math.abs(value) < 10 && hasHundredths(value) ? 2 : 1);
    case 'deg':
      return `${print(value, 1)}°`;
    case 'count':
      return print(value, 0);
    case 'g/m':
    case 'ratio':
      return print(value, 2);
    default:
      return print(value, Math.abs(value) >= 100 ? 0 : 1);
  }
}

/** The ± of a number beside it. */
export function spreadText(plusMinus: number): string {
  return `± ${print(plusMinus, spreadDecimals(plusMinus))}`;
}

const HUNDREDTHS = 100;

function hasHundredths(value: number): boolean {
  return Math.round(value * HUNDREDTHS) % 10 !== 0;
}

/** The unit as a word beside the number; lengths are millimetres throughout and say so once. */
export function unitText(unit: RegisterEntry['unit']): string {
  return ['mm', 'deg', 'ratio', 'count'].includes(unit) ? '' : unit;
}

/** A number as typed, in any common way, in the unit of the number that it is to replace. */
export function readNumber(text: string, unit: RegisterEntry['unit']): Checked<number> {
  const plain = text.replace('−', '-');
  if (unit === 'mm') {
    const length = parseLength(plain);
    return length.ok ? { ok: true, value: length.value.mm } : length;
  }
  const value = Number(plain.trim().replace(',', '.').replace(/°$/, ''));
  if (text.trim() !== '' && Number.isFinite(value)) return { ok: true, value };
  return {
    ok: false,
    faults: [
      {
        code: 'number.unread',
        at: text,
        found: 'no number',
        need: 'a number such as 0.05',
        remedy: 'type it again',
      },
    ],
  };
}
