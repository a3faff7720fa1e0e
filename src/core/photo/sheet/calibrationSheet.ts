import { type Box, type Point, point } from '../../base/index.ts';
import { MARKER_CELLS, markerCellIsWhite } from '../../knowledge/index.ts';

export type SheetPaper = 'A4' | 'Letter' | 'A3' | 'Tabloid' | 'A2';

/** A square code in a white square; corners clockwise from the upper left, as it stands on the sheet. */
export interface SheetMarker {
  readonly id: number;
  readonly corners: readonly [Point<'sheet'>, Point<'sheet'>, Point<'sheet'>, Point<'sheet'>];
}

/** A straight stretch that the maker measures on the print to learn the printer's own error. */
export interface SheetBar {
  readonly from: Point<'sheet'>;
  readonly to: Point<'sheet'>;
}

/**
 * The sheet that lies under or round the instrument when it is photographed: a band of black and white squares, two
 * deep, along all four sides, with a square code in every white one, and a calm white middle. Frame `sheet`, mm.
 */
export interface CalibrationSheet {
  readonly paper: SheetPaper;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly squareMm: number;
  readonly markerMm: number;
  /** Outer bounds of the band. */
  readonly band: Box<'sheet'>;
  /** Inner bounds of the band: the white middle without the notches. */
  readonly middle: Box<'sheet'>;
  /**
   * The white that the body may lie on: the middle and, at both short sides, a notch where the band is one square
   * deep, so that the ends of a body do not lie over squares. Anticlockwise.
   */
  readonly calm: readonly Point<'sheet'>[];
  readonly blackSquares: readonly Box<'sheet'>[];
  readonly markers: readonly SheetMarker[];
  /** Where four squares of the band meet, black across black: the points that are measured in the photograph. */
  readonly saddles: readonly Point<'sheet'>[];
  /** Nominal length of both bars. */
  readonly barMm: number;
  readonly bars: { readonly x: SheetBar; readonly y: SheetBar };
}

interface Plan {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly squareMm: number;
  readonly columns: number;
  readonly rows: number;
  /** Squares of the inner row left out in the middle of each short side. */
  readonly notch: number;
  readonly firstId: number;
}

const DEPTH = 2;
export const SHEET_BAR_MM = 150;

/** Codes take 0.7 of a square: a cell is a tenth of the square, and the white round it a cell and a half. */
const MARKER_SHARE = 0.7;

/**
 * The long side lies along x. Margins are 7.5 mm or more, squares divide 150 mm, and no two papers share a code, so
 * that a photograph tells which sheet it shows.
 */
const PLANS: Readonly<Record<SheetPaper, Plan>> = {
  A4: { widthMm: 297, heightMm: 210, squareMm: 10, columns: 28, rows: 19, notch: 0, firstId: 0 },
  Letter: { widthMm: 279.4, heightMm: 215.9, squareMm: 10, columns: 26, rows: 20, notch: 0, firstId: 90 },
  A3: { widthMm: 420, heightMm: 297, squareMm: 10, columns: 40, rows: 28, notch: 12, firstId: 180 },
  Tabloid: { widthMm: 431.8, heightMm: 279.4, squareMm: 10, columns: 41, rows: 26, notch: 12, firstId: 310 },
  A2: { widthMm: 594, heightMm: 420, squareMm: 15, columns: 38, rows: 27, notch: 9, firstId: 440 },
};

export const SHEET_PAPERS = Object.keys(PLANS) as readonly SheetPaper[];

/** The calibration sheet for a paper, with every place on it in millimetres. */
export function calibrationSheet(paper: SheetPaper): CalibrationSheet {
  const plan = PLANS[paper];
  const { squareMm, columns, rows } = plan;
  const left = (plan.widthMm - columns * squareMm) / 2;
  const lower = (plan.heightMm - rows * squareMm) / 2;
  const at = (column: number, row: number) =>
    point<'sheet'>(left + column * squareMm, lower + row * squareMm);
  const squares = bandSquares(plan);
  const isBlack = (square: Square) => (square.column + square.row) % 2 === 0;
  return {
    paper,
    widthMm: plan.widthMm,
    heightMm: plan.heightMm,
    squareMm,
    markerMm: squareMm * MARKER_SHARE,
    band: { min: at(0, 0), max: at(columns, rows) },
    middle: { min: at(DEPTH, DEPTH), max: at(columns - DEPTH, rows - DEPTH) },
    calm: calmOutline(plan).map(({ column, row }) => at(column, row)),
    blackSquares: squares
      .filter(isBlack)
      .map(({ column, row }) => ({ min: at(column, row), max: at(column + 1, row + 1) })),
    markers: squares
      .filter((square) => !isBlack(square))
      .map(({ column, row }, place) => markerIn(at(column, row), squareMm, plan.firstId + place)),
    saddles: meetings(squares).map(({ column, row }) => at(column, row)),
    barMm: SHEET_BAR_MM,
    bars: barsFrom(left, lower),
  };
}

/** The sheet that a code belongs to, or null when it is on none of ours. */
export function paperOfMarker(id: number): SheetPaper | null {
  const paper = SHEET_PAPERS.find((name) => {
    const { firstId } = PLANS[name];
    return id >= firstId && id < firstId + markerCount(PLANS[name]);
  });
  return paper ?? null;
}

/** The black cells of a code as boxes in its own grid, (0, 0) lower left; they overlap so that no seam shows. */
export function blackBoxesOfMarker(
  id: number,
): readonly { column: number; row: number; columns: number; rows: number }[] {
  const side = MARKER_CELLS + 2;
  const isBlack = (column: number, row: number) =>
    column >= 0 &&
    row >= 0 &&
    column < side &&
    row < side &&
    !markerCellIsWhite(id, side - 2 - row, column - 1);
  const boxes: { column: number; row: number; columns: number; rows: number }[] = [];
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++)
      for (let columns = 1; column + columns <= side; columns++)
        for (let rows = 1; row + rows <= side; rows++)
          if (isWhole(isBlack, { column, row, columns, rows })) boxes.push({ column, row, columns, rows });
  return boxes.filter((box) => !boxes.some((other) => other !== box && holds(other, box)));
}

interface Square {
  readonly column: number;
  readonly row: number;
}

interface CellBox extends Square {
  readonly columns: number;
  readonly rows: number;
}

function isWhole(isBlack: (column: number, row: number) => boolean, box: CellBox): boolean {
  for (let row = box.row; row < box.row + box.rows; row++)
    for (let column = box.column; column < box.column + box.columns; column++)
      if (!isBlack(column, row)) return false;
  return true;
}

function holds(outer: CellBox, inner: CellBox): boolean {
  return (
    outer.column <= inner.column &&
    outer.row <= inner.row &&
    outer.column + outer.columns >= inner.column + inner.columns &&
    outer.row + outer.rows >= inner.row + inner.rows
  );
}

function bandSquares(plan: Plan): readonly Square[] {
  const squares: Square[] = [];
  for (let row = 0; row < plan.rows; row++)
    for (let column = 0; column < plan.columns; column++)
      if (isInBand(plan, column, row)) squares.push({ column, row });
  return squares;
}

function isInBand(plan: Plan, column: number, row: number): boolean {
  const fromSide = Math.min(column, plan.columns - 1 - column);
  const fromEnd = Math.min(row, plan.rows - 1 - row);
  if (fromEnd < DEPTH) return true;
  const { first, last } = notchRows(plan);
  const isNotch = row >= first && row < last;
  return fromSide < (isNotch ? DEPTH - 1 : DEPTH);
}

function notchRows(plan: Plan): { first: number; last: number } {
  const first = Math.floor((plan.rows - plan.notch) / 2);
  return { first, last: first + plan.notch };
}

/** Corners of the grid with a square of the band on all four sides. */
function meetings(squares: readonly Square[]): readonly Square[] {
  const key = (column: number, row: number) => `${column},${row}`;
  const present = new Set(squares.map(({ column, row }) => key(column, row)));
  return squares.filter(({ column, row }) =>
    [key(column - 1, row), key(column, row - 1), key(column - 1, row - 1)].every((one) => present.has(one)),
  );
}

function markerIn(corner: Point<'sheet'>, squareMm: number, id: number): SheetMarker {
  const inset = (squareMm * (1 - MARKER_SHARE)) / 2;
  const [x0, y0] = [corner.x + inset, corner.y + inset];
  const [x1, y1] = [corner.x + squareMm - inset, corner.y + squareMm - inset];
  return { id, corners: [point(x0, y1), point(x1, y1), point(x1, y0), point(x0, y0)] };
}

function markerCount(plan: Plan): number {
  return bandSquares(plan).filter(({ column, row }) => (column + row) % 2 === 1).length;
}

function calmOutline(plan: Plan): readonly Square[] {
  const [low, high] = [DEPTH, plan.rows - DEPTH];
  const [near, far] = [DEPTH, plan.columns - DEPTH];
  const right = [
    { column: far, row: low },
    { column: far, row: high },
  ];
  const leftSide = [
    { column: near, row: high },
    { column: near, row: low },
  ];
  if (plan.notch === 0) return [...right, ...leftSide];
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
