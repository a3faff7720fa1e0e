import { Bug, type Point } from '../../base/index.ts';
import { nearestInGrid, type PointGrid, pointGrid } from './nearestOfPoints.ts';

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
  /** Greatest distance between two neighbours. */
  readonly widestGapMm: number;
  /** Finds the nearest point without asking all. */
  readonly grid: PointGrid;
}

export function smoothLine(points: readonly LinePoint[]): SmoothLine {
  const widestGapMm = points.reduce((widest, to, index) => {
    const from = points[index - 1];
    return from ? Math.max(widest, Math.hypot(to.x - from.x, to.y - from.y)) : widest;
  }, 0);
  return { points, widestGapMm, grid: pointGrid(points) };
}

/** The nearest place on a line; the distance is positive to the left of travel. */
export interface Foot extends LinePoint {
  readonly distanceMm: number;
}

/** Foot of the perpendicular from a point on the line, or the nearer end. */
export function footOn(line: SmoothLine, x: number, y: number): Foot {
  const { points } = line;
  const best = nearestInGrid(line.grid, points, x, y) ?? nearestOfAll(line, x, y);
  const interval = ahead(points[best], x, y) >= 0 ? best : best - 1;
  const at =
    interval < 0 || interval >= points.length - 1 ? best : interval + footFraction(line, interval, x, y);
  const foot = pointAt(line, at);
  const side = (y - foot.y) * Math.cos(foot.headingRad) - (x - foot.x) * Math.sin(foot.headingRad);
  const distance = Math.hypot(x - foot.x, y - foot.y);
  return { ...foot, distanceMm: side < 0 ? -distance : distance };
}

function nearestOfAll({ points, widestGapMm }: SmoothLine, x: number, y: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < points.length; ) {
    const candidate = points[index] as LinePoint;
    const distance = Math.hypot(candidate.x - x, candidate.y - y);
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
function pointAt(line: SmoothLine, at: number): LinePoint {
  const interval = Math.max(0, Math.min(line.points.length - 2, Math.floor(at)));
  const t = at - interval;
  const { a, b, lengthMm } = ends(line, interval);
  const stay = (1 + 2 * t) * (1 - t) ** 2;
  const leave = lengthMm * t * (1 - t) ** 2;
  const arrive = -lengthMm * t * t * (1 - t);
  const headingX =
    (6 * t * (1 - t) * (b.x - a.x)) / lengthMm + along(t, Math.cos(a.headingRad), Math.cos(b.headingRad));
  const headingY =
    (6 * t * (1 - t) * (b.y - a.y)) / lengthMm + along(t, Math.sin(a.headingRad), Math.sin(b.headingRad));
  return {
    x: stay * a.x + (1 - stay) * b.x + leave * Math.cos(a.headingRad) + arrive * Math.cos(b.headingRad),
    y: stay * a.y + (1 - stay) * b.y + leave * Math.sin(a.headingRad) + arrive * Math.sin(b.headingRad),
    headingRad: Math.atan2(headingY, headingX),
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

function ends(line: SmoothLine, interval: number): { a: LinePoint; b: LinePoint; lengthMm: number } {
  const a = line.points[interval];
  const b = line.points[interval + 1];
  if (!a || !b) throw new Bug(`no interval ${interval} in a line of ${line.points.length} points`);
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const half = Math.abs(turnBetween(a.headingRad, b.headingRad)) / 4;
  // An arc's cubic with the right tangents has tangent lengths chord / cos² of a quarter of its sweep.
  return { a, b, lengthMm: chord / Math.cos(half) ** 2 };
}

function along(t: number, leaving: number, arriving: number): number {
  return (1 - t) * (1 - 3 * t) * leaving + t * (3 * t - 2) * arriving;
}

function turnBetween(from: number, to: number): number {
  return Math.atan2(Math.sin(to - from), Math.cos(to - from));
}

/** How far a point lies ahead of a place, along its heading. */
function ahead(place: LinePoint | undefined, x: number, y: number): number {
  if (!place) throw new Bug('an empty line has no foot');
  return (x - place.x) * Math.cos(place.headingRad) + (y - place.y) * Math.sin(place.headingRad);
}

function footFraction(line: SmoothLine, interval: number, x: number, y: number): number {
  let low = 0;
  let high = 1;
  let atLow = ahead(pointAt(line, interval), x, y);
  let atHigh = ahead(pointAt(line, interval + 1), x, y);
  // The lead falls almost straight along a short interval: a few false positions settle it.
  for (let step = 0; step < 4 && atLow > 0 && atHigh < 0; step++) {
    const t = low + ((high - low) * atLow) / (atLow - atHigh);
    const lead = ahead(pointAt(line, interval + t), x, y);
    if (lead === 0) return t;
    if (lead > 0) [low, atLow] = [t, lead];
    else [high, atHigh] = [t, lead];
  }
  return atLow === 0 ? low : atHigh >= 0 ? high : low + ((high - low) * atLow) / (atLow - atHigh);
}
