import type { HeightField } from '../surface/index.ts';

/** Places by which a field is widened: lines beside the edge need one, their neighbours another. */
const WIDER = 2;

/** The field with the places beside those that hold a value filled, on a grid that holds them all: lines up to an edge come out whole. */
export function widenedField(field: HeightField, valueAt: (xMm: number, yMm: number) => number): HeightField {
  const { columns, rows, stepMm, zMm } = field;
  const grid = {
    fromXMm: field.fromXMm - WIDER * stepMm,
    fromYMm: field.fromYMm - WIDER * stepMm,
    stepMm,
    columns: columns + 2 * WIDER,
    rows: rows + 2 * WIDER,
  };
  const own = (column: number, row: number): number =>
    column < 0 || row < 0 || column >= columns || row >= rows
      ? Number.NaN
      : (zMm[row * columns + column] as number);
  const isNear = (column: number, row: number): boolean => {
    for (let down = -WIDER; down <= WIDER; down++)
      for (let across = -WIDER; across <= WIDER; across++)
        if (!Number.isNaN(own(column + across, row + down))) return true;
    return false;
  };
  const wide = new Float64Array(grid.columns * grid.rows);
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++) {
      const z = own(column - WIDER, row - WIDER);
      const near = Number.isNaN(z) && isNear(column - WIDER, row - WIDER);
      wide[row * grid.columns + column] = near
        ? valueAt(grid.fromXMm + column * stepMm, grid.fromYMm + row * stepMm)
        : z;
    }
  return { ...grid, zMm: wide };
}
