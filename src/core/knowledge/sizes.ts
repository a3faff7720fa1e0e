import { log } from '../base/index.ts';
import { CELLO_SIZES } from './celloSizes.ts';
import type { Family } from './family.ts';
import { lengthOf, type Size } from './size.ts';
import { VIOLA_SIZES } from './violaSizes.ts';
import { VIOLIN_SIZES } from './violinSizes.ts';

const SIZES: Readonly<Record<Family, readonly Size[]>> = {
  violin: VIOLIN_SIZES,
  viola: VIOLA_SIZES,
  cello: CELLO_SIZES,
};

/** The sizes of a family, its ordinary one first. */
export function sizesOf(family: Family): readonly Size[] {
  return SIZES[family];
}

/** The ordinary size of a family: violin 4/4, viola medium, cello 4/4. */
export function ordinarySize(family: Family): Size {
  return SIZES[family][0] as Size;
}

/** The size that the trade calls by this name, such as `3/4`; undefined when the family has none. */
export function sizeNamed(family: Family, name: string): Size | undefined {
  return SIZES[family].find((size) => size.name === name);
}

/** The size whose body length is nearest by ratio; of two equally near, the one listed first. */
export function nearestSize(family: Family, bodyLengthMm: number): Size {
  const distance = (size: Size) => Math.abs(log(bodyLengthMm / lengthOf(size)));
  return SIZES[family].reduce((best, size) => (distance(size) < distance(best) ? size : best));
}
