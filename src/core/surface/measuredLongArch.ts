import { accept, Bug, type Checked, type Fault, type Finding, type Point, refuse } from '../base/index.ts';
import { type LongArch, type LongArchForm, longArch, longArchHeight } from './longArch.ts';
import type { ArchResidual } from './measuredCrossArch.ts';
import { crossArchStart } from './measuredCrossStart.ts';
import type { ArchDeviation } from './measuredDeviation.ts';
import { type Estimate, fitModel, plusMinusOf } from './measuredFit.ts';
import { type FitInParts, type FitOfKept, fitInParts, liesIn, sizeOver } from './measuredParts.ts';
import { deviationFinding, type NamedDeviation, nameAlong, type ReadingPlace } from './measuredPlace.ts';

/** What is known about a reading of a long arch beside its points; as for a cross arch. */
export interface LongArchKnowns extends ReadingPlace {
  readonly base: 'given' | 'free';
  readonly leaveOut?: boolean;
}

/**
 * A long arch as measured, each number with ± (k = 2): the form that fits best, its crest's place, and what lies between
 * crest and channel below and above it. `baseMm` is the height of the channel's lows in the reading.
 */
export interface MeasuredLongArch {
  readonly form: LongArchForm;
  readonly crestAtMm: Estimate;
  readonly belowMm: Estimate;
  readonly aboveMm: Estimate;
  readonly riseMm: Estimate;
  readonly baseMm: Estimate;
  readonly crestMm: Estimate;
  readonly tiltRad: Estimate;
  /** Every form that could be fitted, the nearest first. */
  readonly forms: readonly { readonly kind: LongArchForm['kind']; readonly rmsMm: number }[];
  readonly residuals: readonly ArchResidual[];
  readonly rmsMm: number;
  readonly maxMm: number;
  readonly deviations: readonly NamedDeviation[];
  readonly findings: readonly Finding[];
}

/** Places of the numbers in the fit; FILLET, then the platform's reach and the logarithm of its radius. */
const CREST_AT = 0;
const BELOW = 1;
const ABOVE = 2;
const RISE = 3;
const BASE = 4;
const TILT = 5;
const SCOOP = 6;
const FILLET = 7;
const PLATFORM = 8;
const LOG_RADIUS = 9;
const STEPS = [0.05, 0.05, 0.05, 0.02, 0.02, 0.0002, 0.002, 0.2, 0.1, 0.005];

const OUTSIDE_MM = 3;
const FEWEST_READINGS = 12;
const FEWEST_OUTSIDE = 2;
/** mm. A smaller deviation is within what wood and hand do (chosen by us). */
const LEAST_DEVIATION_MM = 0.15;
const FIRST_SCOOP = 0.033;
/**
 * Of the chord: about 20, 40 and 80 mm on a violin. Readings do not tell the fillet and the rise apart, so the fillet is tried, not
 * solved for.
 */
const FILLET_SHARES = [0.06, 0.118, 0.24];
const FIRST_PLATFORM_SHARE = 0.3;
/** Of the half chord: a radius at which a platform is flat to a hundredth of a millimetre. */
const FLAT_SHARE = 500;

/** What is tried: a form, its end fillet as a share of the chord, and whether a platform's radius is open or flat. */
interface Trial {
  readonly kind: LongArchForm['kind'];
  readonly filletShare: number;
  readonly platform: 'open' | 'flat' | 'none';
}

const TRIALS: readonly Trial[] = [
  { kind: 'cycloid', filletShare: 0, platform: 'none' },
  ...FILLET_SHARES.flatMap((filletShare): Trial[] => [
    { kind: 'circle', filletShare, platform: 'none' },
    { kind: 'two-circles', filletShare, platform: 'open' },
    { kind: 'two-circles', filletShare, platform: 'flat' },
  ]),
];

/**
 * The long arch that readings (y along the body, height) show, in the form that explains them with the fewest numbers:
 * circle with end fillets, flat-topped by a second circle, or cycloid; crest anywhere; sags and swellings named.
 *
 * Faults: `arch.readings`, `arch.one-sided`, `arch.not-settled`. Findings: `arch.deviation`, `arch.deviation-left-out`.
 * Method: each form by least squares with its deviations masked; compared by N ln(rms²) + numbers · ln N, a deviation
 * counting as three numbers (Schwarz, Estimating the Dimension of a Model, 1978).
 */
export function fitLongArch(
  readings: readonly Point<'section'>[],
  knowns: LongArchKnowns,
  at = 'long arch',
): Checked<MeasuredLongArch> {
  const fault = readingFault(readings, at);
  if (fault) return refuse(fault);
  const sorted = readings.toSorted((a, b) => a.x - b.x);
  const start = crossArchStart(sorted, knowns);
  if (start === null) return refuse(oneSided(at));
  const tried = TRIALS.flatMap((trial) => fitForm(sorted, knowns, start, trial));
  if (tried.length === 0) return refuse(notSettled(at));
  tried.sort((a, b) => a.cost - b.cost);
  return accept(resultOf(sorted, knowns, tried, at));
}

const NUMBERS_OF_A_BUMP = 3;
/** How much nearer a flat top must come than the plainer forms to be believed: odds of about 150 to 1. */
const FLAT_TOP_MARGIN = 10;

interface FittedForm {
  readonly trial: Trial;
  readonly kind: LongArchForm['kind'];
  readonly parted: FitInParts;
  readonly cost: number;
}

function fitForm(
  readings: readonly Point<'section'>[],
  knowns: LongArchKnowns,
  [middle, half, rise, , base, tilt]: readonly number[],
  trial: Trial,
): FittedForm[] {
  const { kind, filletShare, platform } = trial;
  const radiusMm = platform === 'flat' ? FLAT_SHARE * half : (half * half) / rise;
  const parted = fitInParts(readings.length, {
    fitWithout: (numbers, left) => fitBetween(readings, knowns, trial, numbers, left),
    start: [
      middle,
      half,
      half,
      rise,
      base,
      tilt,
      FIRST_SCOOP,
      filletShare * 2 * half,
      FIRST_PLATFORM_SHARE * half,
      Math.log(radiusMm),
    ],
    searchOf: (numbers) => {
      const chord = numbers[BELOW] + numbers[ABOVE];
      return {
        halfWidthsMm: [0.06, 0.09, 0.13, 0.18].map((share) => share * chord),
        leastMm: LEAST_DEVIATION_MM,
        fromMm: numbers[CREST_AT] - 0.95 * numbers[BELOW],
        toMm: numbers[CREST_AT] + 0.95 * numbers[ABOVE],
      };
    },
  });
  if (parted === null) return [];
  const count = readings.length;
  const numbers = parted.without.fit.open.length + NUMBERS_OF_A_BUMP * parted.left.length;
  const least = Math.max(parted.without.fit.rms, Number.MIN_VALUE);
  const margin = kind === 'two-circles' ? FLAT_TOP_MARGIN : 0;
  return [{ trial, kind, parted, cost: 2 * count * Math.log(least) + numbers * Math.log(count) + margin }];
}

function fitBetween(
  readings: readonly Point<'section'>[],
  knowns: LongArchKnowns,
  { kind, platform }: Trial,
  start: readonly number[],
  left: readonly ArchDeviation[],
): FitOfKept | null {
  let numbers = start;
  let last: FitOfKept | null = null;
  for (let turn = 0; turn < 2; turn++) {
    const { [CREST_AT]: crest, [BELOW]: below, [ABOVE]: above } = numbers;
    const kept = readings.filter(
      ({ x }) => x > crest - below - OUTSIDE_MM && x < crest + above + OUTSIDE_MM && !liesIn(left, x),
    );
    const outside = kept.filter(({ x }) => x < crest - below || x > crest + above).length;
    const task = {
      residualsOf: (tried: Float64Array) => residualsFrom(kept, kind, tried),
      start: numbers,
      steps: STEPS,
    };
    const open = [
      ...[CREST_AT, BELOW, ABOVE, RISE, BASE],
      ...(knowns.base === 'free' ? [TILT] : []),
      ...(platform === 'none' ? [] : [PLATFORM]),
      ...(platform === 'open' ? [LOG_RADIUS] : []),
    ];
    const withScoop = outside >= FEWEST_OUTSIDE ? fitModel({ ...task, open: [...open, SCOOP] }) : null;
    const fit = withScoop ?? fitModel({ ...task, open });
    if (fit === null) return null;
    numbers = fit.numbers;
    last = { fit, kept };
  }
  return last;
}

function formOf(kind: LongArchForm['kind'], numbers: ArrayLike<number>): LongArchForm {
  const filletMm = numbers[FILLET];
  if (kind === 'cycloid') return { kind };
  if (kind === 'circle') return { kind, filletMm };
  return {
    kind,
    filletMm,
    platformMm: numbers[PLATFORM],
    platformRadiusMm: Math.exp(numbers[LOG_RADIUS]),
  };
}

/** Two halves with one level crest: below it and above it the arch may be of different length. */
function residualsFrom(
  readings: readonly Point<'section'>[],
  kind: LongArchForm['kind'],
  numbers: ArrayLike<number>,
): Float64Array | null {
  const halves = [numbers[BELOW], numbers[ABOVE]].map((reach): LongArch | null => {
    const arch = longArch(-reach, reach, numbers[RISE], formOf(kind, numbers));
    return arch.ok ? arch.value : null;
  });
  const [below, above] = halves;
  if (!below || !above) return null;
  const [cosine, sine] = [Math.cos(numbers[TILT]), Math.sin(numbers[TILT])];
  return Float64Array.from(readings, ({ x, y }) => {
    const along = (x - numbers[CREST_AT]) * cosine + (y - numbers[BASE]) * sine;
    const height = (y - numbers[BASE]) * cosine - (x - numbers[CREST_AT]) * sine;
    const half = along < 0 ? below : above;
    const beyond = Math.abs(along) - half.endMm;
    return height - (beyond > 0 ? numbers[SCOOP] * beyond ** 2 : longArchHeight(half, along));
  });
}

function resultOf(
  readings: readonly Point<'section'>[],
  knowns: LongArchKnowns,
  tried: readonly FittedForm[],
  at: string,
): MeasuredLongArch {
  const [best] = tried;
  if (!best) throw new Bug('a long arch without a form');
  const { kind, parted } = best;
  const leftOut = knowns.leaveOut === true;
  const { fit, kept } = leftOut ? parted.without : parted.whole;
  const other = otherFillet(readings, knowns, best.trial, fit.numbers, leftOut ? parted.left : []);
  const of = (...places: readonly number[]): Estimate => {
    const value = places.reduce((sum, place) => sum + fit.numbers[place], 0);
    const shift = other ? places.reduce((sum, place) => sum + other[place], 0) - value : 0;
    return {
      value,
      plusMinus: Math.hypot(plusMinusOf(fit, new Map(places.map((place) => [place, 1]))), shift),
    };
  };
  const unmoved = parted.without.fit.numbers;
  const off = residualsFrom(readings, kind, unmoved) ?? new Float64Array();
  const deviations = parted.left.map((one) =>
    nameAlong(
      { ...one, sizeMm: sizeOver(readings, off, one) },
      one.atMm - unmoved[CREST_AT],
      unmoved[BELOW] + unmoved[ABOVE],
      knowns,
    ),
  );
  const used = new Set(kept);
  const all = residualsFrom(readings, kind, fit.numbers) ?? new Float64Array();
  return {
    form: formOf(kind, fit.numbers),
    crestAtMm: of(CREST_AT),
    belowMm: of(BELOW),
    aboveMm: of(ABOVE),
    riseMm: of(RISE),
    baseMm: of(BASE),
    crestMm: of(BASE, RISE),
    tiltRad: of(TILT),
    forms: nearestOfEach(tried),
    residuals: readings.map((reading, index) => ({
      alongMm: reading.x,
      mm: all[index],
      used: used.has(reading),
    })),
    rmsMm: fit.rms,
    maxMm: fit.residuals.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
    deviations,
    findings: deviations.map((one) => deviationFinding(one, at, leftOut)),
  };
}

/** By how much more an end fillet may be than the nearest of those tried. */
const FILLET_UNSURE = 1.2;

/** The numbers that a larger end fillet would give: what the choice of the fillet leaves open. */
function otherFillet(
  readings: readonly Point<'section'>[],
  knowns: LongArchKnowns,
  trial: Trial,
  numbers: readonly number[],
  left: readonly ArchDeviation[],
): readonly number[] | null {
  if (trial.kind === 'cycloid') return null;
  const start = numbers.map((value, place) => (place === FILLET ? FILLET_UNSURE * value : value));
  return fitBetween(readings, knowns, trial, start, left)?.fit.numbers ?? null;
}

function nearestOfEach(tried: readonly FittedForm[]): MeasuredLongArch['forms'] {
  const first = tried.filter(({ kind }, index) => tried.findIndex((one) => one.kind === kind) === index);
  return first.map(({ kind, parted }) => ({ kind, rmsMm: parted.without.fit.rms }));
}

function readingFault(readings: readonly Point<'section'>[], at: string): Fault | null {
  const broken = readings.findIndex(({ x, y }) => !(Number.isFinite(x) && Number.isFinite(y)));
  const places = new Set(readings.map(({ x }) => x)).size;
  if (broken < 0 && places >= FEWEST_READINGS) return null;
  return {
    code: 'arch.readings',
    at,
    found: broken < 0 ? `${places} places read` : `reading ${broken + 1} is not a number`,
    need: `${FEWEST_READINGS} readings or more in millimetres, from channel to channel`,
    remedy: 'read the arch again, every 5 to 10 mm',
  };
}

function oneSided(at: string): Fault {
  return {
    code: 'arch.one-sided',
    at,
    found: 'readings that fall from the crest to one end only',
    need: 'both ends of the arch',
    remedy: 'read from channel to channel',
  };
}

function notSettled(at: string): Fault {
  return {
    code: 'arch.not-settled',
    at,
    found: 'neither circle, flat top nor cycloid comes near these readings',
    need: 'heights that rise from the channel at one end to a crest and fall to the channel at the other',
    remedy: 'check the order and the units of the readings, or read the arch again',
  };
}
