import type { GridSquare } from './markedPattern.ts';

export type SheetPaper = 'A4' | 'Letter' | 'A3' | 'Tabloid' | 'A2';

/** How the band of squares lies on a paper. The paper's long side lies along x. */
export interface SheetPlan {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly squareMm: number;
  readonly columns: number;
  readonly rows: number;
  /** Squares of the inner row left out in the middle of each short side. */
  readonly notch: number;
  /** The first code of each of the sheets on this paper that may lie side by side in one photograph. */
  readonly firstIds: readonly number[];
}

/** Squares from the outside of the band to its inside. */
export const BAND_DEPTH = 2;

/**
 * Margins are 7.5 mm or more, squares divide 150 mm, and no two sheets share a code, so that a photograph tells which
 * sheets it shows. The papers of a home printer come in four numbers, to be laid round a body larger than one of them.
 */
export const SHEET_PLANS: Readonly<Record<SheetPaper, SheetPlan>> = {
  A4: {
    widthMm: 297,
    heightMm: 210,
    squareMm: 10,
    columns: 28,
    rows: 19,
    notch: 0,
    firstIds: [0, 560, 605, 650],
  },
  Letter: {
    widthMm: 279.4,
    heightMm: 215.9,
    squareMm: 10,
    columns: 26,
    rows: 20,
    notch: 0,
    firstIds: [90, 695, 739, 783],
  },
  A3: { widthMm: 420, heightMm: 297, squareMm: 10, columns: 40, rows: 28, notch: 12, firstIds: [180, 827] },
  Tabloid: {
    widthMm: 431.8,
    heightMm: 279.4,
    squareMm: 10,
    columns: 41,
    rows: 26,
    notch: 12,
    firstIds: [310, 893],
  },
  A2: { widthMm: 594, heightMm: 420, squareMm: 15, columns: 38, rows: 27, notch: 9, firstIds: [440] },
};

export const SHEET_PAPERS = Object.keys(SHEET_PLANS) as readonly SheetPaper[];

/** The numbers of the sheets that a paper comes in, from 1. */
export function sheetNumbers(paper: SheetPaper): readonly number[] {
  return SHEET_PLANS[paper].firstIds.map((_, place) => place + 1);
}

/** All squares of the band, row by row from the lower left. */
export function bandSquares(plan: SheetPlan): readonly GridSquare[] {
  const squares: GridSquare[] = [];
  for (let row = 0; row < plan.rows; row++)
    for (let column = 0; column < plan.columns; column++)
      if (isInBand(plan, column, row)) squares.push({ column, row });
  return squares;
}

/**
 * The white squares that bear a code. On the first sheet of a paper all do; on the others those of the outer row, which
 * is one beside every meeting of squares, because a thousand codes do not go round otherwise.
 */
export function codedSquares(plan: SheetPlan, number: number): readonly GridSquare[] {
  const whites = bandSquares(plan).filter(({ column, row }) => (column + row) % 2 === 1);
  if (number === 1) return whites;
  return whites.filter(({ column, row }) => depthOf(plan, column, row) === 0);
}

/** Rows of the notch in the short sides: from `first` up to, not including, `last`. */
export function notchRows(plan: SheetPlan): { first: number; last: number } {
  const first = Math.floor((plan.rows - plan.notch) / 2);
  return { first, last: first + plan.notch };
}

function depthOf(plan: SheetPlan, column: number, row: number): number {
  return Math.min(column, plan.columns - 1 - column, row, plan.rows - 1 - row);
}

function isInBand(plan: SheetPlan, column: number, row: number): boolean {
  const fromSide = Math.min(column, plan.columns - 1 - column);
  const fromEnd = Math.min(row, plan.rows - 1 - row);
  if (fromEnd < BAND_DEPTH) return true;
  const { first, last } = notchRows(plan);
  const isNotch = row >= first && row < last;
  return fromSide < (isNotch ? BAND_DEPTH - 1 : BAND_DEPTH);
}
