import { crossCells } from './contourCells.ts';
import type { ContourLine } from './contourLine.ts';
import { stitchLines } from './contourStitch.ts';
import type { HeightField } from './heightField.ts';

/**
 * The contour lines of a field at rising levels, the lowest level first; straight between neighbours of the grid.
 *
 * A height that equals a level counts as above it, so that every line is whole and no two lines of a level meet. Where
 * four heights leave two ways open (a saddle), the bilinear surface through them decides.
 * Method: one pass over the cells for all levels at once; crossings are numbered as they are met and each points to the
 * next, so that lines are read off without a search.
 */
export function contourLines(field: HeightField, levelsMm: readonly number[]): readonly ContourLine[] {
  return stitchLines(crossCells(field, levelsMm), levelsMm);
}

/** Whole multiples of an interval within reach of a field, lowest first, free of the last bits of a product. */
export function contourLevels(field: HeightField, intervalMm: number): readonly number[] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const z of field.zMm) {
    if (z < low) low = z;
    if (z > high) high = z;
  }
  const first = Math.ceil(low / intervalMm);
  const count = Math.floor(high / intervalMm) - first + 1;
  if (!(count > 0)) return [];
  return Array.from({ length: count }, (_, index) => rounded((first + index) * intervalMm));
}

/** Millionths of a millimetre tell no two levels apart. */
const MILLIONTHS = 1_000_000;

function rounded(value: number): number {
  return Math.round(value * MILLIONTHS) / MILLIONTHS;
}
