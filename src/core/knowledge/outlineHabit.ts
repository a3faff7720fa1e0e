import type { BoutArcs, Limits, OutlineHabit, Usual } from '../curve/index.ts';
import type { Family } from './family.ts';
import { LENGTH_LIMITS, PROPORTIONS, type Range } from './ranges.ts';

/*
 * Where the figures come from. Thirteen tangent arcs a half were fitted by us to the outlines of eleven
 * violins in photographs (twelve views, unknown makers, mostly modern, no scale: ratios only), left and right
 * averaged; the usual values draw the mean of those outlines, the spreads are those among them. Lower corner
 * end and hook rest on five of the pictures. Violas: the same, scaled; none was measured. Cellos: radii and
 * headings the same, scaled; stations and corner ratios moved part of the way to one small photograph of a
 * cello, so indicative only. Corner ends of viola and cello are from memory.
 */
const SOURCE = {
  violin: 'fitted by us to photographs of eleven violins',
  viola: 'fitted by us to photographs of eleven violins, scaled',
  cello:
    'fitted by us to photographs of eleven violins, scaled; stations partly from one photograph of a cello',
} as const satisfies Record<Family, string>;

const usual = (value: number, spread: number): Usual => ({ value, spread });

const arcs = (end: Usual, shoulder: Usual, flank: Usual, upperFlank: Usual, reverse: Usual): BoutArcs => ({
  end,
  shoulder,
  flank,
  upperFlank,
  reverse,
});

/** How far beyond the proportions seen fit a body is still drawn, so that sizes 6 % off the usual always are. */
const LEEWAY = 0.04;

/** The inner four fifths of the proportions pass without a remark. */
function limits({ low, high }: Pick<Range, 'low' | 'high'>): Limits {
  const margin = 0.1 * (high - low);
  return {
    least: low * (1 - LEEWAY),
    usualLeast: low + margin,
    usualMost: high - margin,
    most: high * (1 + LEEWAY),
  };
}

const SHAPE = {
  radiiStandFor: { bodyLengthMm: 355, upperBoutMm: 168, waistMm: 112, lowerBoutMm: 206 },
  lowerRadiiMm: arcs(
    usual(206, 0.15),
    usual(71.5, 0.1),
    usual(72.4, 0.1),
    usual(133, 0.25),
    usual(22.25, 0.15),
  ),
  upperRadiiMm: arcs(
    usual(128, 0.12),
    usual(63.5, 0.08),
    usual(66.2, 0.12),
    usual(151, 0.17),
    usual(21.4, 0.15),
  ),
  cRadiiMm: { lower: usual(19.1, 0.1), middle: usual(88.7, 0.15), upper: usual(14.7, 0.12) },
  lowerHeadingsDeg: arcs(usual(13.4, 4), usual(50.4, 8), usual(96.7, 4), usual(115, 2.5), usual(59.6, 6)),
  upperHeadingsDeg: arcs(usual(17.3, 3.5), usual(51.5, 8), usual(96, 3), usual(107.2, 2), usual(53.6, 6)),
  cHeadingsDeg: {
    lowerHook: usual(27.1, 6),
    lower: usual(115.7, 3.5),
    middle: usual(78.5, 3),
    upperHook: usual(25.5, 6),
  },
  lowerCornerEndDeg: usual(114, 4),
  upperCornerEndDeg: usual(68.2, 6),
  ratioSpread: {
    endToShoulder: 0.25,
    shoulderToFlank: 0.12,
    flankToUpperFlank: 0.2,
    cLowerToCUpper: 0.12,
  },
  shareLimits: {
    upperBout: limits(PROPORTIONS.upperBout),
    waist: limits(PROPORTIONS.waist),
    lowerBout: limits(PROPORTIONS.lowerBout),
  },
} as const;

const STATIONS = {
  lowerBout: usual(0.213, 0.006),
  waist: usual(0.561, 0.007),
  upperBout: usual(0.81, 0.006),
  lowerCorner: usual(0.41, 0.005),
  upperCorner: usual(0.657, 0.005),
};

/** One spread, as a share of the body length. */
const LOWER_CORNER_SPREAD = 0.004;
const UPPER_CORNER_SPREAD = 0.0033;

const HABITS: Readonly<Record<Family, OutlineHabit>> = {
  violin: {
    ...SHAPE,
    family: 'violin',
    usualSizes: SHAPE.radiiStandFor,
    lowerCornerEndMm: 6.7,
    upperCornerEndMm: 6.9,
    stations: STATIONS,
    lowerCornersToBout: usual(0.892, LOWER_CORNER_SPREAD),
    upperCornersToBout: usual(0.963, UPPER_CORNER_SPREAD),
    bodyLengthLimitsMm: LENGTH_LIMITS.violin,
    source: SOURCE.violin,
  },
  viola: {
    ...SHAPE,
    family: 'viola',
    usualSizes: { bodyLengthMm: 406, upperBoutMm: 193, waistMm: 131, lowerBoutMm: 236 },
    lowerCornerEndMm: 7.5,
    upperCornerEndMm: 7.5,
    stations: STATIONS,
    lowerCornersToBout: usual(0.892, LOWER_CORNER_SPREAD),
    upperCornersToBout: usual(0.963, UPPER_CORNER_SPREAD),
    bodyLengthLimitsMm: LENGTH_LIMITS.viola,
    source: SOURCE.viola,
  },
  cello: {
    ...SHAPE,
    family: 'cello',
    usualSizes: { bodyLengthMm: 755, upperBoutMm: 342, waistMm: 231, lowerBoutMm: 440 },
    lowerCornerEndMm: 11.5,
    upperCornerEndMm: 11.5,
    stations: { ...STATIONS, waist: usual(0.567, 0.007), lowerCorner: usual(0.418, 0.005) },
    lowerCornersToBout: usual(0.874, LOWER_CORNER_SPREAD),
    upperCornersToBout: usual(0.948, UPPER_CORNER_SPREAD),
    bodyLengthLimitsMm: LENGTH_LIMITS.cello,
    source: SOURCE.cello,
  },
};

/** How the bodies of a family are usually shaped; what a draft starts from. */
export function outlineHabit(family: Family): OutlineHabit {
  return HABITS[family];
}
