import { type Frame, hypot, WELD_MM } from '../base/index.ts';
import {
  ARRIVE_X,
  ARRIVE_Y,
  type ArcTable,
  addArc,
  arcTable,
  BULGE,
  END_X,
  END_Y,
  LEAVE_X,
  LEAVE_Y,
  RADIUS,
  ROW,
  START_X,
  START_Y,
  setHeadings,
} from './arcTable.ts';
import type { Segment } from './segment.ts';

/** The corners of a mitred corner's kite: the source's corner, the end of one side, the mitre, the start of the next. */
export type Kite<F extends Frame> = readonly Segment<F>[];

/** The arcs and lines that an offset may be made of, untrimmed, and the kites that mitres add to the corners. */
export interface RawOffset<F extends Frame> {
  readonly pieces: ArcTable;
  readonly mitres: readonly Kite<F>[];
}

/**
 * Every segment moved to the right of its travel by the distance, and a join at every corner that opens.
 * An arc whose radius the distance uses up is left out: all that it would give lies too near to the source.
 */
export function rawOffset<F extends Frame>(
  source: ArcTable,
  distanceMm: number,
  mitre: boolean,
  mitreLimit: number,
): RawOffset<F> {
  const pieces = arcTable(source.count * (mitre ? 3 : 2));
  const { rows } = source;
  const mitres: Kite<F>[] = [];
  for (let index = 0; index < source.count; index++) {
    const row = index * ROW;
    const next = index + 1 === source.count ? 0 : row + ROW;
    const before = index === 0 ? (source.count - 1) * ROW : row - ROW;
    addMoved(pieces, rows, row, distanceMm, {
      startMm: tailMm(rows, before, row, distanceMm),
      endMm: tailMm(rows, row, next, distanceMm),
    });
    const arriveX = rows[row + ARRIVE_X];
    const arriveY = rows[row + ARRIVE_Y];
    const leaveX = rows[next + LEAVE_X];
    const leaveY = rows[next + LEAVE_Y];
    const bulge = openingBulge(arriveX, arriveY, leaveX, leaveY, distanceMm);
    if (bulge === 0) continue;
    const startX = rows[row + END_X] + distanceMm * arriveY;
    const startY = rows[row + END_Y] - distanceMm * arriveX;
    const endX = rows[next + START_X] + distanceMm * leaveY;
    const endY = rows[next + START_Y] - distanceMm * leaveX;
    const gapX = endX - startX;
    const gapY = endY - startY;
    if (gapX * gapX + gapY * gapY <= WELD_MM * WELD_MM) continue;
    const slope = Math.abs((2 * bulge) / (1 - bulge * bulge));
    if (mitre && Math.sqrt(1 + slope * slope) <= mitreLimit) {
      const alongMm = Math.abs(distanceMm) * slope;
      const tipX = startX + arriveX * alongMm;
      const tipY = startY + arriveY * alongMm;
      const side = addArc(pieces, startX, startY, tipX, tipY, 0);
      setHeadings(pieces, side, arriveX, arriveY, arriveX, arriveY);
      const other = addArc(pieces, tipX, tipY, endX, endY, 0);
      setHeadings(pieces, other, leaveX, leaveY, leaveX, leaveY);
      mitres.push(edges([rows[row + END_X], rows[row + END_Y], startX, startY, tipX, tipY, endX, endY]));
    } else {
      setHeadings(
        pieces,
        addArc(pieces, startX, startY, endX, endY, bulge),
        arriveX,
        arriveY,
        leaveX,
        leaveY,
      );
    }
  }
  return { pieces, mitres };
}

/** rad. Lines that turn by less are trimmed where they meet at once: their tails would lie too near to each other to be told apart. */
const SLIGHT_TURN = 0.01;
/** No unit. Of either line no more than this share is trimmed. */
const TAIL_SHARE = 0.25;

/** What two lines that close on each other at a slight turn run beyond the place where they meet once moved; 0 for all others. */
function tailMm(rows: Float64Array, row: number, next: number, distanceMm: number): number {
  if (rows[row + BULGE] !== 0 || rows[next + BULGE] !== 0) return 0;
  const sin = rows[row + ARRIVE_X] * rows[next + LEAVE_Y] - rows[row + ARRIVE_Y] * rows[next + LEAVE_X];
  const cos = rows[row + ARRIVE_X] * rows[next + LEAVE_X] + rows[row + ARRIVE_Y] * rows[next + LEAVE_Y];
  if (sin * distanceMm >= 0 || cos < 0 || Math.abs(sin) > SLIGHT_TURN) return 0;
  const tail = Math.abs((distanceMm * sin) / (1 + cos));
  return tail < TAIL_SHARE * Math.min(lengthOfRow(rows, row), lengthOfRow(rows, next)) ? tail : 0;
}

function lengthOfRow(rows: Float64Array, row: number): number {
  return hypot(rows[row + END_X] - rows[row + START_X], rows[row + END_Y] - rows[row + START_Y]);
}

function addMoved(
  pieces: ArcTable,
  rows: Float64Array,
  row: number,
  distanceMm: number,
  tails: { readonly startMm: number; readonly endMm: number },
): void {
  const bulge = rows[row + BULGE];
  const radius = rows[row + RADIUS];
  if (radius > 0 && radius + (bulge > 0 ? distanceMm : -distanceMm) <= WELD_MM) return;
  const piece = addArc(
    pieces,
    rows[row + START_X] + distanceMm * rows[row + LEAVE_Y] + tails.startMm * rows[row + LEAVE_X],
    rows[row + START_Y] - distanceMm * rows[row + LEAVE_X] + tails.startMm * rows[row + LEAVE_Y],
    rows[row + END_X] + distanceMm * rows[row + ARRIVE_Y] - tails.endMm * rows[row + ARRIVE_X],
    rows[row + END_Y] - distanceMm * rows[row + ARRIVE_X] - tails.endMm * rows[row + ARRIVE_Y],
    bulge,
  );
  setHeadings(
    pieces,
    piece,
    rows[row + LEAVE_X],
    rows[row + LEAVE_Y],
    rows[row + ARRIVE_X],
    rows[row + ARRIVE_Y],
  );
}

/**
 * The bulge of the join at a joint that the offset opens, else 0. A joint that turns right back opens on
 * either side.
 */
function openingBulge(
  arriveX: number,
  arriveY: number,
  leaveX: number,
  leaveY: number,
  distanceMm: number,
): number {
  const sin = arriveX * leaveY - arriveY * leaveX;
  const cos = arriveX * leaveX + arriveY * leaveY;
  const opens = sin * distanceMm > 0;
  if (cos < 0 && Math.abs(sin) < BACK_RAD) return opens ? quarterTan(sin, cos) : Math.sign(distanceMm);
  return opens ? quarterTan(sin, cos) : 0;
}

/** tan of a quarter of an angle from its sine and cosine. */
function quarterTan(sin: number, cos: number): number {
  // The half angle's tangent, by whichever form does not cancel.
  const half = cos > 0 ? sin / (1 + cos) : (1 - cos) / sin;
  return half / (1 + Math.sqrt(1 + half * half));
}

/** rad. Within this of half a turn the side to which a joint turns is rounding. */
const BACK_RAD = 0.000_000_1;

function edges<F extends Frame>(corners: readonly number[]): Kite<F> {
  const at = (corner: number) => ({ x: corners[(2 * corner) % 8], y: corners[(2 * corner + 1) % 8] });
  return [0, 1, 2, 3].map((corner) => ({ start: at(corner), end: at(corner + 1), bulge: 0 }));
}
