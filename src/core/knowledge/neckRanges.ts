import { commonPractice, fromMemory, published } from '../quantity/index.ts';
import type { Family } from './family.ts';
import type { Range } from './ranges.ts';
import { lengthOf } from './size.ts';
import { ordinarySize } from './sizes.ts';
import { citation } from './sources.ts';

/** What a set neck measures, as makers take it. */
export type NeckMeasure = 'boardEnd' | 'bridge' | 'overstand' | 'projection';

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
    overstand: memory(5.5, 6.5),
    projection: sets(26, 28),
  },
  viola: {
    boardEnd: {
      low: 22,
      high: 26,
      origin: commonPractice('one published range is 22 to 24, a table has 24 to 26'),
    },
    bridge: memory(36, 39),
    overstand: memory(6.5, 9),
    projection: { low: 30, high: 33, origin: commonPractice('published ranges are 31 to 33 and 30 to 33') },
  },
  cello: {
    boardEnd: sets(62, 64.5),
    bridge: memory(84, 92),
    overstand: memory(20, 23),
    projection: { low: 78, high: 85, origin: commonPractice('published ranges are 79 to 81 and 82.5 to 84') },
  },
};

/** No unit. Bodies this much smaller than the ordinary size have no published range; chosen by us. */
const LEAST_OF_ORDINARY = 0.94;

/** What is usual for a set neck; undefined for sizes that nothing is published of. */
export function neckRange(family: Family, measure: NeckMeasure, bodyLengthMm: number): Range | undefined {
  const isSpokenOf = bodyLengthMm >= LEAST_OF_ORDINARY * lengthOf(ordinarySize(family));
  return isSpokenOf ? RANGES[family][measure] : undefined;
}
