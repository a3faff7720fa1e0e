import type { Box, Point } from '../../base/index.ts';

/** A square code in a white square; corners clockwise from the upper left, as it stands on the sheet. */
export interface SheetMarker {
  readonly id: number;
  readonly corners: readonly [Point<'sheet'>, Point<'sheet'>, Point<'sheet'>, Point<'sheet'>];
}

/** Black and white squares with codes, printed on one flat piece of paper: what a sheet and a height card have in common. */
export interface MarkedPattern {
  readonly squareMm: number;
  readonly markerMm: number;
  /** Outer bounds of the squares. */
  readonly band: Box<'sheet'>;
  readonly blackSquares: readonly Box<'sheet'>[];
  readonly markers: readonly SheetMarker[];
  /** Where four squares meet, black across black: the points that are measured in the photograph. */
  readonly saddles: readonly Point<'sheet'>[];
}

/** A square of a grid of squares, counted from the lower left. */
export interface GridSquare {
  readonly column: number;
  readonly row: number;
}

/** Codes take 0.7 of a square: a cell is a tenth of the square, and the white round it a cell and a half. */
export const MARKER_SHARE = 0.7;

/** The code `id` in the middle of the white square whose lower left corner is `corner`. */
export function markerInSquare(corner: Point<'sheet'>, squareMm: number, id: number): SheetMarker {
  const inset = (squareMm * (1 - MARKER_SHARE)) / 2;
  const [x0, y0] = [corner.x + inset, corner.y + inset];
  const [x1, y1] = [corner.x + squareMm - inset, corner.y + squareMm - inset];
  return {
    id,
    corners: [
      { x: x0, y: y1 },
      { x: x1, y: y1 },
      { x: x1, y: y0 },
      { x: x0, y: y0 },
    ],
  };
}

/** Corners of the grid with a square of the pattern on all four sides. */
export function squareMeetings(squares: readonly GridSquare[]): readonly GridSquare[] {
  const key = (column: number, row: number) => `${column},${row}`;
  const present = new Set(squares.map(({ column, row }) => key(column, row)));
  return squares.filter(({ column, row }) =>
    [key(column - 1, row), key(column, row - 1), key(column - 1, row - 1)].every((one) => present.has(one)),
  );
}
