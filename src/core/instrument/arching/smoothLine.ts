import { atan2, Bug, cos, distanceBetween, hypot, type Point, sin } from '../../base/index.ts';
import { cellMiddle, cellOf, nearestInGrid, type PointGrid, pointGrid } from './nearestOfPoints.ts';

/** A point of a line together with its heading. */
export interface LinePoint extends Point<'body'> {
  readonly headingRad: number;
}

/**
 * A smooth open line through close points with known headings (cubic between neighbours), for lines that are
 * not made of arcs. Body frame, millimetres. At the half millimetre that the channel is sampled at, the cubic
 * leaves an arc of 15 mm radius by less than a ten-thousandth of a thousandth.
 */
export interface SmoothLine {
  readonly points: readonly LinePoint[];
  /** Unit vectors of the headings, x and y of each in turn. */
  readonly headings: Float64Array;
  /** From the first point to each along the chords, mm. */
  readonly lengths: Float64Array;
  /** Greatest distance between two neighbours. */
  readonly widestGapMm: number;
  /** Finds the nearest point without asking all. */
  readonly grid: PointGrid;
  /** For each cell of the grid how far every place in it stands to the left of travel at least, mm; −∞ where that is not sure. */
  readonly leftMm: Float64Array;
}

export function smoothLine(points: readonly LinePoint[]): SmoothLine {
  const widestGapMm = points.reduce((widest, to, index) => {
    const from = points[index - 1];
    return from ? Math.max(widest, distanceBetween(from, to)) : widest;
  }, 0);
  const grid = pointGrid(points);
  const headings = Float64Array.from(points.flatMap(({ headingRad }) => [cos(headingRad), sin(headingRad)]));
  const lengths = new Float64Array(points.length);
  points.forEach(({ x, y }, at) => {
    const before = points[at - 1];
    if (before) lengths[at] = (lengths[at - 1] as number) + hypot(x - before.x, y - before.y);
  });
  const line = { points, headings, lengths, widestGapMm, grid, leftMm: grid.clearMm };
  return { ...line, leftMm: grid.clearMm.map((clearMm, cell) => leftOfCell(line, clearMm, cell)) };
}

/** A cell that the line keeps clear of lies on one side of it altogether. */
function leftOfCell(line: SmoothLine, clearMm: number, cell: number): number {
  const { x, y } = cellMiddle(line.grid, cell);
  // Between two points the line comes nearer by less than half their distance.
  const sureMm = clearMm - line.widestGapMm / 2;
  return sureMm > 0 && footOn(line, x, y).distanceMm > 0 ? sureMm : Number.NEGATIVE_INFINITY;
}

/** Whether a place stands to the left of a line by more than a distance, where that is told without a foot; false may be either. */
export function isSurelyLeft({ grid, leftMm }: SmoothLine, x: number, y: number, byMm: number): boolean {
  const cell = cellOf(grid, x, y);
  return cell >= 0 && (leftMm[cell] as number) > byMm;
}

/** Whether a place stands to the left of a line, told by the nearest of its points: right but for the line's bow between two of them. */
export function isLeft(line: SmoothLine, x: number, y: number): boolean {
  const { points, headings, grid } = line;
  if (isSurelyLeft(line, x, y, 0)) return true;
  const nearest = nearestInGrid(grid, x, y) ?? nearestOfAll(line, x, y);
  const at = points[nearest] as LinePoint;
  return (y - at.y) * (headings[2 * nearest] as number) > (x - at.x) * (headings[2 * nearest + 1] as number);
}

/** The nearest place on a line; the distance is positive to the left of travel. */
export interface Foot extends LinePoint {
  /** Counted in points of the line. */
  readonly at: number;
  readonly distanceMm: number;
}

/** Foot of the perpendicular from a point on the line, or the nearer end. */
export function footOn(line: SmoothLine, x: number, y: number): Foot {
  const at = footPlace(line, x, y);
  const foot = pointAt(line, at);
  return { ...foot, at, distanceMm: leftOfPlace(line, at, x, y) };
}

/** The foot counted in points of the line. */
export function footPlace(line: SmoothLine, x: number, y: number): number {
  const { points, headings } = line;
  const best = nearestInGrid(line.grid, x, y) ?? nearestOfAll(line, x, y);
  const place = points[best] as LinePoint;
  const ahead =
    (x - place.x) * (headings[2 * best] as number) + (y - place.y) * (headings[2 * best + 1] as number);
  const interval = ahead >= 0 ? best : best - 1;
  return interval < 0 || interval >= points.length - 1
    ? best
    : interval + footFraction(line, interval, x, y, ahead);
}

/** How far a point stands to the left of the line's travel at its foot there, mm; negative to the right. */
export function leftOfPlace(line: SmoothLine, at: number, x: number, y: number): number {
  const interval = Math.max(0, Math.min(line.points.length - 2, Math.floor(at)));
  standOff(line, interval, at - interval, x, y);
  const offX = off[0] as number;
  const offY = off[1] as number;
  const distanceMm = Math.sqrt(offX * offX + offY * offY);
  return offY * (way[0] as number) < offX * (way[1] as number) ? -distanceMm : distanceMm;
}

function nearestOfAll({ points, widestGapMm }: SmoothLine, x: number, y: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < points.length; ) {
    const candidate = points[index] as LinePoint;
    const distance = hypot(candidate.x - x, candidate.y - y);
    if (distance < least) {
      least = distance;
      best = index;
    }
    // No nearer point can stand within fewer steps than it takes to walk the difference.
    index += Math.max(1, Math.floor((distance - least) / widestGapMm));
  }
  return best;
}

/** The place `at` counted in points (3.5 is half way from the fourth to the fifth). */
export function pointAt(line: SmoothLine, at: number): LinePoint {
  const interval = Math.max(0, Math.min(line.points.length - 2, Math.floor(at)));
  const t = at - interval;
  const { points, headings } = line;
  const [a, b] = [points[interval], points[interval + 1]];
  if (!a || !b) throw new Bug(`no interval ${interval} in a line of ${points.length} points`);
  const heading = 2 * interval;
  const [aX, aY] = [headings[heading] as number, headings[heading + 1] as number];
  const [bX, bY] = [headings[heading + 2] as number, headings[heading + 3] as number];
  const lengthMm = tangentLength(b.x - a.x, b.y - a.y, aX * bX + aY * bY);
  const left = (1 - t) * (1 - t);
  const stay = (1 + 2 * t) * left;
  const leave = lengthMm * t * left;
  const arrive = -lengthMm * t * t * (1 - t);
  const chord = (6 * t * (1 - t)) / lengthMm;
  return {
    x: stay * a.x + (1 - stay) * b.x + leave * aX + arrive * bX,
    y: stay * a.y + (1 - stay) * b.y + leave * aY + arrive * bY,
    headingRad: atan2(chord * (b.y - a.y) + along(t, aY, bY), chord * (b.x - a.x) + along(t, aX, bX)),
  };
}

/** Places where a quantity of the line, continuous along it, passes zero; between first and last point index. */
export function placesWhere(
  line: SmoothLine,
  value: (point: LinePoint) => number,
  first = 0,
  last = line.points.length - 1,
): readonly LinePoint[] {
  const found: LinePoint[] = [];
  for (let index = first; index < last; index++) {
    const before = value(pointAt(line, index));
    const after = value(pointAt(line, index + 1));
    if (before === 0) found.push(pointAt(line, index));
    else if (before * after < 0) found.push(pointAt(line, crossing(line, value, index, before)));
  }
  return found;
}

/** A double has this many halvings between 0 and 1. */
const HALVINGS = 52;

function crossing(
  line: SmoothLine,
  value: (point: LinePoint) => number,
  from: number,
  before: number,
): number {
  let low = from;
  let high = from + 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (value(pointAt(line, middle)) * before > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function along(t: number, leaving: number, arriving: number): number {
  return (1 - t) * (1 - 3 * t) * leaving + t * (3 * t - 2) * arriving;
}

/** mm. A foot this near is found: rounding of places on a body leaves as much. */
const SETTLED_MM = 500 * Number.EPSILON;

/** How far a point lies ahead of the place t of an interval, along its heading: {@link ahead} of {@link pointAt}. */
function leadAt(line: SmoothLine, interval: number, t: number, x: number, y: number): number {
  standOff(line, interval, t, x, y);
  const alongX = way[0] as number;
  const alongY = way[1] as number;
  const lead = (off[0] as number) * alongX + (off[1] as number) * alongY;
  return lead / Math.sqrt(alongX * alongX + alongY * alongY);
}

/** From a place of an interval to a point, mm, and which way the line runs there, of any length: rows of numbers, so that no call allocates. */
const off = new Float64Array(2);
const way = new Float64Array(2);

/** Sets {@link off} and {@link way} for the place t of an interval. */
function standOff(line: SmoothLine, interval: number, t: number, x: number, y: number): void {
  const { points, headings } = line;
  const a = points[interval] as LinePoint;
  const b = points[interval + 1] as LinePoint;
  const at = 2 * interval;
  const aX = headings[at] as number;
  const aY = headings[at + 1] as number;
  const bX = headings[at + 2] as number;
  const bY = headings[at + 3] as number;
  const chordX = b.x - a.x;
  const chordY = b.y - a.y;
  const lengthMm = tangentLength(chordX, chordY, aX * bX + aY * bY);
  const stay = 1 - t;
  const after = t * t * (3 - 2 * t);
  const leave = lengthMm * t * stay * stay;
  const arrive = lengthMm * t * t * stay;
  off[0] = x - a.x - after * chordX - leave * aX + arrive * bX;
  off[1] = y - a.y - after * chordY - leave * aY + arrive * bY;
  const across = (6 * t * stay) / lengthMm;
  way[0] = across * chordX + along(t, aX, bX);
  way[1] = across * chordY + along(t, aY, bY);
}

/** How fast the line leaves and reaches the points of an interval, mm for the whole of it. */
export function tangentLengthAt({ points, headings }: SmoothLine, interval: number): number {
  const [a, b] = [points[interval], points[interval + 1]];
  if (!a || !b) throw new Bug(`no interval ${interval} in a line of ${points.length} points`);
  const at = 2 * interval;
  const cosine =
    (headings[at] as number) * (headings[at + 2] as number) +
    (headings[at + 1] as number) * (headings[at + 3] as number);
  return tangentLength(b.x - a.x, b.y - a.y, cosine);
}

/** An arc's cubic with the right tangents has tangent lengths chord / cos² of a quarter of its sweep. */
function tangentLength(chordX: number, chordY: number, cosineOfTurn: number): number {
  const cosineOfHalf = Math.sqrt(Math.max(0, (1 + cosineOfTurn) / 2));
  return (2 * Math.sqrt(chordX * chordX + chordY * chordY)) / (1 + cosineOfHalf);
}

/** `ahead` is how far the point lies ahead of the nearer end of the interval: its start if not below 0. */
function footFraction(line: SmoothLine, interval: number, x: number, y: number, ahead: number): number {
  let low = 0;
  let high = 1;
  let atLow = ahead >= 0 ? ahead : leadAt(line, interval, 0, x, y);
  let atHigh = ahead >= 0 ? leadAt(line, interval, 1, x, y) : ahead;
  // The lead falls almost straight along a short interval: a few false positions settle it.
  for (let step = 0; step < 4 && atLow > 0 && atHigh < 0; step++) {
    const t = low + ((high - low) * atLow) / (atLow - atHigh);
    const lead = leadAt(line, interval, t, x, y);
    if (Math.abs(lead) < SETTLED_MM) return t;
    if (lead > 0) {
      low = t;
      atLow = lead;
    } else {
      high = t;
      atHigh = lead;
    }
  }
  return atLow === 0 ? low : atHigh >= 0 ? high : low + ((high - low) * atLow) / (atLow - atHigh);
}
