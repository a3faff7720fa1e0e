import {
  distanceBetween,
  type Frame,
  hypot,
  type Point,
  point,
  TANGENT_RAD,
  WELD_MM,
} from '../base/index.ts';
import type { Arc } from './segment.ts';
import { pointOn } from './segment.ts';
import { fractionWithin, type Span } from './span.ts';

/** A point that two spans share, with its fraction on each. */
export interface Meeting<F extends Frame> {
  readonly point: Point<F>;
  readonly onFirst: number;
  readonly onSecond: number;
}

interface Candidate {
  readonly x: number;
  readonly y: number;
  /** A mere touch: its place along the curves is only known to the reach, mm. */
  readonly reachMm: number;
}

/**
 * Every point that two spans share: crossings, touches (one curve within WELD_MM of the other without
 * crossing it further) and, where they run along each other, the ends of the common stretch.
 */
export function crossSpans<F extends Frame>(a: Span<F>, b: Span<F>): readonly Meeting<F>[] {
  const found: Meeting<F>[] = [];
  addEnds(a, b, found);
  for (const candidate of candidates(a, b)) {
    const reach = Math.max(WELD_MM, candidate.reachMm);
    if (found.some((each) => distanceBetween(each.point, candidate) <= reach)) continue;
    const onFirst = fractionWithin(a, candidate.x, candidate.y);
    const onSecond = fractionWithin(b, candidate.x, candidate.y);
    if (onFirst === null || onSecond === null) continue;
    found.push({ point: point(candidate.x, candidate.y), onFirst, onSecond });
  }
  return found;
}

function addEnds<F extends Frame>(a: Span<F>, b: Span<F>, found: Meeting<F>[]): void {
  for (const end of [0, 1] as const) {
    const own = end === 0 ? a.segment.start : a.segment.end;
    const onSecond = fractionOfPoint(b, own);
    if (onSecond !== null) addOnce(found, { point: own, onFirst: end, onSecond });
  }
  for (const end of [0, 1] as const) {
    const own = end === 0 ? b.segment.start : b.segment.end;
    const onFirst = fractionOfPoint(a, own);
    if (onFirst !== null) addOnce(found, { point: own, onFirst, onSecond: end });
  }
}

function addOnce<F extends Frame>(found: Meeting<F>[], meeting: Meeting<F>): void {
  const known = found.some(({ point: at }) => distanceBetween(at, meeting.point) <= 2 * WELD_MM);
  if (!known) found.push(meeting);
}

/** The fraction at which a point lies on a span, ends drawn exact; null when it lies more than WELD_MM off. */
function fractionOfPoint<F extends Frame>(span: Span<F>, p: Point<F>): number | null {
  if (p.x < span.minX - WELD_MM || p.x > span.maxX + WELD_MM) return null;
  if (p.y < span.minY - WELD_MM || p.y > span.maxY + WELD_MM) return null;
  const { start, end } = span.segment;
  if (distanceBetween(p, start) <= WELD_MM) return 0;
  if (distanceBetween(p, end) <= WELD_MM) return 1;
  const fraction = fractionWithin(span, p.x, p.y);
  if (fraction === null) return null;
  const foot = pointOn(span.segment, fraction);
  return distanceBetween(p, foot) <= WELD_MM ? fraction : null;
}

function candidates<F extends Frame>(a: Span<F>, b: Span<F>): readonly Candidate[] {
  if (a.arc && b.arc) {
    // Measured from the smaller circle: from a very flat arc's far centre, rounding would cost too much.
    return a.arc.radiusMm <= b.arc.radiusMm ? crossCircles(a.arc, b.arc) : crossCircles(b.arc, a.arc);
  }
  if (a.arc) return crossLineCircle(b, a.arc);
  if (b.arc) return crossLineCircle(a, b.arc);
  return crossLines(a, b);
}

function crossLines<F extends Frame>(a: Span<F>, b: Span<F>): readonly Candidate[] {
  const { start, end } = a.segment;
  const other = b.segment;
  const aX = end.x - start.x;
  const aY = end.y - start.y;
  const bX = other.end.x - other.start.x;
  const bY = other.end.y - other.start.y;
  const across = aX * bY - aY * bX;
  if (Math.abs(across) <= TANGENT_RAD * a.lengthMm * b.lengthMm) return [];
  const fraction = ((other.start.x - start.x) * bY - (other.start.y - start.y) * bX) / across;
  return [{ x: start.x + aX * fraction, y: start.y + aY * fraction, reachMm: 0 }];
}

function crossLineCircle<F extends Frame>(line: Span<F>, arc: Arc<F>): readonly Candidate[] {
  const { start, end } = line.segment;
  const lengthMm = distanceBetween(start, end);
  const alongX = (end.x - start.x) / lengthMm;
  const alongY = (end.y - start.y) / lengthMm;
  const toX = arc.centre.x - start.x;
  const toY = arc.centre.y - start.y;
  const offMm = alongX * toY - alongY * toX;
  const footX = arc.centre.x + alongY * offMm;
  const footY = arc.centre.y - alongX * offMm;
  const depthMm = arc.radiusMm - Math.abs(offMm);
  if (depthMm < -WELD_MM) return [];
  if (depthMm <= WELD_MM) return [{ x: footX, y: footY, reachMm: touchReach(arc.radiusMm) }];
  const half = Math.sqrt(depthMm * (arc.radiusMm + Math.abs(offMm)));
  return [
    { x: footX - alongX * half, y: footY - alongY * half, reachMm: 0 },
    { x: footX + alongX * half, y: footY + alongY * half, reachMm: 0 },
  ];
}

/** Crossings of two whole circles, `a` not the larger. */
function crossCircles<F extends Frame>(a: Arc<F>, b: Arc<F>): readonly Candidate[] {
  const betweenX = b.centre.x - a.centre.x;
  const betweenY = b.centre.y - a.centre.y;
  const apartMm = hypot(betweenX, betweenY);
  const outerMm = a.radiusMm + b.radiusMm - apartMm;
  const innerMm = apartMm - Math.abs(a.radiusMm - b.radiusMm);
  const depthMm = Math.min(outerMm, innerMm);
  if (depthMm < -WELD_MM || apartMm <= WELD_MM) return [];
  const unitX = betweenX / apartMm;
  const unitY = betweenY / apartMm;
  if (depthMm <= WELD_MM) {
    const reach = innerMm < outerMm ? -a.radiusMm : a.radiusMm;
    // Circles that bend alike stay near each other for longer.
    const bend = Math.abs(1 / a.radiusMm + (innerMm < outerMm ? -1 : 1) / b.radiusMm);
    return [{ x: a.centre.x + unitX * reach, y: a.centre.y + unitY * reach, reachMm: touchReach(1 / bend) }];
  }
  const alongMm = (apartMm + ((a.radiusMm - b.radiusMm) / apartMm) * (a.radiusMm + b.radiusMm)) / 2;
  const half = Math.sqrt(Math.max(0, (a.radiusMm - alongMm) * (a.radiusMm + alongMm)));
  const footX = a.centre.x + unitX * alongMm;
  const footY = a.centre.y + unitY * alongMm;
  return [
    { x: footX - unitY * half, y: footY + unitX * half, reachMm: 0 },
    { x: footX + unitY * half, y: footY - unitX * half, reachMm: 0 },
  ];
}

/** How far from a touch two curves still lie within twice WELD_MM of each other. */
function touchReach(radiusMm: number): number {
  return 2 * Math.sqrt(2 * radiusMm * WELD_MM);
}
