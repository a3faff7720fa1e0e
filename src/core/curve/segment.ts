import {
  atan,
  atan2,
  cos,
  distanceBetween,
  type Frame,
  hypot,
  type Point,
  point,
  sin,
  tan,
} from '../base/index.ts';
import type { Chain } from './chain.ts';

/** One arc or line of a chain, from vertex to vertex; `bulge` as in a chain. */
export interface Segment<F extends Frame> {
  readonly start: Point<F>;
  readonly end: Point<F>;
  readonly bulge: number;
}

/** A whole arc: `radiusMm` is positive, `sweepRad` carries the turn (positive anticlockwise). */
export interface Arc<F extends Frame> {
  readonly centre: Point<F>;
  readonly radiusMm: number;
  readonly startAngleRad: number;
  readonly sweepRad: number;
}

/**
 * No unit. A bulge below this is a straight line: on a chord of 100 mm such an arc leaves its chord by less
 * than half a millionth of a millimetre, and rounding in its far centre would cost as much.
 */
export const STRAIGHT_BULGE = 0.000_000_01;

/** Every arc and line of a chain in order; a closed chain ends with the one that returns to its first vertex. */
export function segments<F extends Frame>(chain: Chain<F>): readonly Segment<F>[] {
  const { vertices, closed } = chain;
  const count = closed ? vertices.length : vertices.length - 1;
  const found: Segment<F>[] = [];
  for (let index = 0; index < count; index++) {
    const start = vertices[index];
    const end = vertices[(index + 1) % vertices.length];
    if (start && end) found.push({ start, end, bulge: start.bulge });
  }
  return found;
}

/** The signed sweep, positive anticlockwise; 0 for a line. */
export function sweepOf<F extends Frame>(segment: Segment<F>): number {
  return 4 * atan(segment.bulge);
}

/** The bulge of an arc of this signed sweep. */
export function bulgeOfSweep(sweepRad: number): number {
  return tan(sweepRad / 4);
}

/** Centre, radius and angles of an arc, or null for a line (a bulge too small to have a centre is a line). */
export function arcOf<F extends Frame>(segment: Segment<F>): Arc<F> | null {
  const { start, end, bulge } = segment;
  if (Math.abs(bulge) < STRAIGHT_BULGE) return null;
  const chordX = end.x - start.x;
  const chordY = end.y - start.y;
  const lift = (1 - bulge * bulge) / (4 * bulge);
  const centre = point<F>((start.x + end.x) / 2 - chordY * lift, (start.y + end.y) / 2 + chordX * lift);
  return {
    centre,
    radiusMm: (hypot(chordX, chordY) * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    startAngleRad: atan2(start.y - centre.y, start.x - centre.x),
    sweepRad: sweepOf(segment),
  };
}

/** Length along the arc or line, mm. */
export function segmentLength<F extends Frame>(segment: Segment<F>): number {
  const chordMm = distanceBetween(segment.start, segment.end);
  const half = sweepOf(segment) / 2;
  return Math.abs(segment.bulge) < STRAIGHT_BULGE ? chordMm : (chordMm * half) / sin(half);
}

/** The point at a fraction of the length; 0 and 1 give the ends exactly. */
export function pointOn<F extends Frame>(segment: Segment<F>, fraction: number): Point<F> {
  const { start, end, bulge } = segment;
  if (fraction === 0) return point(start.x, start.y);
  if (fraction === 1) return point(end.x, end.y);
  const chordX = end.x - start.x;
  const chordY = end.y - start.y;
  if (bulge === 0) return point(start.x + chordX * fraction, start.y + chordY * fraction);
  // The chord to the point is the whole chord turned and shortened: no centre needed, so flat arcs stay exact.
  const half = sweepOf(segment) / 2;
  const ratio = Math.abs(bulge) < STRAIGHT_BULGE ? fraction : sin(half * fraction) / sin(half);
  const turn = half * (fraction - 1);
  const cosine = cos(turn) * ratio;
  const sine = sin(turn) * ratio;
  return point(start.x + chordX * cosine - chordY * sine, start.y + chordX * sine + chordY * cosine);
}

/** The point halfway along; as {@link pointOn} at a half, without its trigonometry. */
export function middleOf<F extends Frame>({ start, end, bulge }: Segment<F>): Point<F> {
  return point(
    (start.x + end.x + bulge * (end.y - start.y)) / 2,
    (start.y + end.y - bulge * (end.x - start.x)) / 2,
  );
}

/** The heading of travel at a fraction of the length, rad, in (−π, π]. */
export function headingOn<F extends Frame>(segment: Segment<F>, fraction: number): number {
  const chordRad = atan2(segment.end.y - segment.start.y, segment.end.x - segment.start.x);
  return wrapAngle(chordRad + sweepOf(segment) * (fraction - 0.5));
}

/** The part between two fractions of the length, `from` < `to`. */
export function subSegment<F extends Frame>(segment: Segment<F>, from: number, to: number): Segment<F> {
  if (from === 0 && to === 1) return segment;
  return {
    start: pointOn(segment, from),
    end: pointOn(segment, to),
    bulge: segment.bulge === 0 ? 0 : bulgeOfSweep(sweepOf(segment) * (to - from)),
  };
}

/** The same direction in (−π, π]. */
export function wrapAngle(angleRad: number): number {
  const turned = angleRad - 2 * Math.PI * Math.round(angleRad / (2 * Math.PI));
  return turned <= -Math.PI ? turned + 2 * Math.PI : turned;
}
