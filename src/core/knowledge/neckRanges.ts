import { commonPractice, fromMemory, published } from '../quantity/index.ts';
import type { Family } from './family.ts';
import type { Range } from './ranges.ts';
import { citation } from './sources.ts';

/** What comes of a set neck, as makers take it; what they give has its range among the values. */
export type NeckMeasure = 'boardEnd' | 'bridge';

const sets = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('neckSets')),
});
const memory = (low: number, high: number): Range => ({ low, high, origin: fromMemory() });

/** For bodies of the sizes that the sources speak of. */
const RANGES: Readonly<Record<Family, Readonly<Record<NeckMeasure, Range>>>> = {
  violin: {
    boardEnd: sets(19, 22),
    bridge: memory(30, 35), // one published range is 30 to 32, a book of 1902 has 33.3 to 34.9
  },
  viola: {
    boardEnd: {
      low: 22,
      high: 26,
      origin: commonPractice('one published range is 22 to 24, a table has 24 to 26'),
    },
    bridge: memory(36, 39),
  },
  cello: {
    boardEnd: sets(62, 64),
    bridge: memory(84, 92),
  },
};

/** mm. Bodies from this length on are full-sized to the sources; nothing is published of smaller ones. */
const FULL_SIZED_MM: Readonly<Record<Family, number>> = { violin: 350, viola: 380, cello: 735 };

/** What is usual for a set neck; undefined for sizes that nothing is published of. */
export function neckRange(family: Family, measure: NeckMeasure, bodyLengthMm: number): Range | undefined {
  return bodyLengthMm >= FULL_SIZED_MM[family] ? RANGES[family][measure] : undefined;
}
