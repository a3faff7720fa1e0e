import { type Fault, type Finding, log } from '../base/index.ts';
import { FAMILIES, type Family, LENGTH_LIMITS } from '../knowledge/index.ts';
import { printLength } from '../quantity/index.ts';
import type { ValueName } from './values.ts';

/** Slips of unit that happen: what the number would be in mm had it been meant so. */
const SLIPS = [
  { times: 10, words: 'centimetres' },
  { times: 25.4, words: 'inches' },
  { times: 1000, words: 'metres' },
  { times: 0.1, words: 'tenths of a millimetre' },
  { times: 1 / 25.4, words: 'a length multiplied by 25.4 once too often' },
] as const;

/**
 * What is wrong or odd about a body length by its scale alone, which no drafting can see: a body of 3 m drafts
 * as well as one of 355 mm. Outside every body of the family it is a fault (`size.body-length`), with the slip
 * that would explain it; outside the usual sizes a caution (`size.unusual-length`).
 */
export function lengthQuestions(
  family: Family,
  lengthMm: number,
): { readonly faults: readonly Fault[]; readonly findings: readonly Finding[] } {
  const limits = LENGTH_LIMITS[family];
  const words = lengthMm < limits.usualLeast ? 'shorter' : 'longer';
  if (!(lengthMm >= limits.least && lengthMm <= limits.most))
    return {
      faults: [
        {
          code: 'size.body-length',
          at: 'bodyLength',
          found: Number.isFinite(lengthMm)
            ? `${printLength(lengthMm)}, ${words} than any ${family}`
            : 'not a number',
          need: `a ${family} body of ${limits.least} to ${limits.most} mm`,
          remedy: explanation(family, lengthMm),
        },
      ],
      findings: [],
    };
  if (lengthMm >= limits.usualLeast && lengthMm <= limits.usualMost) return { faults: [], findings: [] };
  return {
    faults: [],
    findings: [
      {
        code: 'size.unusual-length',
        weight: 'caution',
        at: 'bodyLength',
        found: `${printLength(lengthMm)}, ${words} than usual for a ${family}`,
        need: `a ${family} body of ${limits.usualLeast} to ${limits.usualMost} mm, as makers have them`,
        remedy: `check whether it was taken over the arch, with the button, or whether it is not a ${family}`,
      },
    ],
  };
}

/** A width or station that is out of all scale with the body: a slip of unit, said as such. */
export function scaleFault(name: ValueName, valueMm: number, expectedMm: number): Fault | undefined {
  const ratio = valueMm / expectedMm;
  if (ratio > 1 / OUT_OF_SCALE && ratio < OUT_OF_SCALE) return undefined;
  const slip = SLIPS.find(({ times }) => Math.abs(log(ratio * times)) < log(NEAR_ENOUGH));
  return {
    code: 'size.out-of-scale',
    at: name,
    found: `${printLength(valueMm)} on a body where about ${Math.round(expectedMm)} mm is usual`,
    need: `between ${Math.round(expectedMm / OUT_OF_SCALE)} and ${Math.round(expectedMm * OUT_OF_SCALE)} mm`,
    remedy: slip
      ? `if these are ${slip.words}, write the value with its unit`
      : 'read the number again, or leave it out and it is filled from the family',
  };
}

/** No unit. A size this many times off its habit is a slip, not a style; chosen by us. */
const OUT_OF_SCALE = 1.8;
/** No unit. How near a slip of unit must come to the habit to be named; chosen by us. */
const NEAR_ENOUGH = 1.3;

function explanation(family: Family, lengthMm: number): string {
  const slip = SLIPS.find(({ times }) => fits(family, lengthMm * times));
  if (slip) return `if these are ${slip.words}, write the value with its unit`;
  const other = FAMILIES.find((name) => name !== family && fits(name, lengthMm));
  return other ? `say family ${other} if it is one, or read the number again` : 'read the number again';
}

function fits(family: Family, lengthMm: number): boolean {
  const { usualLeast, usualMost } = LENGTH_LIMITS[family];
  return lengthMm >= usualLeast && lengthMm <= usualMost;
}
