import { type Frame, WELD_MM } from '../base/index.ts';
import { type Segment, STRAIGHT_BULGE } from './segment.ts';

/**
 * Arcs and lines as rows of numbers in the order of travel, for loops that pass them many times. Each row
 * holds its upright box, ends, bulge, radius (0 for a line), and the unit headings that leave the start and
 * arrive at the end, in the places named below.
 */
export interface ArcTable {
  count: number;
  readonly rows: Float64Array;
}

/** Places in a box: the row of a table begins with one, and a row of blocks is nothing else. */
export const MIN_X = 0;
export const MIN_Y = 1;
export const MAX_X = 2;
export const MAX_Y = 3;
export const START_X = 4;
export const START_Y = 5;
export const END_X = 6;
export const END_Y = 7;
export const BULGE = 8;
export const RADIUS = 9;
export const LEAVE_X = 10;
export const LEAVE_Y = 11;
export const ARRIVE_X = 12;
export const ARRIVE_Y = 13;

/** Numbers in a row of a table. */
export const ROW = 14;

/** Numbers in a row of blocks. */
export const BOX = 4;

/** An empty table with room for so many arcs and lines. */
export function arcTable(room: number): ArcTable {
  return { count: 0, rows: new Float64Array(room * ROW) };
}

/** The segments as a table. */
export function tableOfSegments<F extends Frame>(segments: readonly Segment<F>[]): ArcTable {
  const table = arcTable(segments.length);
  for (const { start, end, bulge } of segments) {
    const chordX = end.x - start.x;
    const chordY = end.y - start.y;
    const chord = Math.sqrt(chordX * chordX + chordY * chordY);
    // The bulge is the tangent of a quarter sweep, so the half sweep's cosine and sine need no trigonometry.
    const cos = (1 - bulge * bulge) / (1 + bulge * bulge) / chord;
    const sin = (2 * bulge) / (1 + bulge * bulge) / chord;
    const row = addArc(table, start.x, start.y, end.x, end.y, bulge);
    const leaveX = chordX * cos + chordY * sin;
    const leaveY = chordY * cos - chordX * sin;
    setHeadings(table, row, leaveX, leaveY, chordX * cos - chordY * sin, chordY * cos + chordX * sin);
  }
  return table;
}

/** Appends an arc or line with its radius and box and returns where its row begins; {@link setHeadings} fills the rest. */
export function addArc(
  table: ArcTable,
  startX: number,
  startY: number,
  endX: number,
  endY: number,
  bulge: number,
): number {
  const { rows } = table;
  const row = table.count * ROW;
  table.count++;
  rows[row + START_X] = startX;
  rows[row + START_Y] = startY;
  rows[row + END_X] = endX;
  rows[row + END_Y] = endY;
  rows[row + BULGE] = bulge;
  rows[row + MIN_X] = startX < endX ? startX : endX;
  rows[row + MIN_Y] = startY < endY ? startY : endY;
  rows[row + MAX_X] = startX < endX ? endX : startX;
  rows[row + MAX_Y] = startY < endY ? endY : startY;
  if (bulge >= STRAIGHT_BULGE || bulge <= -STRAIGHT_BULGE) widenByBow(rows, row);
  return row;
}

/** Sets the unit headings of an arc or line where it starts and where it ends. */
export function setHeadings(
  table: ArcTable,
  row: number,
  leaveX: number,
  leaveY: number,
  arriveX: number,
  arriveY: number,
): void {
  table.rows[row + LEAVE_X] = leaveX;
  table.rows[row + LEAVE_Y] = leaveY;
  table.rows[row + ARRIVE_X] = arriveX;
  table.rows[row + ARRIVE_Y] = arriveY;
}

/** Sets the radius of an arc and widens its box by those outermost points of its circle that lie on it. */
function widenByBow(rows: Float64Array, row: number): void {
  const startX = rows[row + START_X];
  const startY = rows[row + START_Y];
  const bulge = rows[row + BULGE];
  const chordX = rows[row + END_X] - startX;
  const chordY = rows[row + END_Y] - startY;
  const square = bulge * bulge;
  const side = bulge < 0 ? -1 : 1;
  const lift = (1 - square) / (4 * bulge);
  const radius = (Math.sqrt(chordX * chordX + chordY * chordY) * (1 + square)) / (4 * side * bulge);
  const toCentreX = chordX / 2 - chordY * lift;
  const toCentreY = chordY / 2 + chordX * lift;
  rows[row + RADIUS] = radius;
  // A point of the circle lies on the arc when the chord has it on the arc's side: right of an anticlockwise one.
  const across = (chordX * toCentreY - chordY * toCentreX) * side;
  const reachX = chordX * radius * side;
  const reachY = chordY * radius * side;
  const centreX = startX + toCentreX;
  const centreY = startY + toCentreY;
  if (across < reachY && centreX + radius > rows[row + MAX_X]) rows[row + MAX_X] = centreX + radius;
  if (across < -reachY && centreX - radius < rows[row + MIN_X]) rows[row + MIN_X] = centreX - radius;
  if (across < -reachX && centreY + radius > rows[row + MAX_Y]) rows[row + MAX_Y] = centreY + radius;
  if (across < reachX && centreY - radius < rows[row + MIN_Y]) rows[row + MIN_Y] = centreY - radius;
}

/** An arc or line of a table as a segment. */
export function segmentOf<F extends Frame>({ rows }: ArcTable, index: number): Segment<F> {
  const row = index * ROW;
  return {
    start: { x: rows[row + START_X], y: rows[row + START_Y] },
    end: { x: rows[row + END_X], y: rows[row + END_Y] },
    bulge: rows[row + BULGE],
  };
}

/** Arcs that follow each other lie together: so many of them share one box of a coarser row. */
export const BLOCK = 8;

/** The box of each {@link BLOCK} arcs in order, {@link BOX} numbers to each. */
export function blockBoxes({ rows, count }: ArcTable): Float64Array {
  const blocks = new Float64Array(Math.ceil(count / BLOCK) * BOX);
  for (let first = 0, at = 0; first < count; first += BLOCK, at += BOX) {
    const end = Math.min(count, first + BLOCK) * ROW;
    let row = first * ROW;
    let minX = rows[row + MIN_X];
    let minY = rows[row + MIN_Y];
    let maxX = rows[row + MAX_X];
    let maxY = rows[row + MAX_Y];
    for (row += ROW; row < end; row += ROW) {
      if (rows[row + MIN_X] < minX) minX = rows[row + MIN_X];
      if (rows[row + MIN_Y] < minY) minY = rows[row + MIN_Y];
      if (rows[row + MAX_X] > maxX) maxX = rows[row + MAX_X];
      if (rows[row + MAX_Y] > maxY) maxY = rows[row + MAX_Y];
    }
    blocks[at + MIN_X] = minX;
    blocks[at + MIN_Y] = minY;
    blocks[at + MAX_X] = maxX;
    blocks[at + MAX_Y] = maxY;
  }
  return blocks;
}

/** Whether two boxes of one set of rows, by where they begin, lie more than WELD_MM apart. */
export function areApart(rows: Float64Array, first: number, second: number): boolean {
  return (
    rows[first + MIN_X] > rows[second + MAX_X] + WELD_MM ||
    rows[second + MIN_X] > rows[first + MAX_X] + WELD_MM ||
    rows[first + MIN_Y] > rows[second + MAX_Y] + WELD_MM ||
    rows[second + MIN_Y] > rows[first + MAX_Y] + WELD_MM
  );
}
