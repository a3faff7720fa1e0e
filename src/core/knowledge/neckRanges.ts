import { commonPractice, published } from '../quantity/index.ts';
import type { Family } from './family.ts';
import type { Range } from './ranges.ts';
import { citation } from './sources.ts';

/** What comes of a set neck, as makers take it; what they give has its range among the values, the bridge among the set-up. */
export type NeckMeasure = 'boardEnd';

const sets = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('neckSets')),
});

/** For bodies of the sizes that the sources speak of. */
const RANGES: Readonly<Record<Family, Readonly<Record<NeckMeasure, Range>>>> = {
  violin: {
    boardEnd: sets(19, 22),
  },
  viola: {
    boardEnd: {
      low: 22,
      high: 26,
      origin: commonPractice('one published range is 22 to 24, a table has 24 to 26'),
    },
  },
  cello: {
    boardEnd: {
      low: 62,
      high: 66,
      origin: commonPractice(
        'one published range is 62 to 64, beside projections of 79 to 81; those of 82.5 to 84, printed elsewhere, bring up to 66',
      ),
    },
  },
};

/** mm. Bodies from this length on are full-sized to the sources; nothing is published of smaller ones. */
const FULL_SIZED_MM: Readonly<Record<Family, number>> = { violin: 350, viola: 380, cello: 735 };

/** What is usual for a set neck; undefined for sizes that nothing is published of. */
export function neckRange(family: Family, measure: NeckMeasure, bodyLengthMm: number): Range | undefined {
  return bodyLengthMm >= FULL_SIZED_MM[family] ? RANGES[family][measure] : undefined;
}
