import { hypot, type Point, point } from '../../base/index.ts';

/** Which of many points may be nearest, by the cell of a grid that a place lies in. */
export interface PointGrid {
  /** The points themselves. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly fromX: number;
  readonly fromY: number;
  readonly columns: number;
  readonly rows: number;
  /**
   * For each cell the points, in their order, that are nearest to some place in it: those of cell k stand in `near` from
   * `starts[k]` up to `starts[k + 1]`.
   */
  readonly near: Uint16Array;
  readonly starts: Uint32Array;
  /** For each cell a distance that every place in it stands off every point at least, mm. */
  readonly clearMm: Float64Array;
}

/** mm across a cell, and beyond the points that the grid reaches out on every side. */
const CELL_MM = 8;

/** A first guess at how many points are near to a cell. */
const POINTS_IN_A_CELL = 32;

function withRoom(near: Uint16Array, length: number): Uint16Array<ArrayBuffer> {
  const more = new Uint16Array(length);
  more.set(near);
  return more;
}

/** A grid over the points and a cell's width round them. */
export function pointGrid(points: readonly Point<'body'>[]): PointGrid {
  const xs = Float64Array.from(points, ({ x }) => x);
  const ys = Float64Array.from(points, ({ y }) => y);
  const [fromX, fromY] = [Math.min(...xs) - CELL_MM, Math.min(...ys) - CELL_MM];
  const columns = Math.max(1, Math.ceil((Math.max(...xs) + CELL_MM - fromX) / CELL_MM));
  const rows = Math.max(1, Math.ceil((Math.max(...ys) + CELL_MM - fromY) / CELL_MM));
  let widestGapMm = 0;
  for (let at = 1; at < xs.length; at++)
    widestGapMm = Math.max(
      widestGapMm,
      hypot((xs[at] as number) - (xs[at - 1] as number), (ys[at] as number) - (ys[at - 1] as number)),
    );
  const clearMm = new Float64Array(columns * rows);
  const starts = new Uint32Array(columns * rows + 1);
  // Most cells have a few dozen points; room is doubled where that is not enough.
  let near = new Uint16Array(POINTS_IN_A_CELL * columns * rows + points.length);
  let count = 0;
  let nearest = 0;
  for (let cell = 0; cell < columns * rows; cell++) {
    const { x, y } = cellMiddle({ fromX, fromY, columns }, cell);
    const away = (at: number): number => {
      const alongX = (xs[at] as number) - x;
      const alongY = (ys[at] as number) - y;
      return Math.sqrt(alongX * alongX + alongY * alongY);
    };
    // No point can stand nearer within fewer steps than it takes to walk the difference.
    const stepsTo = (differenceMm: number): number => Math.max(1, Math.floor(differenceMm / widestGapMm));
    // The nearest of one cell is not far from the next.
    let leastMm = away(nearest);
    for (let at = 0; at < xs.length; ) {
      const mm = away(at);
      if (mm < leastMm) {
        leastMm = mm;
        nearest = at;
      }
      at += stepsTo(mm - leastMm);
    }
    // From anywhere in the cell a point seems at most half a diagonal nearer or farther than from its middle.
    clearMm[cell] = leastMm - CELL_MM * Math.SQRT1_2;
    const mostMm = leastMm + CELL_MM * Math.SQRT2;
    if (count + xs.length > near.length) near = withRoom(near, 2 * near.length);
    for (let at = 0; at < xs.length; ) {
      const mm = away(at);
      if (mm <= mostMm) near[count++] = at;
      at += mm <= mostMm ? 1 : stepsTo(mm - mostMm);
    }
    starts[cell + 1] = count;
  }
  return { xs, ys, fromX, fromY, columns, rows, near: near.slice(0, count), starts, clearMm };
}

/** The cell that a place lies in; −1 for a place off the grid. */
export function cellOf({ fromX, fromY, columns, rows }: PointGrid, x: number, y: number): number {
  const column = Math.floor((x - fromX) / CELL_MM);
  const row = Math.floor((y - fromY) / CELL_MM);
  return column >= 0 && column < columns && row >= 0 && row < rows ? row * columns + column : -1;
}

/** The middle of a cell. */
export function cellMiddle(
  { fromX, fromY, columns }: Pick<PointGrid, 'fromX' | 'fromY' | 'columns'>,
  cell: number,
): Point<'body'> {
  return point(
    fromX + ((cell % columns) + 0.5) * CELL_MM,
    fromY + (Math.floor(cell / columns) + 0.5) * CELL_MM,
  );
}

/** The first of the nearest points; null for a place off the grid. */
export function nearestInGrid(grid: PointGrid, x: number, y: number): number | null {
  const cell = cellOf(grid, x, y);
  if (cell < 0) return null;
  const { xs, ys, near, starts } = grid;
  const end = starts[cell + 1] as number;
  let best = near[starts[cell] as number] as number;
  let least = Number.POSITIVE_INFINITY;
  for (let at = starts[cell] as number; at < end; at++) {
    const index = near[at] as number;
    const alongX = (xs[index] as number) - x;
    const alongY = (ys[index] as number) - y;
    const square = alongX * alongX + alongY * alongY;
    if (square < least) {
      least = square;
      best = index;
    }
  }
  return best;
}
