import type { Point } from '../../base/index.ts';

/** Which of many points may be nearest, by the cell of a grid that a place lies in. */
export interface PointGrid {
  readonly fromX: number;
  readonly fromY: number;
  readonly columns: number;
  readonly rows: number;
  /** For each cell the points, in their order, that are nearest to some place in it. */
  readonly cells: readonly Uint16Array[];
}

/** mm across a cell, and beyond the points that the grid reaches out on every side. */
const CELL_MM = 8;

/** A grid over the points and a cell's width round them. */
export function pointGrid(points: readonly Point<'body'>[]): PointGrid {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [fromX, fromY] = [Math.min(...xs) - CELL_MM, Math.min(...ys) - CELL_MM];
  const columns = Math.max(1, Math.ceil((Math.max(...xs) + CELL_MM - fromX) / CELL_MM));
  const rows = Math.max(1, Math.ceil((Math.max(...ys) + CELL_MM - fromY) / CELL_MM));
  const cells = Array.from({ length: columns * rows }, (_, cell) => {
    const x = fromX + ((cell % columns) + 0.5) * CELL_MM;
    const y = fromY + (Math.floor(cell / columns) + 0.5) * CELL_MM;
    const away = points.map((point) => Math.hypot(point.x - x, point.y - y));
    // From anywhere in the cell a point seems at most half a diagonal nearer or farther than from its middle.
    const most = Math.min(...away) + CELL_MM * Math.SQRT2;
    return Uint16Array.from(away.flatMap((distance, index) => (distance <= most ? [index] : [])));
  });
  return { fromX, fromY, columns, rows, cells };
}

/** The first of the nearest points; null for a place off the grid. */
export function nearestInGrid(
  grid: PointGrid,
  points: readonly Point<'body'>[],
  x: number,
  y: number,
): number | null {
  const column = Math.floor((x - grid.fromX) / CELL_MM);
  const row = Math.floor((y - grid.fromY) / CELL_MM);
  if (!(column >= 0 && column < grid.columns && row >= 0 && row < grid.rows)) return null;
  const candidates = grid.cells[row * grid.columns + column] as Uint16Array;
  let best = candidates[0] as number;
  let least = Number.POSITIVE_INFINITY;
  for (const index of candidates) {
    const { x: pointX, y: pointY } = points[index] as Point<'body'>;
    const square = (pointX - x) ** 2 + (pointY - y) ** 2;
    if (square < least) [least, best] = [square, index];
  }
  return best;
}
