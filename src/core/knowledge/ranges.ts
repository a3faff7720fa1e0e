import { commonPractice, fromMemory, type Origin, published } from '../quantity/index.ts';
import type { Family } from './family.ts';
import { HEAD_RANGES } from './headRanges.ts';
import { lengthOf, valueAtLength } from './size.ts';
import { nearestSize, ordinarySize } from './sizes.ts';
import { SOUND_HOLE_RANGES } from './soundHoleRanges.ts';
import { citation } from './sources.ts';

/** What is usual for one value; outside it is worth a remark, not wrong. */
export interface Range {
  readonly low: number;
  readonly high: number;
  readonly origin: Origin;
}

const memory = (low: number, high: number): Range => ({ low, high, origin: fromMemory() });
const practice = (low: number, high: number): Range => ({ low, high, origin: commonPractice() });
const viola = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('violaTable')),
});

const spacing = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('stringSpacing')),
});

const set = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('neckSets')),
});

const footBeyondBar = (low: number, high: number): Range => ({
  low,
  high,
  origin: published(citation('footAndBar')),
});

const FULLNESS = practice(-0.12, 0.1);
const ANY_FAMILY: Readonly<Record<string, Range>> = {
  fullnessUpperBout: FULLNESS,
  fullnessUpperCorner: FULLNESS,
  fullnessWaist: FULLNESS,
  fullnessLowerCorner: FULLNESS,
  fullnessLowerBout: FULLNESS,
  fullnessTopUpperBout: FULLNESS,
  fullnessTopUpperCorner: FULLNESS,
  fullnessTopWaist: FULLNESS,
  fullnessTopLowerCorner: FULLNESS,
  fullnessTopLowerBout: FULLNESS,
  tuningA: practice(415, 443),
  endpinTaper: memory(17, 20),
};

/** For the ordinary size of each family; {@link rangeFor} brings them to another body length. */
const RANGES: Readonly<Record<Family, Readonly<Record<string, Range>>>> = {
  violin: {
    ...ANY_FAMILY,
    ...HEAD_RANGES.violin,
    ...SOUND_HOLE_RANGES.violin,
    bodyLength: { low: 350, high: 360, origin: published(citation('violinNorm')) },
    upperBout: memory(158, 172),
    waist: memory(104, 116),
    lowerBout: memory(198, 213),
    upperCornerEnd: memory(6, 8),
    lowerCornerEnd: memory(6, 8),
    stop: memory(190, 200),
    neckStop: memory(126, 132),
    overhang: memory(2, 3),
    ribThickness: memory(0.9, 1.3),
    ribHeightNeck: memory(28, 33),
    ribHeightTail: memory(28, 33),
    liningThickness: memory(1.5, 2.2),
    liningWidth: memory(5, 8),
    liningLetIn: memory(5, 9),
    upperBlockWidth: memory(46, 56),
    upperBlockDepth: memory(13, 18),
    lowerBlockWidth: memory(40, 50),
    lowerBlockDepth: memory(12, 16),
    formThickness: memory(10, 18),
    purflingToEdge: memory(3.3, 4.5),
    purflingWidth: memory(1, 1.4),
    edgeHeightBack: memory(3.5, 4.5),
    edgeHeightTop: memory(3.5, 4.5),
    archHeightBack: memory(13, 17),
    archHeightTop: memory(13.5, 18),
    scoopDepthBack: memory(0.7, 1.2),
    scoopDepthTop: memory(0.7, 1.2),
    channelAtBouts: memory(6, 8),
    channelAtWaist: memory(6, 11),
    channelAtCorners: memory(9, 11),
    bridgeFeet: memory(41, 42),
    bridgeFootThickness: memory(4, 4.5),
    footBeyondBar: footBeyondBar(1, 1.5),
    postDiameter: memory(6, 6.5),
    barHeight: memory(11, 13),
    barEndHeight: memory(3, 4),
    overstand: memory(5.5, 6.5),
    projection: set(26, 28),
    boardLength: memory(265, 275),
    boardWidthNut: memory(23.5, 24.5),
    boardWidthEnd: memory(41.5, 43),
    boardRadius: memory(38, 43),
    boardSide: memory(4.5, 5.5),
    stringEndBass: memory(5, 6),
    stringEndTreble: memory(3, 4),
    stringNutTreble: memory(0.25, 0.4),
    neckThicknessNut: memory(18.5, 19.5),
    neckThicknessHeel: memory(20.5, 22),
    buttonWidth: memory(17, 21),
    buttonHeight: memory(13, 14.5),
    mortiseDepth: memory(5.5, 7),
    rootAngle: memory(84, 88),
    barSpring: memory(0, 1),
    stringSpacingNut: memory(16, 17),
    stringSpacingBridge: memory(33, 34),
    bridgeTopThickness: memory(1.2, 1.5),
    saddleWidth: memory(36, 40),
    saddleDepth: memory(6, 7),
    saddleHeight: memory(7, 8),
    endpinDiameter: memory(7, 8),
    string1Pull: memory(75, 82),
    string2Pull: memory(52, 58),
    string3Pull: memory(42, 48),
    string4Pull: memory(42, 48),
  },
  viola: {
    ...ANY_FAMILY,
    ...HEAD_RANGES.viola,
    ...SOUND_HOLE_RANGES.viola,
    bodyLength: viola(390, 430),
    upperBout: viola(188, 200),
    waist: viola(127, 140),
    lowerBout: viola(228, 250),
    stop: viola(219, 230),
    neckStop: viola(146, 154),
    overhang: memory(2, 3),
    ribThickness: memory(1, 1.4),
    ribHeightNeck: viola(36, 40),
    ribHeightTail: viola(36, 40),
    purflingToEdge: viola(3.5, 4.2),
    purflingWidth: viola(1.2, 1.4),
    edgeHeightBack: viola(3.9, 4.1),
    edgeHeightTop: viola(3.9, 4.1),
    archHeightBack: viola(15, 17),
    archHeightTop: viola(16, 18),
    footBeyondBar: footBeyondBar(1, 1.5),
    barThickness: viola(5.5, 7),
    barHeight: viola(13, 15),
    overstand: viola(7.5, 8.5),
    projection: practice(30, 33), // printed 31 to 33, 30 to 33, and 31.5 to 32.5 in the table
    boardLength: viola(290, 300),
    boardWidthEnd: viola(44, 48),
    boardRadius: memory(37, 43),
    boardSide: viola(5.5, 6.5),
    buttonWidth: viola(22, 23),
    buttonHeight: viola(13, 15),
    stringEndBass: memory(6, 6.5),
    stringEndTreble: memory(4, 4.5),
    rootAngle: memory(84, 88),
    stringSpacingNut: spacing(16.5, 17),
    stringSpacingBridge: spacing(35, 36),
    string1Pull: memory(68, 80),
    string2Pull: memory(52, 58),
    string3Pull: memory(48, 53),
    string4Pull: memory(46, 52),
  },
  cello: {
    ...ANY_FAMILY,
    ...HEAD_RANGES.cello,
    ...SOUND_HOLE_RANGES.cello,
    bodyLength: memory(735, 770),
    upperBout: memory(328, 360),
    waist: memory(222, 252),
    lowerBout: memory(420, 445),
    stop: memory(390, 406),
    neckStop: memory(275, 285),
    overhang: memory(3, 4.5),
    ribThickness: memory(1.4, 2),
    ribHeightNeck: memory(108, 118),
    ribHeightTail: memory(112, 124),
    liningThickness: memory(2, 2.5),
    liningWidth: memory(12, 15),
    upperBlockWidth: memory(75, 80),
    upperBlockDepth: memory(25, 30),
    lowerBlockWidth: memory(65, 70),
    lowerBlockDepth: memory(22, 25),
    formThickness: memory(20, 30),
    purflingToEdge: memory(4, 5.5),
    purflingWidth: memory(1.5, 2),
    archHeightBack: memory(22, 28),
    archHeightTop: memory(24, 30),
    bridgeFootThickness: memory(11, 12),
    footBeyondBar: footBeyondBar(1.5, 2),
    postDiameter: memory(10, 11),
    barLength: memory(560, 590),
    barThickness: memory(10, 11),
    barHeight: memory(22, 25),
    overstand: memory(20, 23),
    projection: practice(78, 85), // printed 79 to 81, 81, and 82.5 to 84
    boardLength: memory(580, 590),
    boardWidthNut: memory(31, 33),
    boardWidthEnd: memory(62, 64),
    boardRadius: memory(60, 65),
    stringEndBass: memory(6, 8),
    stringEndTreble: memory(4, 5.5),
    neckThicknessNut: memory(29, 31),
    buttonWidth: memory(30, 34),
    buttonHeight: memory(22, 25),
    rootAngle: memory(80, 85),
    stringSpacingNut: memory(22, 22.5),
    stringSpacingBridge: memory(46, 48),
    bridgeTopThickness: memory(2.5, 3),
    string1Pull: memory(155, 180),
    string2Pull: memory(135, 150),
    string3Pull: memory(130, 140),
    string4Pull: memory(125, 140),
  },
};

/** The usual range of every value that has one, for the family's ordinary size. */
export function familyRanges(family: Family): Readonly<Record<string, Range>> {
  return RANGES[family];
}

/**
 * The usual range of a value at a body length. Between the sizes heights and thicknesses shrink less than
 * lengths, so a range is only widened towards the other size, never shifted whole; it always takes in the
 * value of the nearest size.
 */
export function rangeFor(family: Family, name: string, bodyLengthMm: number): Range | undefined {
  const range = RANGES[family][name];
  if (!range || ANY_FAMILY[name]) return range;
  const scale = name === 'formThickness' ? 1 : bodyLengthMm / lengthOf(ordinarySize(family));
  const habit = valueAtLength(nearestSize(family, bodyLengthMm), name, bodyLengthMm)?.value ?? range.low;
  return {
    ...range,
    low: Math.min(range.low * Math.min(1, scale), habit),
    high: Math.max(range.high * Math.max(1, scale), habit),
  };
}

/** Body lengths that a family can have at all, and those that pass without a question; mm. */
export interface LengthLimits {
  readonly least: number;
  readonly usualLeast: number;
  readonly usualMost: number;
  readonly most: number;
}

/** Chosen by us round the sizes of the trade (from memory: violins from 185, cellos from 510). */
export const LENGTH_LIMITS: Readonly<Record<Family, LengthLimits>> = {
  violin: { least: 170, usualLeast: 185, usualMost: 365, most: 385 },
  viola: { least: 300, usualLeast: 370, usualMost: 450, most: 520 },
  cello: { least: 450, usualLeast: 510, usualMost: 780, most: 850 },
};

/** Neck stop over body stop: 2 : 3, on the cello 7 : 10. */
export const NECK_TO_STOP: Readonly<Record<Family, number>> = { violin: 2 / 3, viola: 2 / 3, cello: 0.7 };

/**
 * Proportions that a drafted body must keep (lowest and highest seen fit, chosen by us from measured
 * instruments): each width, and the stop, over the body length.
 */
export const PROPORTIONS = {
  lowerBout: { low: 0.53, high: 0.66 },
  upperBout: { low: 0.42, high: 0.53 },
  waist: { low: 0.27, high: 0.38 },
  stop: { low: 0.5, high: 0.6 },
} as const;
