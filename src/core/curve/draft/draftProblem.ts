import { cos, sin } from '../../base/index.ts';
import { type Matrix, zeroMatrix } from '../../numeric/index.ts';
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
import type { OutlineHabit, Usual } from './outlineHabit.ts';
import { cornerEndsMm, type OutlineTargets } from './outlineTargets.ts';
import { usualNumbers } from './shapeNumbers.ts';

/** The numbers of a draft beyond those every shape has. */
export const DRAFT_AT = {
  upperEndHeading: 28,
  lowerCornerX: 29,
  lowerCornerY: 30,
  upperCornerX: 31,
  upperCornerY: 32,
  lowerBoutY: 33,
  waistY: 34,
  upperBoutY: 35,
} as const;

export const DRAFT_NUMBERS = 36;

/** A number that the maker has fixed. */
export interface Pin {
  readonly index: number;
  readonly value: number;
}

/** Everything the solver needs: usual values, pins, widths, ends. Lengths in mm, angles in radians. */
export interface DraftProblem {
  readonly usual: Float64Array;
  readonly spread: Float64Array;
  readonly pins: readonly Pin[];
  readonly targets: OutlineTargets;
  readonly cornerEndsMm: { readonly lower: number; readonly upper: number };
  /** Twice the objective's quadratic form, in spreads from the usual values. */
  readonly hessian: Matrix;
}

export function draftProblem(targets: OutlineTargets, habit: OutlineHabit): DraftProblem {
  const { value, spread } = usualNumbers(habit, targets, DRAFT_NUMBERS);
  const length = targets.bodyLengthMm;
  const put = (index: number, usual: Usual, factor: number, spreadFactor = factor): void => {
    value[index] = usual.value * factor;
    spread[index] = usual.spread * spreadFactor;
  };
  const { stations } = habit;
  put(DRAFT_AT.upperEndHeading, habit.upperCornerEndDeg, Math.PI / 180);
  put(DRAFT_AT.lowerCornerX, habit.lowerCornersToBout, targets.lowerBoutMm / 2, length);
  put(DRAFT_AT.lowerCornerY, stations.lowerCorner, length);
  put(DRAFT_AT.upperCornerX, habit.upperCornersToBout, targets.upperBoutMm / 2, length);
  put(DRAFT_AT.upperCornerY, stations.upperCorner, length);
  put(DRAFT_AT.lowerBoutY, stations.lowerBout, length);
  put(DRAFT_AT.waistY, stations.waist, length);
  put(DRAFT_AT.upperBoutY, stations.upperBout, length);
  return {
    usual: value,
    spread,
    pins: pinsOf(targets),
    targets,
    cornerEndsMm: cornerEndsMm(targets, habit),
    hessian: hessianOf(spread, habit),
  };
}

/** Which number a measured value fixes, and how much of the value it is. */
export const PINNED_BY = {
  lowerBoutStationMm: { index: DRAFT_AT.lowerBoutY, share: 1 },
  waistStationMm: { index: DRAFT_AT.waistY, share: 1 },
  upperBoutStationMm: { index: DRAFT_AT.upperBoutY, share: 1 },
  lowerCornerStationMm: { index: DRAFT_AT.lowerCornerY, share: 1 },
  upperCornerStationMm: { index: DRAFT_AT.upperCornerY, share: 1 },
  lowerCornersMm: { index: DRAFT_AT.lowerCornerX, share: 0.5 },
  upperCornersMm: { index: DRAFT_AT.upperCornerX, share: 0.5 },
} as const satisfies Partial<Record<keyof OutlineTargets, { index: number; share: number }>>;

export type PinnedName = keyof typeof PINNED_BY;
export const PINNED_NAMES = Object.keys(PINNED_BY) as readonly PinnedName[];

function pinsOf(targets: OutlineTargets): Pin[] {
  return PINNED_NAMES.flatMap((name) => {
    const value = targets[name];
    const { index, share } = PINNED_BY[name];
    return value === undefined ? [] : [{ index, value: value * share }];
  });
}

/** Departures from the usual count squared, and so do departures of neighbouring radii from their usual ratio. */
function hessianOf(spread: Float64Array, habit: OutlineHabit): Float64Array[] {
  const hessian = zeroMatrix(DRAFT_NUMBERS, DRAFT_NUMBERS);
  for (let i = 0; i < DRAFT_NUMBERS; i += 1) hessian[i][i] = 2;
  const tie = (i: number, j: number, ratioSpread: number): void => {
    const a = spread[i] / ratioSpread;
    const b = spread[j] / ratioSpread;
    hessian[i][i] += 2 * a * a;
    hessian[j][j] += 2 * b * b;
    hessian[i][j] -= 2 * a * b;
    hessian[j][i] -= 2 * a * b;
  };
  const ratio = habit.ratioSpread;
  for (const first of [AT.lowerRadii, AT.upperRadii]) {
    tie(first, first + 1, ratio.endToShoulder);
    tie(first + 1, first + 2, ratio.shoulderToFlank);
    tie(first + 2, first + 3, ratio.flankToUpperFlank);
  }
  tie(AT.cRadii, AT.cRadii + 2, ratio.cLowerToCUpper);
  return hessian;
}

/** One equation of the draft: how far it is from being met, mm, and how that answers to every number. */
export interface Equation {
  readonly gapMm: number;
  readonly row: Float64Array;
}

/**
 * The twelve equations: three widths, three stations of the widths, and both coordinates of the ends of the
 * lower, middle and upper run.
 */
export function equationsOf(problem: DraftProblem, u: Numbers): Equation[] {
  const { targets } = problem;
  const at = DRAFT_AT;
  const length = targets.bodyLengthMm;
  return [
    ...place(u, LOWER_RUN, 2, 1, { x: targets.lowerBoutMm / 2, y: 0 }, { y: at.lowerBoutY }),
    ...place(u, LOWER_RUN, 4, 1, { x: 0, y: 0 }, { x: at.lowerCornerX, y: at.lowerCornerY }),
    ...place(u, UPPER_RUN, 2, -1, { x: targets.upperBoutMm / 2, y: -length }, { y: at.upperBoutY }),
    ...place(u, UPPER_RUN, 4, -1, { x: 0, y: -length }, { x: at.upperCornerX, y: at.upperCornerY }),
    ...waistEquations(problem, u),
  ];
}

/**
 * `way to the place - constant - number = 0` in x and in y, y counted upwards (`up` is -1 for the run that
 * hangs from the upper end). Arc 2 is taken where it stands upright, the last arc at its end.
 */
function place(
  u: Numbers,
  run: ArcRun,
  arc: number,
  up: 1 | -1,
  constant: { x: number; y: number },
  number: { x?: number; y: number },
): [Equation, Equation] {
  const isEnd = arc === run.turns.length - 1;
  const angle = isEnd ? headingRad(run.headings[arc + 1], u) : Math.PI / 2;
  const way = wayAlong(run, u, arc, angle);
  const rows = emptyRows(DRAFT_NUMBERS);
  addGradient(rows, run, u, arc, angle, { x: 1, y: up }, isEnd ? 1 : undefined);
  if (number.x !== undefined) rows.x[number.x] -= 1;
  rows.y[number.y] -= 1;
  return [
    { gapMm: way.x - constant.x - (number.x === undefined ? 0 : u[number.x]), row: rows.x },
    { gapMm: up * way.y - constant.y - u[number.y], row: rows.y },
  ];
}

function waistEquations(problem: DraftProblem, u: Numbers): Equation[] {
  const at = DRAFT_AT;
  const start = startOfC(problem, u);
  const end = cornerOffset(u[at.upperEndHeading], problem.cornerEndsMm.upper);
  const waist = wayAlong(C_RUN, u, 1, Math.PI / 2);
  const over = wayAlong(C_RUN, u, 2, headingRad(C_RUN.headings[3], u));

  const upright = startRows(problem, u);
  addGradient(upright, C_RUN, u, 1, Math.PI / 2, { x: 1, y: 1 });
  upright.y[at.waistY] -= 1;
  const last = startRows(problem, u);
  addGradient(last, C_RUN, u, 2, headingRad(C_RUN.headings[3], u), { x: 1, y: 1 }, 1);
  last.x[at.upperCornerX] -= 1;
  last.y[at.upperCornerY] -= 1;
  last.x[at.upperEndHeading] -= end.y;
  last.y[at.upperEndHeading] += end.x;
  return [
    { gapMm: start.x + waist.x - problem.targets.waistMm / 2, row: upright.x },
    { gapMm: start.y + waist.y - u[at.waistY], row: upright.y },
    { gapMm: start.x + over.x - (u[at.upperCornerX] - end.x), row: last.x },
    { gapMm: start.y + over.y - (u[at.upperCornerY] - end.y), row: last.y },
  ];
}

const cornerOffset = (headingRadians: number, widthMm: number) => ({
  x: widthMm * cos(headingRadians),
  y: widthMm * sin(headingRadians),
});

function startOfC(problem: DraftProblem, u: Numbers): { x: number; y: number } {
  const offset = cornerOffset(u[AT.lowerEndHeading], problem.cornerEndsMm.lower);
  return { x: u[DRAFT_AT.lowerCornerX] + offset.x, y: u[DRAFT_AT.lowerCornerY] + offset.y };
}

function startRows(problem: DraftProblem, u: Numbers): Rows {
  const rows = emptyRows(DRAFT_NUMBERS);
  const offset = cornerOffset(u[AT.lowerEndHeading], problem.cornerEndsMm.lower);
  rows.x[DRAFT_AT.lowerCornerX] = 1;
  rows.y[DRAFT_AT.lowerCornerY] = 1;
  rows.x[AT.lowerEndHeading] = -offset.y;
  rows.y[AT.lowerEndHeading] = offset.x;
  return rows;
}
