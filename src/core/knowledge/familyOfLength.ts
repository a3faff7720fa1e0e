import { log } from '../base/index.ts';
import { FAMILIES, type Family } from './family.ts';
import { lengthOf } from './size.ts';
import { sizesOf } from './sizes.ts';

/** The family whose sizes lie nearest to a body length, by ratio: a guess to be told, never a silent one. */
export function familyOfLength(bodyLengthMm: number): Family {
  const away = (family: Family): number =>
    Math.min(...sizesOf(family).map((size) => Math.abs(log(bodyLengthMm / lengthOf(size)))));
  return FAMILIES.reduce((best, family) => (away(family) < away(best) ? family : best));
}
