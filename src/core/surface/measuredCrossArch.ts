import { accept, type Checked, cos, hypot, type Point, point, refuse, sin } from '../base/index.ts';
import {
  BASE,
  CENTRE,
  FULLNESS,
  HALF_WIDTH,
  RISE,
  residualsFrom,
  SCOOP,
  STEPS,
  TILT,
} from './measuredCrossModel.ts';
import { crossArchStart } from './measuredCrossStart.ts';
import type { ArchDeviation, DeviationSearch } from './measuredDeviation.ts';
import { type Estimate, fitModel, plusMinusOf } from './measuredFit.ts';
import { type ArchMisfit, archMisfit, fitTold } from './measuredMisfit.ts';
import { type FitInParts, type FitOfKept, fitInParts, liesIn } from './measuredParts.ts';
import { nameAcross, type ReadingPlace } from './measuredPlace.ts';
import { notSettled, oneSided, readingFaults, shortReach } from './measuredTrouble.ts';

/** What is known about a reading of a cross arch beside its points. */
export interface CrossArchKnowns extends ReadingPlace {
  /** `given`: the level line of the reading is the gluing face's direction; `free`: tilt and height are open. */
  readonly base: 'given' | 'free';
  /** x of the centre line in the reading, where it was marked. */
  readonly centreXMm?: number;
  /** From the centre line to the channel's lowest line, where it is known. */
  readonly halfWidthMm?: number;
  /** Leave deviations that were recognised out of the fit; else they are kept and told. */
  readonly leaveOut?: boolean;
}

/**
 * A cross arch as measured: cycloid and fullness between its two channel lows, each number with ± (k = 2). `channel` is
 * in the reading's own frame; `baseMm` is the height of the channel's lows in the reading, at the crest's x.
 */
export interface MeasuredCrossArch extends ArchMisfit {
  readonly channel: { readonly left: Point<'section'>; readonly right: Point<'section'> };
  readonly centreXMm: Estimate;
  readonly halfWidthMm: Estimate;
  readonly riseMm: Estimate;
  readonly fullness: Estimate;
  readonly baseMm: Estimate;
  /** Of base and rise together: the crest's height in the reading. */
  readonly crestMm: Estimate;
  readonly tiltRad: Estimate;
}

/**
 * How far outside the channel's lowest line readings still tell where it lies, since the scoop is a parabola there: mm, and as a share of
 * the half width where that is more.
 */
const OUTSIDE_MM = 3;
const OUTSIDE_SHARE = 0.035;
/** Share of the half width at a corner beyond which the arch is what the corner leaves of it; and from where the channel's own low counts. */
const WING = { from: 0.72, to: 0.98 };
const FEWEST_OUTSIDE = 2;
/** mm. A smaller deviation is within what wood and hand do (chosen by us). */
const LEAST_DEVIATION_MM = 0.12;
/** Share of the half width that readings must reach for the channel to be found from them. */
const LEAST_REACH = 0.93;

/**
 * The cross arch that readings (x across, height) show: channel lows, rise, fullness, tilt and height of the reading where
 * they are free, residuals, and the stretches where wood was moved, by post, bar or load, named.
 *
 * Faults: `arch.readings` (too few, or not numbers), `arch.one-sided`, `arch.reach` (they end before the channel and its
 * width is not known), `arch.not-settled`. Findings: `arch.deviation`, `arch.deviation-left-out`.
 * Method: least squares over the readings between the channels and 3 mm outside them; bumps by {@link standingOut}.
 * Source of the model: arching by cycloids with one number for fullness, our own method note.
 */
export function fitCrossArch(
  readings: readonly Point<'section'>[],
  knowns: CrossArchKnowns,
  at = 'cross arch',
): Checked<MeasuredCrossArch> {
  const faults = readingFaults(readings, knowns, at);
  if (faults.length > 0) return refuse(...faults);
  const sorted = readings.toSorted((a, b) => a.x - b.x);
  const start = crossArchStart(sorted, knowns);
  if (start === null) return refuse(oneSided(at));
  const held = atCorner(knowns) ? { ...knowns, halfWidthMm: start[HALF_WIDTH] } : knowns;
  const parted = fitInParts(sorted.length, {
    fitWithout: (numbers, left) => fitBetween(sorted, held, numbers, left),
    start: [...start, FIRST_SCOOP],
    searchOf,
  });
  if (parted === null) return refuse(notSettled(at));
  const { numbers } = fitTold(parted, knowns.leaveOut === true).fit;
  const half = numbers[HALF_WIDTH];
  const reach = reachOf(sorted, numbers, knowns);
  if (knowns.halfWidthMm === undefined && reach < LEAST_REACH * half)
    return refuse(shortReach(at, reach, half));
  const found = resultOf(sorted, knowns, parted, at);
  return accept(held === knowns ? found : widened(found, sorted, held, start[HALF_WIDTH]));
}

/** The ± of an arch whose half width was read off the channel's low: what another width would make of it is added. */
function widened(
  arch: MeasuredCrossArch,
  readings: readonly Point<'section'>[],
  held: CrossArchKnowns,
  halfMm: number,
): MeasuredCrossArch {
  const byMm = Math.max(LOW_PLUS_MINUS_MM, (2 * halfMm) / readings.length);
  const wider = { ...held, halfWidthMm: halfMm + byMm };
  const start = [
    arch.centreXMm.value,
    halfMm + byMm,
    arch.riseMm.value,
    arch.fullness.value,
    arch.baseMm.value,
  ];
  const other = fitBetween(readings, wider, [...start, arch.tiltRad.value, FIRST_SCOOP], []);
  const more = ({ value, plusMinus }: Estimate, place: number): Estimate => ({
    value,
    plusMinus: other ? hypot(plusMinus, other.fit.numbers[place] - value) : plusMinus,
  });
  return {
    ...arch,
    halfWidthMm: { value: halfMm, plusMinus: byMm },
    riseMm: more(arch.riseMm, RISE),
    fullness: more(arch.fullness, FULLNESS),
    baseMm: more(arch.baseMm, BASE),
  };
}

/** mm, k = 2. Where a flat channel is lowest is read no better. */
const LOW_PLUS_MINUS_MM = 1;

/**
 * At a corner station the channel is where it reads lowest: the wing of the arch there follows the corner, and would draw the width
 * aside.
 */
function atCorner({ station, halfWidthMm }: CrossArchKnowns): boolean {
  return halfWidthMm === undefined && isCorner(station);
}

function isCorner(station: string | undefined): boolean {
  return station === 'lowerCorner' || station === 'upperCorner';
}

/** 1/mm: a gouge of about 15 mm radius. */
const FIRST_SCOOP = 0.033;

function searchOf(numbers: readonly number[]): DeviationSearch {
  const [half, centre] = [numbers[HALF_WIDTH], numbers[CENTRE]];
  return {
    halfWidthsMm: [0.12, 0.17, 0.23, 0.3, 0.4, 0.5].map((share) => share * half),
    leastMm: LEAST_DEVIATION_MM,
    fromMm: centre - 0.95 * half,
    toMm: centre + 0.95 * half,
  };
}

/** The readings that a fit with these numbers uses. */
function keptOf(
  readings: readonly Point<'section'>[],
  numbers: readonly number[],
  left: readonly ArchDeviation[],
  station: string | undefined,
): readonly Point<'section'>[] {
  const half = numbers[HALF_WIDTH];
  const reach = half + Math.max(OUTSIDE_MM, OUTSIDE_SHARE * half);
  const isHeld = (awayMm: number) =>
    !isCorner(station) || awayMm < WING.from * half || awayMm > WING.to * half;
  return readings.filter(
    ({ x }) =>
      Math.abs(x - numbers[CENTRE]) < reach && isHeld(Math.abs(x - numbers[CENTRE])) && !liesIn(left, x),
  );
}

/** Twice, since which readings lie between the channels follows from the fit itself. */
function fitBetween(
  readings: readonly Point<'section'>[],
  knowns: CrossArchKnowns,
  start: readonly number[],
  left: readonly ArchDeviation[],
): FitOfKept | null {
  let numbers = start;
  let last: FitOfKept | null = null;
  for (let turn = 0; turn < 2; turn++) {
    const kept = keptOf(readings, numbers, left, knowns.station);
    const outside = kept.filter(({ x }) => Math.abs(x - numbers[CENTRE]) > numbers[HALF_WIDTH]).length;
    const open = [
      ...(knowns.centreXMm === undefined ? [CENTRE] : []),
      ...(knowns.halfWidthMm === undefined ? [HALF_WIDTH] : []),
      ...[RISE, FULLNESS, BASE],
      ...(knowns.base === 'free' ? [TILT] : []),
    ];
    const task = {
      residualsOf: (tried: Float64Array) => residualsFrom(kept, tried),
      start: numbers,
      steps: STEPS,
    };
    // A few readings outside may not settle the scoop; then it is taken for a gouge's.
    const withScoop = outside >= FEWEST_OUTSIDE ? fitModel({ ...task, open: [...open, SCOOP] }) : null;
    const fit = withScoop ?? fitModel({ ...task, open });
    if (fit === null) return null;
    numbers = fit.numbers;
    last = { fit, kept };
  }
  return last;
}

/** By how much wider the ± is where a stretch was left out: its bounds were chosen by the same readings (from 200 made cases). */
const LEFT_OUT_UNSURE = 1.12;

/** How far the readings go out: on both sides, or on one where the centre line is known. */
function reachOf(
  readings: readonly Point<'section'>[],
  numbers: readonly number[],
  { centreXMm }: CrossArchKnowns,
): number {
  const sides = [numbers[CENTRE] - readings[0].x, readings[readings.length - 1].x - numbers[CENTRE]];
  return centreXMm === undefined ? Math.min(...sides) : Math.max(...sides);
}

function resultOf(
  readings: readonly Point<'section'>[],
  knowns: CrossArchKnowns,
  parted: FitInParts,
  at: string,
): MeasuredCrossArch {
  const leftOut = knowns.leaveOut === true;
  const { fit } = fitTold(parted, leftOut);
  const { numbers } = fit;
  const unsure = leftOut && parted.left.length > 0 ? LEFT_OUT_UNSURE : 1;
  const of = (...places: readonly number[]): Estimate => ({
    value: places.reduce((sum, place) => sum + numbers[place], 0),
    plusMinus: unsure * plusMinusOf(fit, new Map(places.map((place) => [place, 1]))),
  });
  const low = (side: -1 | 1): Point<'section'> =>
    point(
      numbers[CENTRE] + side * numbers[HALF_WIDTH] * cos(numbers[TILT]),
      numbers[BASE] + side * numbers[HALF_WIDTH] * sin(numbers[TILT]),
    );
  const model = {
    residualsFrom: (tried: ArrayLike<number>) => residualsFrom(readings, tried),
    nameOf: (
      one: ArchDeviation,
      sizeMm: number,
      { [CENTRE]: centre, [HALF_WIDTH]: half }: readonly number[],
    ) => nameAcross({ ...one, sizeMm }, one.atMm - centre, half, knowns),
  };
  return {
    channel: { left: low(-1), right: low(1) },
    centreXMm: of(CENTRE),
    halfWidthMm: of(HALF_WIDTH),
    riseMm: of(RISE),
    fullness: of(FULLNESS),
    baseMm: of(BASE),
    crestMm: of(BASE, RISE),
    tiltRad: of(TILT),
    ...archMisfit(readings, parted, leftOut, model, at),
  };
}
