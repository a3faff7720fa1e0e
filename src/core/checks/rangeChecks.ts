import type { Finding } from '../base/index.ts';
import { type Design, lengthQuestions, NEEDED_VALUES, VALUE_NAMES, VALUES } from '../design/index.ts';
import { rangeFor } from '../knowledge/index.ts';
import { originText } from '../quantity/index.ts';
import { findingOn, isSound, MAY_BE_ZERO, shown, valueOf } from './valueOf.ts';

/** Sizes of the family by scale alone: an absurd length is a contradiction, an unusual one a caution. */
export function lengthFindings(design: Design): readonly Finding[] {
  const lengthMm = valueOf(design, 'bodyLength');
  if (Number.isNaN(lengthMm)) return [];
  const { faults, findings } = lengthQuestions(design.family, lengthMm);
  return [...faults.map((fault): Finding => ({ ...fault, weight: 'contradiction' })), ...findings];
}

/** Values that are missing, not numbers, or lengths that are not above zero. Negative overhangs have their own check. */
export function soundFindings(design: Design): readonly Finding[] {
  const missing = NEEDED_VALUES.filter((name) => design.values[name] === undefined).map((name) =>
    findingOn([name], 'contradiction', 'check.missing', {
      found: 'no value',
      need: 'a value, as every design has',
      remedy: 'add it, or draft the design again',
    }),
  );
  const wrong = VALUE_NAMES.flatMap((name) => {
    const value = design.values[name]?.value;
    if (value === undefined || isSound(name, value)) return [];
    return [
      findingOn([name], 'contradiction', 'check.not-positive', {
        found: Number.isFinite(value) ? `${value} mm` : 'not a number',
        need: MAY_BE_ZERO.has(name) ? 'zero or more' : 'a length above zero',
        remedy: 'correct it',
      }),
    ];
  });
  return [...missing, ...wrong];
}

/** Given values outside what is usual for the family: worth a look, not wrong. Derived ones follow their source. */
export function rangeFindings(design: Design): readonly Finding[] {
  const lengthMm = valueOf(design, 'bodyLength');
  return VALUE_NAMES.flatMap((name) => {
    if (design.values[name]?.origin.kind === 'derived') return [];
    const value = valueOf(design, name);
    const range = rangeFor(design.family, name, lengthMm);
    if (!range || !(value < range.low || value > range.high)) return [];
    const [unit, digits] = VALUES[name].unit === 'mm' ? [' mm', 1] : ['', 2];
    const usual = `${shown(range.low, digits)} to ${shown(range.high, digits)}${unit}`;
    return [
      findingOn([name], 'remark', 'check.unusual', {
        found: `${shown(value, digits + 1)}${unit}, outside what is usual`,
        need: `usually ${usual} (${originText(range.origin)})`,
        remedy: 'keep it if it is meant, or check the number',
      }),
    ];
  });
}
