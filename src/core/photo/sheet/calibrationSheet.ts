import { type Box, Bug, type Point, point } from '../../base/index.ts';
import {
  type GridSquare,
  MARKER_SHARE,
  type MarkedPattern,
  markerInSquare,
  squareMeetings,
} from './markedPattern.ts';
import {
  BAND_DEPTH,
  bandSquares,
  codedSquares,
  notchRows,
  SHEET_PLANS,
  type SheetPaper,
  type SheetPlan,
} from './sheetPlans.ts';

/** A straight stretch that the maker measures on the print to learn the printer's own error. */
export interface SheetBar {
  readonly from: Point<'sheet'>;
  readonly to: Point<'sheet'>;
}

/**
 * The sheet that lies under or round the instrument when it is photographed: a band of black and white squares, two
 * deep, along all four sides, with square codes in the white ones, and a calm white middle. Frame `sheet`, mm.
 */
export interface CalibrationSheet extends MarkedPattern {
  readonly paper: SheetPaper;
  /** Which of the sheets on this paper: those with different numbers may lie in one photograph. */
  readonly number: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Inner bounds of the band: the white middle without the notches. */
  readonly middle: Box<'sheet'>;
  /**
   * The white that the body may lie on: the middle and, at both short sides, a notch where the band is one square
   * deep, so that the ends of a body do not lie over squares. Anticlockwise.
   */
  readonly calm: readonly Point<'sheet'>[];
  /** Nominal length of both bars. */
  readonly barMm: number;
  readonly bars: { readonly x: SheetBar; readonly y: SheetBar };
}

export const SHEET_BAR_MM = 150;

/** The calibration sheet for a paper and a number that it comes in, with every place on it in millimetres. */
export function calibrationSheet(paper: SheetPaper, number = 1): CalibrationSheet {
  const plan = SHEET_PLANS[paper];
  const firstId = plan.firstIds[number - 1];
  if (firstId === undefined) throw new Bug(`there is no ${paper} sheet number ${number}`);
  const { squareMm, columns, rows } = plan;
  const left = (plan.widthMm - columns * squareMm) / 2;
  const lower = (plan.heightMm - rows * squareMm) / 2;
  const at = (column: number, row: number) =>
    point<'sheet'>(left + column * squareMm, lower + row * squareMm);
  const squares = bandSquares(plan);
  return {
    paper,
    number,
    widthMm: plan.widthMm,
    heightMm: plan.heightMm,
    squareMm,
    markerMm: squareMm * MARKER_SHARE,
    band: { min: at(0, 0), max: at(columns, rows) },
    middle: { min: at(BAND_DEPTH, BAND_DEPTH), max: at(columns - BAND_DEPTH, rows - BAND_DEPTH) },
    calm: calmOutline(plan).map(({ column, row }) => at(column, row)),
    blackSquares: squares
      .filter(({ column, row }) => (column + row) % 2 === 0)
      .map(({ column, row }) => ({ min: at(column, row), max: at(column + 1, row + 1) })),
    markers: codedSquares(plan, number).map(({ column, row }, place) =>
      markerInSquare(at(column, row), squareMm, firstId + place),
    ),
    saddles: squareMeetings(squares).map(({ column, row }) => at(column, row)),
    barMm: SHEET_BAR_MM,
    bars: barsFrom(left, lower),
  };
}

function calmOutline(plan: SheetPlan): readonly GridSquare[] {
  const [low, high] = [BAND_DEPTH, plan.rows - BAND_DEPTH];
  const [near, far] = [BAND_DEPTH, plan.columns - BAND_DEPTH];
  if (plan.notch === 0)
    return [
      { column: far, row: low },
      { column: far, row: high },
      { column: near, row: high },
      { column: near, row: low },
    ];
  const { first, last } = notchRows(plan);
  const notch = (edge: number, step: number, rows: readonly [number, number]) => [
    { column: edge, row: rows[0] },
    { column: edge + step, row: rows[0] },
    { column: edge + step, row: rows[1] },
    { column: edge, row: rows[1] },
  ];
  return [
    { column: far, row: low },
    ...notch(far, 1, [first, last]),
    { column: far, row: high },
    { column: near, row: high },
    ...notch(near, -1, [last, first]),
    { column: near, row: low },
  ];
}

/** In the margin, halfway between the band and where home printers stop printing. */
const BAR_FROM_BAND_MM = 2;

function barsFrom(left: number, lower: number): CalibrationSheet['bars'] {
  const [x, y] = [left - BAR_FROM_BAND_MM, lower - BAR_FROM_BAND_MM];
  return {
    x: { from: point(left, y), to: point(left + SHEET_BAR_MM, y) },
    y: { from: point(x, lower), to: point(x, lower + SHEET_BAR_MM) },
  };
}
