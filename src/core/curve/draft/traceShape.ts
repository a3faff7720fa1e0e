import type { Point } from '../../base/index.ts';
import type { HalfOutline } from '../halfOutline.ts';
import {
  type ArcRun,
  AT,
  addGradient,
  C_RUN,
  emptyRows,
  headingRad,
  LOWER_RUN,
  type Numbers,
  type Rows,
  UPPER_RUN,
  wayAlong,
} from './arcRun.ts';
import { arcLengthMm, halfFromRuns, layShape, uprightPlace } from './layShape.ts';
import type { OutlineHabit } from './outlineHabit.ts';
import { usualNumbers } from './shapeNumbers.ts';

/** How many free numbers a traced shape has. */
export const SHAPE_NUMBERS = 29;

/** Which stretch of the half outline a point lies on. */
export type HalfStretch = 'lowerBout' | 'cBout' | 'upperBout';

/** A point laid on a shape, with its outward normal; `gradient` tells how it moves with each of the 29 numbers. */
export interface ShapePoint extends Point<'body'> {
  readonly normalX: number;
  readonly normalY: number;
  readonly stretch: HalfStretch;
  readonly gradient: Rows;
}

/** A wish on a measurable of the shape: `row · dz` should bring `valueMm` to `wantedMm`, within `spreadMm`. */
export interface SoftRow {
  readonly name: string;
  readonly valueMm: number;
  readonly wantedMm: number;
  readonly spreadMm: number;
  readonly row: Float64Array;
}

/**
 * What is known of a body before it is traced, on a body of `lengthMm` (the family's usual length; a tracing
 * scales it). `z` is counted in spreads from the usual shape: z = 0 is the usual body. The wishes are two to
 * three times wider than a draft's, so that odd bodies are followed too.
 */
export interface TraceShapePrior {
  readonly numbers: number;
  readonly lengthMm: number;
  readonly usual: Float64Array;
  readonly spread: Float64Array;
  readonly softRows: (z: Numbers) => readonly SoftRow[];
}

const CORNER_END_SPREAD = 0.09; // share of the corner end's width; 0.6 mm of 6.7 mm

/** The usual shape of a family for tracing, with the wishes on widths, stations and the upper corner. */
export function traceShapePrior(habit: OutlineHabit): TraceShapePrior {
  const lengthMm = habit.usualSizes.bodyLengthMm;
  const { value, spread } = usualNumbers(habit, habit.usualSizes, SHAPE_NUMBERS);
  value[SHAPE_NUMBERS - 1] = habit.lowerCornerEndMm;
  spread[SHAPE_NUMBERS - 1] = CORNER_END_SPREAD * habit.lowerCornerEndMm;
  return {
    numbers: SHAPE_NUMBERS,
    lengthMm,
    usual: value,
    spread,
    softRows: (z) => softRows(habit, { value, spread }, z),
  };
}

/**
 * The half outline of the 29 numbers `z` (spreads from the usual shape), body frame, mm, on a body of the
 * family's usual length. The bouts are laid from the ends, the waist from the lower corner; the upper corner
 * end is the line to wherever the upper bout stands. Always an outline in form; only near z = 0 a good one.
 */
export function shapeToHalf(z: Numbers, habit: OutlineHabit): HalfOutline {
  const u = numbersOf(z, traceShapePrior(habit));
  const lengthMm = habit.usualSizes.bodyLengthMm;
  return halfFromRuns(u, lengthMm, layShape(u, lengthMm, u[SHAPE_NUMBERS - 1]).cStart);
}

/** The shape's own numbers (logarithms of radii, headings in radians, corner end) for `z`. */
export function numbersOf(z: Numbers, prior: Pick<TraceShapePrior, 'usual' | 'spread'>): Float64Array {
  return prior.usual.map((usual, i) => usual + z[i] * prior.spread[i]);
}

/**
 * Points along the half outline of `z` about `stepMm` apart, from the lower to the upper end, never on a
 * corner tip, each with outward normal and exact gradient to `z` (at a fixed share of its arc).
 */
export function shapePoints(z: Numbers, habit: OutlineHabit, stepMm: number): readonly ShapePoint[] {
  const prior = traceShapePrior(habit);
  const u = numbersOf(z, prior);
  return [
    ...pointsOf('lowerBout', u, prior, stepMm),
    ...pointsOf('cBout', u, prior, stepMm),
    ...pointsOf('upperBout', u, prior, stepMm).reverse(),
  ];
}

const RUNS: Readonly<Record<HalfStretch, ArcRun>> = {
  lowerBout: LOWER_RUN,
  cBout: C_RUN,
  upperBout: UPPER_RUN,
};

function pointsOf(
  stretch: HalfStretch,
  u: Float64Array,
  prior: TraceShapePrior,
  stepMm: number,
): ShapePoint[] {
  const run = RUNS[stretch];
  return run.turns.flatMap((_, arc) => {
    const steps = Math.max(1, Math.round(arcLengthMm(run, u, arc) / stepMm));
    return Array.from({ length: steps }, (_unused, i) =>
      shapePoint(stretch, u, prior, arc, (i + 0.5) / steps),
    );
  });
}

/** The point at `share` of arc `arc` of a stretch, for the shape's own numbers `u`. */
export function shapePoint(
  stretch: HalfStretch,
  u: Float64Array,
  prior: Pick<TraceShapePrior, 'lengthMm' | 'spread'>,
  arc: number,
  share: number,
): ShapePoint {
  const run = RUNS[stretch];
  const a = headingRad(run.headings[arc], u);
  const at = a + share * (headingRad(run.headings[arc + 1], u) - a);
  const way = wayAlong(run, u, arc, at);
  const gradient = emptyRows(SHAPE_NUMBERS);
  const up = stretch === 'upperBout' ? -1 : 1;
  if (stretch === 'cBout') addStartOfC(gradient, u, { x: 1, y: 1 });
  addGradient(gradient, run, u, arc, at, { x: 1, y: up }, share);
  inSpreads(gradient, prior.spread);
  const origin = stretch === 'cBout' ? layShape(u, prior.lengthMm, u[SHAPE_NUMBERS - 1]).cStart : undefined;
  return {
    x: way.x + (origin?.x ?? 0),
    y: stretch === 'upperBout' ? prior.lengthMm - way.y : way.y + (origin?.y ?? 0),
    normalX: Math.sin(at),
    normalY: -up * Math.cos(at),
    stretch,
    gradient,
  };
}

/** Adds how the waist side of the lower corner moves with each number, times `factor`. */
function addStartOfC(rows: Rows, u: Float64Array, factor: Readonly<Point<'body'>>): void {
  addGradient(rows, LOWER_RUN, u, 4, headingRad(LOWER_RUN.headings[5], u), factor, 1);
  const lean = u[AT.lowerEndHeading];
  const end = u[SHAPE_NUMBERS - 1];
  rows.x[AT.lowerEndHeading] -= factor.x * end * Math.sin(lean);
  rows.y[AT.lowerEndHeading] += factor.y * end * Math.cos(lean);
  rows.x[SHAPE_NUMBERS - 1] += factor.x * Math.cos(lean);
  rows.y[SHAPE_NUMBERS - 1] += factor.y * Math.sin(lean);
}

function inSpreads(rows: Rows, spread: Float64Array): void {
  for (let i = 0; i < spread.length; i += 1) {
    rows.x[i] *= spread[i];
    rows.y[i] *= spread[i];
  }
}

/** Spreads of a tracing's wishes, mm on a body of 355 mm: two to three times those of a draft. */
const WISHES_MM = {
  lowerBout: 8,
  upperBout: 6,
  waist: 5,
  boutStation: 4,
  waistStation: 6,
  lowerCornerStation: 7,
  upperCornerStation: 6,
  lowerCorner: 4,
  upperCorner: 3.5,
  upperCornerEnd: 1.5,
} as const;

function softRows(
  habit: OutlineHabit,
  usual: { readonly value: Float64Array; readonly spread: Float64Array },
  z: Numbers,
): readonly SoftRow[] {
  const u = numbersOf(z, { usual: usual.value, spread: usual.spread });
  const sizes = habit.usualSizes;
  const lengthMm = sizes.bodyLengthMm;
  const scale = lengthMm / habit.radiiStandFor.bodyLengthMm;
  const laid = layShape(u, lengthMm, u[SHAPE_NUMBERS - 1]);
  const share = habit.stations;
  const rows: SoftRow[] = [];
  const wish = (name: string, valueMm: number, wantedMm: number, spreadMm: number, row: Float64Array) =>
    rows.push({ name, valueMm, wantedMm, spreadMm: spreadMm * scale, row });

  const upright = (run: ArcRun, arc: number, factor: Point<'body'>): Rows => {
    const gradient = emptyRows(SHAPE_NUMBERS);
    if (run === C_RUN) addStartOfC(gradient, u, factor);
    addGradient(gradient, run, u, arc, Math.PI / 2, factor);
    inSpreads(gradient, usual.spread);
    return gradient;
  };
  const tip = (run: ArcRun, factor: Point<'body'>): Rows => {
    const gradient = emptyRows(SHAPE_NUMBERS);
    const last = run.turns.length - 1;
    if (run === C_RUN) addStartOfC(gradient, u, factor);
    addGradient(gradient, run, u, last, headingRad(run.headings[last + 1], u), factor, 1);
    inSpreads(gradient, usual.spread);
    return gradient;
  };

  const low = uprightPlace(LOWER_RUN, u, 2);
  const waist = uprightPlace(C_RUN, u, 1);
  const high = uprightPlace(UPPER_RUN, u, 2);
  const lowRows = upright(LOWER_RUN, 2, { x: 2, y: 1 });
  const waistRows = upright(C_RUN, 1, { x: 2, y: 1 });
  const highRows = upright(UPPER_RUN, 2, { x: 2, y: -1 });
  wish('lowerBout', 2 * low.x, sizes.lowerBoutMm, WISHES_MM.lowerBout, lowRows.x);
  wish('upperBout', 2 * high.x, sizes.upperBoutMm, WISHES_MM.upperBout, highRows.x);
  wish('waist', 2 * (laid.cStart.x + waist.x), sizes.waistMm, WISHES_MM.waist, waistRows.x);
  wish('lowerBoutStation', low.y, share.lowerBout.value * lengthMm, WISHES_MM.boutStation, lowRows.y);
  wish(
    'upperBoutStation',
    lengthMm - high.y,
    share.upperBout.value * lengthMm,
    WISHES_MM.boutStation,
    highRows.y,
  );
  wish(
    'waistStation',
    laid.cStart.y + waist.y,
    share.waist.value * lengthMm,
    WISHES_MM.waistStation,
    waistRows.y,
  );

  const lowerTip = tip(LOWER_RUN, { x: 1, y: 1 });
  const upperTip = tip(UPPER_RUN, { x: 1, y: -1 });
  const cEnd = tip(C_RUN, { x: 1, y: 1 });
  const halfCorner = { lower: sizes.lowerBoutMm / 2, upper: sizes.upperBoutMm / 2 };
  wish(
    'lowerCornerStation',
    laid.lowerTip.y,
    share.lowerCorner.value * lengthMm,
    WISHES_MM.lowerCornerStation,
    lowerTip.y,
  );
  wish(
    'upperCornerStation',
    laid.upperTip.y,
    share.upperCorner.value * lengthMm,
    WISHES_MM.upperCornerStation,
    upperTip.y,
  );
  wish(
    'lowerCorner',
    laid.lowerTip.x,
    habit.lowerCornersToBout.value * halfCorner.lower,
    WISHES_MM.lowerCorner,
    lowerTip.x,
  );
  wish(
    'upperCorner',
    laid.upperTip.x,
    habit.upperCornersToBout.value * halfCorner.upper,
    WISHES_MM.upperCorner,
    upperTip.x,
  );
  const less = (a: Float64Array, b: Float64Array) => a.map((value, i) => value - b[i]);
  const lean = (habit.upperCornerEndDeg.value * Math.PI) / 180;
  wish(
    'upperCornerEndAcross',
    laid.upperTip.x - laid.cEnd.x,
    habit.upperCornerEndMm * Math.cos(lean),
    WISHES_MM.upperCornerEnd,
    less(upperTip.x, cEnd.x),
  );
  wish(
    'upperCornerEndAlong',
    laid.upperTip.y - laid.cEnd.y,
    habit.upperCornerEndMm * Math.sin(lean),
    WISHES_MM.upperCornerEnd,
    less(upperTip.y, cEnd.y),
  );
  return rows;
}
