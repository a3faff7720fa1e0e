import type { RegisterEntry } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { VALUE_NAMES } from './values.ts';

/** The design's values as lines of the register, in the order of VALUES. */
export function designEntries(design: Design): readonly RegisterEntry[] {
  return VALUE_NAMES.flatMap((name) => {
    const quantity = design.values[name];
    return quantity ? [{ name, ...quantity }] : [];
  });
}
