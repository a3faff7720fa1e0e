import { atan2, cos, exp, hypot, sin } from '../../base/index.ts';
import type { BoutArcs, Usual } from '../../curve/index.ts';
import { outlineHabit } from '../../knowledge/index.ts';

/**
 * The body outline as a deformable template: thirteen tangent arcs and two corner ends, run forward from
 * 29 shape numbers, each in units of its own spread. A length of 355 is only the template's unit.
 *
 * Order of the arcs: lower bout 0-4 (end, shoulder, flank, upper flank, reverse), C bout 5-7 (lower,
 * middle, upper), upper bout 8-12 laid from the top end downwards; pieces 13 and 14 are the corner ends.
 * Usual values and spreads are those of the violin's habit.
 */

/** mm. The template's unit of body length. */
export const TEMPLATE_LENGTH_MM = 355;

/** How many numbers deform the template. */
export const SHAPE_NUMBERS = 29;

/** How many further figures of the outcome are held softly: sizes, stations, corners and the upper corner's tie. */
export const OUTCOMES = 12;

const DEGREE = Math.PI / 180;

const HABIT = outlineHabit('violin');

function inOrder(arcs: BoutArcs): readonly Usual[] {
  return [arcs.end, arcs.shoulder, arcs.flank, arcs.upperFlank, arcs.reverse];
}

const { lowerHook, lower, middle, upperHook } = HABIT.cHeadingsDeg;
const C_RADII = [HABIT.cRadiiMm.lower, HABIT.cRadiiMm.middle, HABIT.cRadiiMm.upper];
const RADII = [...inOrder(HABIT.lowerRadiiMm), ...C_RADII, ...inOrder(HABIT.upperRadiiMm)];
const C_HEADINGS = [lowerHook, lower, middle, upperHook];
const HEADINGS = [...inOrder(HABIT.lowerHeadingsDeg), ...C_HEADINGS, ...inOrder(HABIT.upperHeadingsDeg)];
const RADII_MM = RADII.map((one) => one.value);
const RADII_SPREAD = RADII.map((one) => one.spread);
const HEADINGS_DEG = HEADINGS.map((one) => one.value);
const HEADINGS_SPREAD_DEG = HEADINGS.map((one) => one.spread);
const LOWER_CORNER_END = {
  directionDeg: HABIT.lowerCornerEndDeg.value,
  directionSpreadDeg: HABIT.lowerCornerEndDeg.spread,
  widthMm: HABIT.lowerCornerEndMm,
  widthSpreadMm: 0.8,
};

/** What the shape is expected to come out as, with spreads two to three times those used for drafting. */
const OUTCOME_MM = [206, 168, 112, 75.6, 287.6, 199.2, 145.6, 233.2, 91.9, 80.9, 2.57, 6.4];
const OUTCOME_SPREAD_MM = [8, 6, 5, 4, 4, 6, 7, 6, 4, 3.5, 1.5, 1.5];

/** Where the outcome figures stand in the list that {@link layTemplate} fills. */
export const OUTCOME = {
  lowerBout: 0,
  upperBout: 1,
  waist: 2,
  lowerBoutStation: 3,
  upperBoutStation: 4,
  waistStation: 5,
  lowerCornerStation: 6,
  upperCornerStation: 7,
} as const;

/** One laid template: per piece 0-14 start x, start y, signed radius (0 for a line), heading in and out. */
export interface LaidTemplate {
  readonly pieces: Float64Array;
  readonly outcomes: Float64Array;
}

export function emptyTemplate(): LaidTemplate {
  return { pieces: new Float64Array(15 * 5), outcomes: new Float64Array(OUTCOMES) };
}

/** Residual of outcome `index` in units of its spread. */
export function outcomeStrain(laid: LaidTemplate, index: number): number {
  return (
    ((laid.outcomes[index] as number) - (OUTCOME_MM[index] as number)) / (OUTCOME_SPREAD_MM[index] as number)
  );
}

/** Lays the chain for the shape numbers `shape[0..28]` into `laid`: pieces in mm and radians, outcomes in mm. */
export function layTemplate(shape: ArrayLike<number>, laid: LaidTemplate): void {
  layBout(shape, laid, 0, 13);
  layBout(shape, laid, 8, 22);
  layWaist(shape, laid);
  measureOutcomes(laid);
}

function radius(shape: ArrayLike<number>, arc: number): number {
  return (RADII_MM[arc] as number) * exp((shape[arc] as number) * (RADII_SPREAD[arc] as number));
}

function heading(shape: ArrayLike<number>, index: number): number {
  const at = index - 13;
  return (
    ((HEADINGS_DEG[at] as number) + (shape[index] as number) * (HEADINGS_SPREAD_DEG[at] as number)) * DEGREE
  );
}

function layBout(shape: ArrayLike<number>, laid: LaidTemplate, firstArc: number, firstHeading: number): void {
  const { pieces } = laid;
  let x = 0;
  let y = 0;
  let into = 0;
  for (let step = 0; step < 5; step++) {
    const arc = firstArc + step;
    const out = heading(shape, firstHeading + step);
    const signed = step === 4 ? -radius(shape, arc) : radius(shape, arc);
    put(pieces, arc, x, y, signed, into, out);
    x += signed * (sin(out) - sin(into));
    y += signed * (cos(into) - cos(out));
    into = out;
  }
}

function layWaist(shape: ArrayLike<number>, laid: LaidTemplate): void {
  const { pieces } = laid;
  const direction =
    (LOWER_CORNER_END.directionDeg + (shape[27] as number) * LOWER_CORNER_END.directionSpreadDeg) * DEGREE;
  const width = LOWER_CORNER_END.widthMm + (shape[28] as number) * LOWER_CORNER_END.widthSpreadMm;
  let x = pieceEndX(pieces, 4);
  let y = pieceEndY(pieces, 4);
  put(pieces, 13, x, y, 0, direction, width);
  x += width * cos(direction);
  y += width * sin(direction);
  let into = Math.PI + heading(shape, 18);
  for (let step = 0; step < 3; step++) {
    const out = step === 2 ? -heading(shape, 21) : heading(shape, 19 + step);
    const signed = -radius(shape, 5 + step);
    put(pieces, 5 + step, x, y, signed, into, out);
    x += signed * (sin(out) - sin(into));
    y += signed * (cos(into) - cos(out));
    into = out;
  }
  const endX = pieceEndX(pieces, 12);
  const endY = TEMPLATE_LENGTH_MM - pieceEndY(pieces, 12);
  put(pieces, 14, x, y, 0, atan2(endY - y, endX - x), hypot(endX - x, endY - y));
}

function put(
  pieces: Float64Array,
  piece: number,
  x: number,
  y: number,
  signedRadius: number,
  into: number,
  out: number,
): void {
  const at = piece * 5;
  pieces[at] = x;
  pieces[at + 1] = y;
  pieces[at + 2] = signedRadius;
  pieces[at + 3] = into;
  pieces[at + 4] = out;
}

function pieceEndX(pieces: Float64Array, arc: number): number {
  const at = arc * 5;
  const into = pieces[at + 3] as number;
  const out = pieces[at + 4] as number;
  return (pieces[at] as number) + (pieces[at + 2] as number) * (sin(out) - sin(into));
}

function pieceEndY(pieces: Float64Array, arc: number): number {
  const at = arc * 5;
  const into = pieces[at + 3] as number;
  const out = pieces[at + 4] as number;
  return (pieces[at + 1] as number) + (pieces[at + 2] as number) * (cos(into) - cos(out));
}

/** Widths stand where the heading is square to the centre line, so they are read off the flank and middle arcs. */
function measureOutcomes(laid: LaidTemplate): void {
  const { pieces, outcomes } = laid;
  const quarter = Math.PI / 2;
  const lower = 2 * 5;
  const upper = 10 * 5;
  const waist = 6 * 5;
  outcomes[0] = 2 * xAt(pieces, lower, quarter);
  outcomes[1] = 2 * xAt(pieces, upper, quarter);
  outcomes[2] = 2 * xAt(pieces, waist, quarter);
  outcomes[3] = yAt(pieces, lower, quarter);
  outcomes[4] = TEMPLATE_LENGTH_MM - yAt(pieces, upper, quarter);
  outcomes[5] = yAt(pieces, waist, quarter);
  outcomes[6] = pieceEndY(pieces, 4);
  outcomes[7] = TEMPLATE_LENGTH_MM - pieceEndY(pieces, 12);
  outcomes[8] = pieceEndX(pieces, 4);
  outcomes[9] = pieceEndX(pieces, 12);
  outcomes[10] = pieceEndX(pieces, 12) - (pieces[14 * 5] as number);
  outcomes[11] = TEMPLATE_LENGTH_MM - pieceEndY(pieces, 12) - (pieces[14 * 5 + 1] as number);
}

/** x where the arc that starts at `at` has the heading `turn`. */
export function xAt(pieces: Float64Array, at: number, turn: number): number {
  const into = pieces[at + 3] as number;
  return (pieces[at] as number) + (pieces[at + 2] as number) * (sin(turn) - sin(into));
}

/** y where the arc that starts at `at` has the heading `turn`. */
export function yAt(pieces: Float64Array, at: number, turn: number): number {
  const into = pieces[at + 3] as number;
  return (pieces[at + 1] as number) + (pieces[at + 2] as number) * (cos(into) - cos(turn));
}
