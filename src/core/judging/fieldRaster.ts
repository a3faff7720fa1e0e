import { type Box, point } from '../base/index.ts';
import type { HeightField } from '../surface/index.ts';
import type { Colour, Raster } from './pictureSheet.ts';

/** The layout of a field without its heights. */
export type FieldGrid = Omit<HeightField, 'zMm'>;

/**
 * A field of values as a raster, one pixel a place, the highest y on top. Places without a value take the colour of a
 * neighbour, so that an outline cut into the raster has colour up to its edge; those farther off that of the ground.
 */
export function fieldRaster(
  grid: FieldGrid,
  values: ArrayLike<number>,
  colourOf: (value: number) => Colour,
  ground: Colour,
): Raster {
  const { columns, rows } = grid;
  const rgb = new Uint8Array(3 * columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const value = nearestValue(values, grid, column, row);
      rgb.set(Number.isNaN(value) ? ground : colourOf(value), 3 * ((rows - 1 - row) * columns + column));
    }
  return { widthPx: columns, heightPx: rows, rgb };
}

/** The box that the pixels of a field fill: half a step more than its places on every side. */
export function fieldBox({ fromXMm, fromYMm, stepMm, columns, rows }: FieldGrid): Box<'drawing'> {
  return {
    min: point(fromXMm - stepMm / 2, fromYMm - stepMm / 2),
    max: point(fromXMm + (columns - 0.5) * stepMm, fromYMm + (rows - 0.5) * stepMm),
  };
}

/** Places that a value reaches out to where there is none. */
const NEAR = 2;

/** The value at a place of a field, or the nearest within two places of it; NaN where there is none. */
export function nearestValue(
  values: ArrayLike<number>,
  { columns, rows }: FieldGrid,
  column: number,
  row: number,
): number {
  let found = Number.NaN;
  let nearest = Number.POSITIVE_INFINITY;
  const onField = column >= 0 && row >= 0 && column < columns && row < rows;
  const own = onField ? (values[row * columns + column] as number) : Number.NaN;
  if (!Number.isNaN(own)) return own;
  for (let down = -NEAR; down <= NEAR; down++)
    for (let across = -NEAR; across <= NEAR; across++) {
      const [c, r] = [column + across, row + down];
      if (c < 0 || r < 0 || c >= columns || r >= rows) continue;
      const value = values[r * columns + c] as number;
      const far = across * across + down * down;
      if (Number.isNaN(value) || far >= nearest) continue;
      [found, nearest] = [value, far];
    }
  return found;
}
