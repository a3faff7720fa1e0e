import {
  accept,
  atan2,
  type Checked,
  cos,
  type Fault,
  type Point,
  refuse,
  sin,
  WELD_MM,
} from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import { type CornerMeeting, meetingInCorner } from './cornerMeeting.ts';
import { type EdgeSection, edgeSection, insetPoint } from './edgeInset.ts';
import { type LinePoint, pointAt, type SmoothLine, smoothLine } from './smoothLine.ts';

/** Distances of the channel's lowest line from the edge of the plate, and the radius that rounds it in the corners, mm. */
export interface ChannelDistances {
  readonly boutsMm: number;
  readonly waistMm: number;
  readonly cornersMm: number;
  readonly roundingMm: number;
}

/** The rounding of the channel in a corner: an arc about `centre`, between two headings (rad, turning left). */
export interface ChannelCorner {
  readonly centre: Point<'body'>;
  readonly radiusMm: number;
  readonly fromRad: number;
  readonly toRad: number;
}

/** The lowest line of the channel, treble half, from the lower end up to the upper end; the plate's middle is on its left. */
export interface ChannelLine {
  readonly line: SmoothLine;
  /** Index of the last point of each stretch: lower bout, lower corner, C bout, upper corner, upper bout. */
  readonly lastOf: readonly [number, number, number, number, number];
  readonly lowerCorner: ChannelCorner;
  readonly upperCorner: ChannelCorner;
}

/** mm along the edge between two points of the channel. */
const STEP_MM = 0.5;

/**
 * The channel line of an outline: inside the edge by a distance that is constant over the ends, goes smoothly from the
 * widest places of the bouts and from the waist to its corner value, and is rounded inside the corners.
 *
 * Faults: `channel.distance`, `channel.widest` (no widest or narrowest place), `channel.corner` (the rounding finds no
 * room), `channel.collapse` (a bout rounder than the channel is deep in).
 * Method: the channel is the edge of all discs of the channel's distance about the edge; with the rounding added to
 * the distance the two sides of a corner meet in one point, and the rounding is the circle about it (arching 5.1).
 */
export function channelLine(half: HalfOutline, distances: ChannelDistances): Checked<ChannelLine> {
  const { boutsMm, waistMm, cornersMm, roundingMm } = distances;
  if (![boutsMm, waistMm, cornersMm, roundingMm].every((value) => value > 0 && Number.isFinite(value)))
    return fault(
      'channel.distance',
      'channelAtBouts',
      'a channel distance or rounding that is not above 0 mm',
    );
  const lower = edgeSection(half.lowerBout, 'widest', {
    fromMm: boutsMm,
    atMiddleMm: boutsMm,
    toMm: cornersMm,
  });
  const middle = edgeSection(half.cBout, 'narrowest', {
    fromMm: cornersMm,
    atMiddleMm: waistMm,
    toMm: cornersMm,
  });
  const upper = edgeSection(half.upperBout, 'widest', {
    fromMm: cornersMm,
    atMiddleMm: boutsMm,
    toMm: boutsMm,
  });
  if (!lower || !middle || !upper)
    return fault(
      'channel.widest',
      'outline',
      'an outline without a widest place in each bout and a narrowest waist',
    );
  const lowerMeeting = meetingInCorner(lower, middle, roundingMm);
  const upperMeeting = meetingInCorner(middle, upper, roundingMm);
  if (!lowerMeeting || !upperMeeting || lowerMeeting.onSecondMm >= upperMeeting.onFirstMm)
    return fault(
      'channel.corner',
      'channelCornerRounding',
      'a corner in which the channel cannot be rounded',
    );
  const lowerCorner = cornerOf(lowerMeeting, roundingMm);
  const upperCorner = cornerOf(upperMeeting, roundingMm);
  if (![lowerCorner, upperCorner].every(({ centre, fromRad, toRad }) => toRad > fromRad && centre.x > 0))
    return fault(
      'channel.corner',
      'channelCornerRounding',
      'a corner in which the channel cannot be rounded',
    );
  const stretches = [
    insetStretch(lower, 0, lowerMeeting.onFirstMm),
    arcStretch(lowerCorner),
    insetStretch(middle, lowerMeeting.onSecondMm, upperMeeting.onFirstMm),
    arcStretch(upperCorner),
    insetStretch(upper, upperMeeting.onSecondMm, upper.lengthMm),
  ];
  const points: LinePoint[] = [];
  const lastOf: number[] = [];
  for (const stretch of stretches) {
    points.push(...(points.length > 0 ? stretch.slice(1) : stretch));
    lastOf.push(points.length - 1);
  }
  if (!runsForward(points))
    return fault(
      'channel.collapse',
      'channelAtBouts, channelAtCorners, channelCornerRounding',
      'a channel that folds over itself, inside a round bout or toward a corner',
    );
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = lastOf;
  return accept({ line: smoothLine(points), lastOf: [a, b, c, d, e], lowerCorner, upperCorner });
}

function cornerOf(meeting: CornerMeeting, radiusMm: number): ChannelCorner {
  const turn = meeting.secondHeadingRad - meeting.firstHeadingRad;
  return {
    centre: meeting.at,
    radiusMm,
    fromRad: meeting.firstHeadingRad,
    toRad: meeting.firstHeadingRad + atan2(sin(turn), cos(turn)),
  };
}

/** Points of an inset, with one at every joint of the edge and at its middle, where the line's curvature may jump. */
function insetStretch(section: EdgeSection, fromMm: number, toMm: number): LinePoint[] {
  const joints = [...section.pieces.map(({ startMm }) => startMm), section.middleMm];
  const inside = joints.filter((atMm) => atMm > fromMm + WELD_MM && atMm < toMm - WELD_MM);
  const stops = [fromMm, ...inside.toSorted((a, b) => a - b), toMm];
  const places = [fromMm];
  stops.slice(1).forEach((stop, index) => {
    const start = stops[index] ?? fromMm;
    const count = Math.ceil((stop - start) / STEP_MM);
    for (let step = 1; step <= count; step++) places.push(start + ((stop - start) * step) / count);
  });
  return places.map((atMm) => insetPoint(section, atMm, 0));
}

/** The place of the rounding where travel has this heading: a quarter turn behind it, seen from the centre. */
export function cornerPoint(corner: ChannelCorner, headingRad: number): LinePoint {
  return {
    x: corner.centre.x + corner.radiusMm * sin(headingRad),
    y: corner.centre.y - corner.radiusMm * cos(headingRad),
    headingRad,
  };
}

function arcStretch(corner: ChannelCorner): LinePoint[] {
  const count = Math.max(1, Math.ceil((corner.radiusMm * (corner.toRad - corner.fromRad)) / STEP_MM));
  return Array.from({ length: count + 1 }, (_, index) =>
    cornerPoint(corner, corner.fromRad + ((corner.toRad - corner.fromRad) * index) / count),
  );
}

/** Each step goes where its own headings point: a fold steps backwards. */
function runsForward(points: readonly LinePoint[]): boolean {
  return points.every((from, index) => {
    const to = points[index + 1];
    return !to || (to.x - from.x) * cos(from.headingRad) + (to.y - from.y) * sin(from.headingRad) > 0;
  });
}

function fault(
  code: string,
  at: string,
  found: string,
): { readonly ok: false; readonly faults: readonly Fault[] } {
  return refuse({
    code,
    at,
    found,
    need: 'a channel that runs once round inside the edge',
    remedy:
      'bring the channel nearer to the edge, make its rounding in the corners smaller, or check the outline',
  });
}

/**
 * A place of the channel all round, counted in points of its treble half from the lower end anticlockwise: up the treble half,
 * then down its mirror image. It wraps round.
 */
export function channelPlace({ line }: ChannelLine, at: number): LinePoint {
  const half = line.points.length - 1;
  const round = at - 2 * half * Math.floor(at / (2 * half));
  if (round <= half) return pointAt(line, round);
  const { x, y, headingRad } = pointAt(line, 2 * half - round);
  return { x: -x, y, headingRad: -headingRad };
}
