import { Bug, type Point, point } from '../../base/index.ts';
import {
  type GridSquare,
  MARKER_SHARE,
  type MarkedPattern,
  markerInSquare,
  squareMeetings,
} from './markedPattern.ts';

/**
 * A small card that stands on a block, level with the edge of the plate, so that the photograph itself tells how high
 * that edge is. Frame `sheet`, mm; origin the lower left corner of the cut card.
 */
export interface HeightCard extends MarkedPattern {
  /** Which card: no two cards in a photograph may have the same. */
  readonly number: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Cards on one printed page, and pages of cards that differ. */
export const CARDS_ON_A_PAGE = 4;
const PAGES_OF_CARDS = 2;

const WIDTH_MM = 66;
const HEIGHT_MM = 44;
const SQUARE_MM = 10;
const COLUMNS = 5;
const ROWS = 3;
const FIRST_ID = 958;

/** The corners, so that every saddle lies between codes, and one more that tells up from down at a glance. */
const CODED: readonly GridSquare[] = [
  { column: 0, row: 0 },
  { column: 4, row: 0 },
  { column: 0, row: 2 },
  { column: 2, row: 2 },
  { column: 4, row: 2 },
];

/** The numbers of all cards, from 1. */
export const CARD_NUMBERS: readonly number[] = Array.from(
  { length: CARDS_ON_A_PAGE * PAGES_OF_CARDS },
  (_, place) => place + 1,
);

/** The height card of a number, with every place on it in millimetres: three rows of five squares, white in the corners. */
export function heightCard(number: number): HeightCard {
  if (!CARD_NUMBERS.includes(number)) throw new Bug(`there is no height card number ${number}`);
  const left = (WIDTH_MM - COLUMNS * SQUARE_MM) / 2;
  const lower = (HEIGHT_MM - ROWS * SQUARE_MM) / 2;
  const at = ({ column, row }: GridSquare): Point<'sheet'> =>
    point(left + column * SQUARE_MM, lower + row * SQUARE_MM);
  const squares = Array.from({ length: COLUMNS * ROWS }, (_, place) => ({
    column: place % COLUMNS,
    row: Math.floor(place / COLUMNS),
  }));
  return {
    number,
    widthMm: WIDTH_MM,
    heightMm: HEIGHT_MM,
    squareMm: SQUARE_MM,
    markerMm: SQUARE_MM * MARKER_SHARE,
    band: { min: at({ column: 0, row: 0 }), max: at({ column: COLUMNS, row: ROWS }) },
    blackSquares: squares
      .filter(({ column, row }) => (column + row) % 2 === 1)
      .map((square) => ({ min: at(square), max: at({ column: square.column + 1, row: square.row + 1 }) })),
    markers: CODED.map((square, place) =>
      markerInSquare(at(square), SQUARE_MM, FIRST_ID + (number - 1) * CODED.length + place),
    ),
    saddles: squareMeetings(squares).map(at),
  };
}
