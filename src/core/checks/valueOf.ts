import type { Finding, Weight } from '../base/index.ts';
import type { Design, ValueName } from '../design/index.ts';

/** The bare number of a value; NaN, which fails every comparison, where the design has none. */
export function valueOf(design: Design, name: ValueName): number {
  return design.values[name]?.value ?? Number.NaN;
}

/** mm or a ratio as text for a sentence, without a tail of zeros. */
export function shown(value: number, digits = 1): string {
  return String(Number(value.toFixed(digits)) + 0);
}

/** A finding on one or more values of the design; their names are its place. */
export function findingOn(
  names: readonly ValueName[],
  weight: Weight,
  code: string,
  words: { readonly found: string; readonly need: string; readonly remedy: string },
): Finding {
  return { code, weight, at: names.join(', '), ...words };
}
