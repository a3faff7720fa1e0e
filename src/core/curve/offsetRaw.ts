import { distanceBetween, type Frame, type Point, point, WELD_MM } from '../base/index.ts';
import { arcOf, bulgeOfSweep, headingOn, type Segment, wrapAngle } from './segment.ts';

/** The arcs and lines that an offset may be made of, untrimmed, and the kites that mitres add to the corners. */
export interface RawOffset<F extends Frame> {
  readonly pieces: readonly Segment<F>[];
  readonly mitres: readonly (readonly Segment<F>[])[];
}

/**
 * Every segment moved to the right of its travel by the distance, and a join at every corner that opens.
 * An arc whose radius the distance uses up is left out: all that it would give lies too near to the source.
 */
export function rawOffset<F extends Frame>(
  source: readonly Segment<F>[],
  distanceMm: number,
  mitre: boolean,
  mitreLimit: number,
): RawOffset<F> {
  const pieces: Segment<F>[] = [];
  const mitres: Segment<F>[][] = [];
  for (const [index, segment] of source.entries()) {
    const next = source[(index + 1) % source.length] ?? segment;
    const startRad = headingOn(segment, 0);
    const endRad = headingOn(segment, 1);
    const leaveRad = headingOn(next, 0);
    const end = toRight(segment.end, endRad, distanceMm);
    const arc = arcOf(segment);
    if (!arc || arc.radiusMm + Math.sign(segment.bulge) * distanceMm > WELD_MM) {
      pieces.push({ start: toRight(segment.start, startRad, distanceMm), end, bulge: segment.bulge });
    }
    const turn = openTurn(leaveRad - endRad, distanceMm);
    const start = toRight(next.start, leaveRad, distanceMm);
    if (turn === 0 || distanceBetween(start, end) <= WELD_MM) continue;
    const reach = 1 / Math.cos(turn / 2);
    if (mitre && reach > 0 && reach <= mitreLimit) {
      const tip = toRight(segment.end, endRad + turn / 2, distanceMm * reach);
      pieces.push({ start: end, end: tip, bulge: 0 }, { start: tip, end: start, bulge: 0 });
      mitres.push(edges([segment.end, end, tip, start]));
    } else {
      pieces.push({ start: end, end: start, bulge: bulgeOfSweep(turn) });
    }
  }
  return { pieces, mitres };
}

/** The turn of a joint when the offset opens there, else 0. A joint that turns right back opens on either side. */
function openTurn(turnRad: number, distanceMm: number): number {
  const turn = wrapAngle(turnRad);
  if (turn * distanceMm > 0) return turn;
  return Math.abs(turn) > Math.PI - BACK_RAD ? Math.sign(distanceMm) * Math.PI : 0;
}

/** rad. Within this of half a turn the side to which a joint turns is rounding. */
const BACK_RAD = 0.000_000_1;

function toRight<F extends Frame>(p: Point<F>, headingRad: number, distanceMm: number): Point<F> {
  return point(p.x + distanceMm * Math.sin(headingRad), p.y - distanceMm * Math.cos(headingRad));
}

function edges<F extends Frame>(corners: readonly Point<F>[]): Segment<F>[] {
  return corners.map((start, index) => ({
    start,
    end: corners[(index + 1) % corners.length] ?? start,
    bulge: 0,
  }));
}
