/** Values at the corners of square cells, row by row from the lower left. */
export interface PlaneGrid {
  readonly values: Float32Array | Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly x0: number;
  readonly y0: number;
  readonly cellMm: number;
}

/** Between four corners in straight lines; `outside` beyond the grid. */
export function readGrid(grid: PlaneGrid, outside: number): (x: number, y: number) => number {
  const { values, columns, rows, x0, y0, cellMm } = grid;
  return (x, y) => {
    const u = (x - x0) / cellMm;
    const v = (y - y0) / cellMm;
    if (u < 0 || v < 0 || u >= columns - 1 || v >= rows - 1) return outside;
    const i = u | 0;
    const j = v | 0;
    const k = j * columns + i;
    const low = (values[k] as number) * (1 - u + i) + (values[k + 1] as number) * (u - i);
    const high =
      (values[k + columns] as number) * (1 - u + i) + (values[k + columns + 1] as number) * (u - i);
    return low * (1 - v + j) + high * (v - j);
  };
}
