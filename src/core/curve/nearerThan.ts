import {
  ARRIVE_X,
  ARRIVE_Y,
  type ArcTable,
  BLOCK,
  BOX,
  BULGE,
  END_X,
  END_Y,
  LEAVE_X,
  LEAVE_Y,
  MAX_X,
  MAX_Y,
  MIN_X,
  MIN_Y,
  RADIUS,
  ROW,
  START_X,
  START_Y,
} from './arcTable.ts';

/**
 * Whether any arc or line of a closed table lies nearer to a point than a distance. Stops at the first that
 * does; `blocks` are the table's own.
 */
export function nearerThan(
  { rows, count }: ArcTable,
  blocks: Float64Array,
  x: number,
  y: number,
  distanceMm: number,
): boolean {
  for (let block = 0, first = 0; first < count; block += BOX, first += BLOCK) {
    if (isBeyond(blocks, block, x, y, distanceMm)) continue;
    const end = Math.min(count, first + BLOCK) * ROW;
    for (let row = first * ROW; row < end; row += ROW) {
      if (!isBeyond(rows, row, x, y, distanceMm) && isNearer(rows, row, x, y, distanceMm)) return true;
    }
  }
  return false;
}

function isBeyond(rows: Float64Array, at: number, x: number, y: number, distanceMm: number): boolean {
  return (
    x <= rows[at + MIN_X] - distanceMm ||
    x >= rows[at + MAX_X] + distanceMm ||
    y <= rows[at + MIN_Y] - distanceMm ||
    y >= rows[at + MAX_Y] + distanceMm
  );
}

/** One arc or line, its end left to the next one's start. */
function isNearer(rows: Float64Array, row: number, x: number, y: number, distanceMm: number): boolean {
  const startX = rows[row + START_X] - x;
  const startY = rows[row + START_Y] - y;
  if (startX * startX + startY * startY < distanceMm * distanceMm) return true;
  const endX = rows[row + END_X] - x;
  const endY = rows[row + END_Y] - y;
  const pastStart = startX * rows[row + LEAVE_X] + startY * rows[row + LEAVE_Y] <= 0;
  const beforeEnd = endX * rows[row + ARRIVE_X] + endY * rows[row + ARRIVE_Y] >= 0;
  const bulge = rows[row + BULGE];
  // Of more than half a turn either suffices: the sector is then the two half planes together.
  const isBeside = bulge > 1 || bulge < -1 ? pastStart || beforeEnd : pastStart && beforeEnd;
  if (!isBeside) return false;
  const radius = rows[row + RADIUS];
  const cross = startX * endY - startY * endX;
  if (radius === 0) {
    // Measured from the chord: a hair of bulge tilts the headings of what counts as a line.
    const chordX = endX - startX;
    const chordY = endY - startY;
    const offMm = cross / Math.sqrt(chordX * chordX + chordY * chordY);
    return offMm < distanceMm && offMm > -distanceMm;
  }
  // From the point's power instead of its distance to the centre, so that flat arcs stay exact.
  const power = startX * endX + startY * endY - (cross * (1 - bulge * bulge)) / (2 * bulge);
  const offMm = power / (radius + Math.sqrt(Math.max(0, radius * radius + power)));
  return offMm < distanceMm && offMm > -distanceMm;
}
