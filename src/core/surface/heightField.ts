/** Heights over a grid of places, millimetres; a place without height (outside the plate) holds NaN. */
export interface HeightField {
  /** The first column's x and the first row's y. */
  readonly fromXMm: number;
  readonly fromYMm: number;
  /** Between neighbours, along both. */
  readonly stepMm: number;
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the lowest y, each from the lowest x. */
  readonly zMm: Float64Array;
}

/** A field of heights, each asked of `heightAt` (NaN where there is none). */
export function heightField(
  grid: Omit<HeightField, 'zMm'>,
  heightAt: (xMm: number, yMm: number) => number,
): HeightField {
  const zMm = new Float64Array(grid.columns * grid.rows);
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++)
      zMm[row * grid.columns + column] = heightAt(
        grid.fromXMm + column * grid.stepMm,
        grid.fromYMm + row * grid.stepMm,
      );
  return { ...grid, zMm };
}
