import { atan, cos, hypot, type Point, sin } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';

/** Merged places of a corner end from the bout to the waist, and the direction in which such ends run, with its usual spread. */
export interface EndPlaces {
  readonly headingRad: number;
  readonly headingSpreadRad: number;
  readonly end: readonly Point<'body'>[];
}

/** The line across a corner as its end is seen. */
export interface SeenEnd {
  readonly headingRad: number;
  readonly through: Point<'body'>;
}

/** Share of a corner end, in its middle, that is not rounded by wear. */
const MIDDLE_SHARE = 0.6;
const LEAST_END_PLACES = 3;
/** rad. Spread of a direction read off a corner end: what is read errs by less, but the end may have worn away aslant. */
const SEEN_HEADING_RAD = 0.05;
/** A line that leaves the usual direction of corner ends by more spreads than this is none: something else was followed. */
const LEAVES_SPREADS = 3;
/**
 * mm, one standard deviation. Places that scatter more about a line are none: such an end tells where it stands, but no direction
 * (three times what the ends of the simulator's odd seeds, 1 to 15, scatter at most; crooked ones scatter by 0.1 to 0.4).
 */
const CROOKED_MM = 0.06;

/**
 * The line of a corner end as it is seen: through the middle of its places, its direction leaning on the usual one. Undefined
 * where too few are seen, or where they run in no direction that a corner end takes.
 */
export function seenEnd({ end, headingRad, headingSpreadRad }: EndPlaces): SeenEnd | undefined {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  const along = end.map(({ x, y }) => c * x + s * y);
  const [from, to] = [Math.min(...along), Math.max(...along)];
  const margin = ((1 - MIDDLE_SHARE) / 2) * (to - from);
  const middle = end.filter((_, i) => along[i] >= from + margin && along[i] <= to - margin);
  if (middle.length < LEAST_END_PLACES) return undefined;
  const mean = (of: (p: Point<'body'>) => number) =>
    middle.reduce((sum, p) => sum + of(p), 0) / middle.length;
  const through = { x: mean((p) => p.x), y: mean((p) => p.y) };
  const line = robustLine(
    middle.map((p) => c * (p.x - through.x) + s * (p.y - through.y)),
    middle.map((p) => c * (p.y - through.y) - s * (p.x - through.x)),
  );
  if (line === undefined) return { headingRad, through };
  const at = { x: through.x - s * line.atMiddle, y: through.y + c * line.atMiddle };
  if (Math.abs(line.leavesRad) > LEAVES_SPREADS * hypot(headingSpreadRad, SEEN_HEADING_RAD)) return undefined;
  if (line.scatterMm > CROOKED_MM) return { headingRad, through: at };
  const share = headingSpreadRad ** 2 / (headingSpreadRad ** 2 + SEEN_HEADING_RAD ** 2);
  return { headingRad: headingRad + share * line.leavesRad, through: at };
}

/**
 * The line through places `along` and `aside`, mm, by the medians of the directions between all two of them and of what is left (Theil
 * and Sen): of seven places two may stand anywhere. Undefined where all stand at one place.
 */
function robustLine(along: readonly number[], aside: readonly number[]) {
  const slopes = along.flatMap((a, i) =>
    along.slice(i + 1).flatMap((b, k) => (a === b ? [] : [(aside[i + 1 + k] - aside[i]) / (b - a)])),
  );
  if (slopes.length === 0) return undefined;
  const slope = medianOf(slopes);
  const left = along.map((t, i) => aside[i] - slope * t);
  const atMiddle = medianOf(left);
  const scatterMm = NORMAL_TO_MEDIAN * medianOf(left.map((mm) => Math.abs(mm - atMiddle)));
  return { leavesRad: atan(slope), atMiddle, scatterMm };
}

/** Spread of a normal distribution over the median of its sizes. */
const NORMAL_TO_MEDIAN = 1.4826;

/** How far outside a seen corner end a place lies, mm; negative inside. */
export function beyondEndMm({ headingRad, through }: SeenEnd, at: Point<'body'>): number {
  const [c, s] = [cos(headingRad), sin(headingRad)];
  // Of the two sides of the line the one away from the centre line.
  return Math.sign(s) * (s * (at.x - through.x) - c * (at.y - through.y));
}
