import { accept, Bug, type Checked, hypot, log, type Point, refuse } from '../base/index.ts';
import type { LongArchForm } from './longArch.ts';
import { crossArchStart } from './measuredCrossStart.ts';
import type { ArchDeviation } from './measuredDeviation.ts';
import { type Estimate, fitModel, plusMinusOf } from './measuredFit.ts';
import {
  ABOVE,
  BASE,
  BELOW,
  CREST_AT,
  FILLET,
  formOf,
  LOG_RADIUS,
  PLATFORM,
  RISE,
  residualsFrom,
  SCOOP,
  STEPS,
  TILT,
  TRIALS,
  type Trial,
} from './measuredLongForms.ts';
import { notSettled, oneSided, readingFault } from './measuredLongTrouble.ts';
import { type ArchMisfit, archMisfit, fitTold } from './measuredMisfit.ts';
import { type FitInParts, type FitOfKept, fitInParts, liesIn } from './measuredParts.ts';
import { nameAlong, type ReadingPlace } from './measuredPlace.ts';

/** What is known about a reading of a long arch beside its points; as for a cross arch. */
export interface LongArchKnowns extends ReadingPlace {
  readonly base: 'given' | 'free';
  readonly leaveOut?: boolean;
}

/**
 * A long arch as measured, each number with ± (k = 2): the form that fits best, its crest's place, and what lies between
 * crest and channel below and above it. `baseMm` is the height of the channel's lows in the reading.
 */
export interface MeasuredLongArch extends ArchMisfit {
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
}

const OUTSIDE_MM = 3;
const FEWEST_OUTSIDE = 2;
/** mm. A smaller deviation is within what wood and hand do (chosen by us). */
const LEAST_DEVIATION_MM = 0.15;
const FIRST_SCOOP = 0.033;
const FIRST_PLATFORM_SHARE = 0.3;
/** Of the half chord: a radius at which a platform is flat to a hundredth of a millimetre. */
const FLAT_SHARE = 500;

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
      log(radiusMm),
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
  return [{ trial, kind, parted, cost: 2 * count * log(least) + numbers * log(count) + margin }];
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
  const { fit } = fitTold(parted, leftOut);
  const other = otherFillet(readings, knowns, best.trial, fit.numbers, leftOut ? parted.left : []);
  const of = (...places: readonly number[]): Estimate => {
    const value = places.reduce((sum, place) => sum + fit.numbers[place], 0);
    const shift = other ? places.reduce((sum, place) => sum + other[place], 0) - value : 0;
    return {
      value,
      plusMinus: hypot(plusMinusOf(fit, new Map(places.map((place) => [place, 1]))), shift),
    };
  };
  const model = {
    residualsFrom: (numbers: ArrayLike<number>) => residualsFrom(readings, kind, numbers),
    nameOf: (one: ArchDeviation, sizeMm: number, numbers: readonly number[]) =>
      nameAlong({ ...one, sizeMm }, one.atMm - numbers[CREST_AT], numbers[BELOW] + numbers[ABOVE], knowns),
  };
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
    ...archMisfit(readings, parted, leftOut, model, at),
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
