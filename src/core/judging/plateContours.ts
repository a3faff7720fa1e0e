import { type Point, point } from '../base/index.ts';
import { type Chain, containsPoint, nearestOn } from '../curve/index.ts';
import { type EdgeState, type PlateArch, plateField, plateHeight } from '../instrument/index.ts';
import {
  type ContourLine,
  contourLevels,
  contourLines,
  contourOnSurface,
  type HeightField,
  trimContour,
} from '../surface/index.ts';

/** The contours of a plate inside its outline, lowest first, and the field that they were found on. */
export interface PlateContours {
  readonly lines: readonly ContourLine[];
  readonly field: HeightField;
  /** Places that stand where the grid had them, because the surface has no such height near: none on a sound plate. */
  readonly unsettled: number;
}

/** mm that a contour may leave the surface's own line between two of its places. */
const CHORD_ERROR_MM = 0.003;

/**
 * Contours of a plate's outside at whole multiples of an interval above the gluing face, on the surface itself and cut
 * at the outline. Outside the outline the surface is thought to fall on, so that lines close to the edge are whole.
 */
export function plateContours(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  intervalMm: number,
  stepMm: number,
): PlateContours {
  const field = plateField(arch, state, stepMm);
  const heightAt = (x: number, y: number): number => heightWithBeyond(arch, outline, state, point(x, y));
  const wider = widened(field, heightAt);
  let unsettled = 0;
  const lines = contourLines(wider, contourLevels(field, intervalMm)).flatMap((line) => {
    const made = contourOnSurface(line, { heightAt, reachMm: 2 * stepMm, chordErrorMm: CHORD_ERROR_MM });
    unsettled += made.unsettled;
    return trimContour(made.line, outline);
  });
  return { lines, field, unsettled };
}

/** The height of a plate; beyond its edge the height of the nearest place on the edge, less the way there. */
function heightWithBeyond(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  at: Point<'body'>,
): number {
  if (containsPoint(outline, at)) return plateHeight(arch, at.x, at.y, state);
  const nearest = nearestOn(outline, at);
  return plateHeight(arch, nearest.point.x, nearest.point.y, state) - nearest.distanceMm;
}

/** Places by which a field is widened: lines beside the edge need one, their neighbours another. */
const WIDER = 2;

/** The field with the places beside the outline filled, on a grid that holds them all. */
function widened(field: HeightField, heightAt: (xMm: number, yMm: number) => number): HeightField {
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
        ? heightAt(grid.fromXMm + column * stepMm, grid.fromYMm + row * stepMm)
        : z;
    }
  return { ...grid, zMm: wide };
}
