import { MARKER_CELLS, markerCellIsWhite } from '../../knowledge/index.ts';
import type { GridSquare } from './markedPattern.ts';

/** Cells of a code's grid from its lower left one on. */
export interface CellBox extends GridSquare {
  readonly columns: number;
  readonly rows: number;
}

/** The black cells of a code as boxes in its own grid, (0, 0) lower left; they overlap so that no seam shows. */
export function blackBoxesOfMarker(id: number): readonly CellBox[] {
  const side = MARKER_CELLS + 2;
  const isBlack = (column: number, row: number) =>
    column >= 0 &&
    row >= 0 &&
    column < side &&
    row < side &&
    !markerCellIsWhite(id, side - 2 - row, column - 1);
  const boxes: CellBox[] = [];
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++)
      for (let columns = 1; column + columns <= side; columns++)
        for (let rows = 1; row + rows <= side; rows++)
          if (isWhole(isBlack, { column, row, columns, rows })) boxes.push({ column, row, columns, rows });
  return boxes.filter((box) => !boxes.some((other) => other !== box && holds(other, box)));
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
