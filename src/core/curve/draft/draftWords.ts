import type { Fault, Finding, Weight } from '../../base/index.ts';
import type { OutlineTargets } from './outlineTargets.ts';

/** The maker's name for each target, as it stands in a table of measurements. */
export const MEASURED_AS = {
  bodyLengthMm: 'bodyLength',
  upperBoutMm: 'upperBout',
  waistMm: 'waist',
  lowerBoutMm: 'lowerBout',
  lowerBoutStationMm: 'lowerBoutStation',
  waistStationMm: 'waistStation',
  upperBoutStationMm: 'upperBoutStation',
  lowerCornerStationMm: 'lowerCornerStation',
  upperCornerStationMm: 'upperCornerStation',
  lowerCornersMm: 'lowerCorners',
  upperCornersMm: 'upperCorners',
  lowerCornerEndMm: 'lowerCornerEnd',
  upperCornerEndMm: 'upperCornerEnd',
} as const satisfies Record<keyof OutlineTargets, string>;

export type TargetName = keyof typeof MEASURED_AS;

/** What a number of the draft is to a maker: the value it belongs to, and words for it. */
export interface NumberWords {
  readonly at: string;
  readonly says: string;
}

const bout = (at: string, name: string, last: string): NumberWords[] =>
  ['end', 'shoulder', 'flank', 'upper flank', last].map((arc) => ({
    at,
    says: `radius of the ${arc} of the ${name} bout`,
  }));

const boutHeadings = (at: string, name: string): NumberWords[] =>
  [
    `where the end of the ${name} bout passes into its shoulder`,
    `where the shoulder of the ${name} bout passes into its flank`,
    `where the flank of the ${name} bout passes into its upper flank`,
    `slope of the ${name} bout where it turns hollow`,
    `direction of the ${name} bout at its corner`,
  ].map((says) => ({ at, says }));

const waist = (says: string): NumberWords => ({ at: 'waist', says });

/** Words for all numbers of a draft, in their order. */
export const NUMBER_WORDS: readonly NumberWords[] = [
  ...bout('lowerBout', 'lower', 'hollow before the corner'),
  waist('radius of the lower curve of the waist'),
  waist('radius of the middle of the waist'),
  waist('radius of the upper curve of the waist'),
  ...bout('upperBout', 'upper', 'hollow before the corner'),
  ...boutHeadings('lowerBout', 'lower'),
  ...boutHeadings('upperBout', 'upper'),
  waist('hook of the waist at the lower corner'),
  waist('slope where the lower curve of the waist ends'),
  waist('slope where the upper curve of the waist begins'),
  waist('hook of the waist at the upper corner'),
  { at: 'lowerCornerEnd', says: 'lean of the lower corner end' },
  { at: 'upperCornerEnd', says: 'lean of the upper corner end' },
  { at: 'lowerCorners', says: 'width over the lower corners' },
  { at: 'lowerCornerStation', says: 'height of the lower corners' },
  { at: 'upperCorners', says: 'width over the upper corners' },
  { at: 'upperCornerStation', says: 'height of the upper corners' },
  { at: 'lowerBoutStation', says: 'height of the widest lower bout' },
  { at: 'waistStation', says: 'height of the narrowest waist' },
  { at: 'upperBoutStation', says: 'height of the widest upper bout' },
];

/** A length for a sentence: at most two decimals. */
export function inMm(lengthMm: number): string {
  return `${Math.round(lengthMm * 100) / 100} mm`;
}

export function finding(weight: Weight, fault: Fault): Finding {
  return { ...fault, weight };
}
