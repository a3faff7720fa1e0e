type XY = readonly [number, number];

/**
 * The closed lines where a field on a grid is zero, in grid units, what is above zero on their left; lines that leave
 * the grid are left out. Method: marching squares, straight between nodes; a saddle is parted by its middle.
 */
export function levelLoops(field: Float32Array, columns: number, rows: number): readonly (readonly XY[])[] {
  const next = new Map<number, number>();
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) linkCell(field, columns, row, column, next);
  const loops: XY[][] = [];
  const done = new Set<number>();
  for (const start of next.keys()) {
    if (done.has(start)) continue;
    const loop: XY[] = [];
    let at: number | undefined = start;
    while (at !== undefined && !done.has(at)) {
      done.add(at);
      loop.push(crossing(field, columns, at));
      at = next.get(at);
    }
    if (at === start && loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** A grid edge by number: twice its lower left node, plus 1 where it runs upward. */
function crossing(field: Float32Array, columns: number, edge: number): XY {
  const node = edge >> 1;
  const up = (edge & 1) === 1;
  const [a, b] = [field[node], field[up ? node + columns : node + 1]];
  const share = a / (a - b);
  const [column, row] = [node % columns, Math.floor(node / columns)];
  return up ? [column, row + share] : [column + share, row];
}

function linkCell(
  field: Float32Array,
  columns: number,
  row: number,
  column: number,
  next: Map<number, number>,
): void {
  const node = row * columns + column;
  const isAbove = field[node] > 0;
  const isCrossed =
    isAbove !== field[node + 1] > 0 ||
    isAbove !== field[node + columns] > 0 ||
    isAbove !== field[node + columns + 1] > 0;
  // Nearly every cell lies wholly on one side.
  if (!isCrossed) return;
  const values = [field[node], field[node + 1], field[node + columns + 1], field[node + columns]];
  const edges = [2 * node, 2 * (node + 1) + 1, 2 * (node + columns), 2 * node + 1];
  // Anticlockwise round the cell, a line enters where the field falls below zero and leaves where it rises.
  const enters: number[] = [];
  const leaves: number[] = [];
  for (let k = 0; k < 4; k++) {
    const [here, after] = [values[k] > 0, values[(k + 1) % 4] > 0];
    if (here && !after) enters.push(k);
    if (!here && after) leaves.push(k);
  }
  if (enters.length === 1) next.set(edges[enters[0]], edges[leaves[0]]);
  if (enters.length !== 2) return;
  const joined = values[0] + values[1] + values[2] + values[3] > 0;
  for (const enter of enters) {
    const leave = (enter + (joined ? 1 : 3)) % 4;
    next.set(edges[enter], edges[leave]);
  }
}
