import { accept, type Checked, refuse, WRITE_MM } from '../base/index.ts';

/** What JSON can hold. */
export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json | undefined };

/**
 * The one text of a value: keys in alphabetical order, two spaces a level, arrays of numbers on one line, a line break at the
 * end, numbers to WRITE_MM unless `'exact'` asks for every digit (for what is read back and worked on).
 * Equal values give equal text. Fault: `json.not-finite`, with the place.
 *
 * A bulge, third of a vertex in an array named `vertices`, is no length and keeps every digit.
 */
export function canonicalJson(value: Json, digits: 'millimetres' | 'exact' = 'millimetres'): Checked<string> {
  const place = oddNumber(value, '');
  if (place !== null)
    return refuse({
      code: 'json.not-finite',
      at: place === '' ? 'the value' : place,
      found: 'something that is not a number',
      need: 'a finite number',
      remedy: 'check the values it is derived from; nothing was written',
    });
  return accept(`${textOf(value, '', digits, false)}\n`);
}

function oddNumber(value: Json | undefined, place: string): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : place;
  if (value === null || typeof value !== 'object') return null;
  for (const [key, entry] of Object.entries(value)) {
    const odd = oddNumber(entry, place === '' ? key : `${place}.${key}`);
    if (odd !== null) return odd;
  }
  return null;
}

function textOf(value: Json, indent: string, digits: 'millimetres' | 'exact', vertices: boolean): string {
  if (typeof value === 'number') return JSON.stringify(digits === 'exact' ? value + 0 : rounded(value));
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const inner = `${indent}  `;
  if (isArray(value)) {
    if (value.length === 0) return '[]';
    const texts = value.map((entry, index) =>
      textOf(entry, inner, vertices && index === 2 && typeof entry === 'number' ? 'exact' : digits, vertices),
    );
    if (value.every((entry) => typeof entry === 'number')) return `[${texts.join(', ')}]`;
    return `[\n${texts.map((text) => inner + text).join(',\n')}\n${indent}]`;
  }
  const keys = Object.keys(value).sort();
  const entries = keys.flatMap((key) => {
    const entry = value[key];
    if (entry === undefined) return [];
    return [`${inner}${JSON.stringify(key)}: ${textOf(entry, inner, digits, key === 'vertices')}`];
  });
  return entries.length === 0 ? '{}' : `{\n${entries.join(',\n')}\n${indent}}`;
}

function isArray(value: object): value is readonly Json[] {
  return Array.isArray(value);
}

/** Adding 0 turns −0 into 0. */
function rounded(value: number): number {
  const steps = 1 / WRITE_MM;
  return Math.abs(value) * steps < Number.MAX_SAFE_INTEGER ? Math.round(value * steps) / steps + 0 : value;
}
