import { type Point, point } from '../../base/index.ts';

/** mm. Holes stop at whole steps of this depth, so that one setting serves many holes. */
export const SETTING_MM = 0.5;

/** mm. Shallower holes are not worth drilling. */
export const LEAST_DEPTH_MM = 0.5;

/**
 * Where holes may stand on the treble half of a body: an even grid about the centre line and the middle of the body, row by
 * row from the lower end. Reaches beyond the body's sides.
 */
export function drillGrid(bodyLengthMm: number, pitchMm: number): readonly Point<'body'>[] {
  const rows = Math.floor(bodyLengthMm / (2 * pitchMm));
  const columns = Math.ceil(bodyLengthMm / pitchMm - 1 / 2);
  return Array.from({ length: 2 * rows + 1 }, (_, row) => bodyLengthMm / 2 + (row - rows) * pitchMm).flatMap(
    (y) => Array.from({ length: columns }, (_, column) => point<'body'>((column + 1 / 2) * pitchMm, y)),
  );
}
