import { commonPractice, fromMemory, type Origin, published } from '../quantity/index.ts';
import type { Family } from './family.ts';
import type { Range } from './ranges.ts';
import { citation } from './sources.ts';

/** What a set-up comes out at; for the ordinary size of each family. */
export interface SetupRanges {
  /** Degrees between both parts of the strings over the bridge. */
  readonly breakAngle: Range;
  /** Pull of all strings, N. */
  readonly totalPull: Range;
  /** From the top to the crown of the bridge, in its middle, mm. */
  readonly bridgeHeight: Range;
}

const range = (low: number, high: number, origin: Origin): Range => ({ low, high, origin });

const violinBreak = range(157, 159.5, published(citation('breakAngles')));

/** Usual figures of a finished set-up; outside them is worth a remark, not wrong. */
export const SETUP_RANGES: Readonly<Record<Family, SetupRanges>> = {
  violin: {
    breakAngle: violinBreak,
    totalPull: range(215, 235, fromMemory()),
    bridgeHeight: range(30, 35, commonPractice('published figures run from 30 to 35')), // 30 to 32; 33.3 to 34.9 in a book of 1902
  },
  viola: {
    breakAngle: range(156, 159.5, fromMemory('one published table has 157')),
    totalPull: range(225, 240, fromMemory()),
    bridgeHeight: range(37, 39, fromMemory()),
  },
  cello: {
    breakAngle: range(152, 156, fromMemory()),
    totalPull: range(550, 600, fromMemory()),
    bridgeHeight: range(85, 93, fromMemory('about 90')),
  },
};

/** mm that a middle string must stand over the line of its neighbours, to be bowed alone; from memory. */
export const LEAST_STRING_CROWN_MM: Readonly<Record<Family, number>> = { violin: 1.2, viola: 1.2, cello: 2 };
