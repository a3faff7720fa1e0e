import { atan2, cos, sin } from '../../base/index.ts';
import { type FairNet, type Loft, loftShape, netShape } from '../../surface/index.ts';
import { type LinePoint, type SmoothLine, tangentLengthAt } from './smoothLine.ts';

/** A place of the channel where its curvature steps, and what keeps the miss beside it smooth there. */
interface TwistedJoint {
  /** mm along the channel. */
  readonly alongMm: number;
  /** −(curvature × twist) before and after, 1/mm². */
  readonly before: number;
  readonly after: number;
}

/**
 * What loft and correction miss along a channel, where together they should be 0 and level: height, slope square to the channel, and at its joints
 * what their twist asks for.
 */
export interface ChannelMiss {
  /** For each interval of the line eight factors, of the powers of the share of the way: the height's, then the slope's. */
  readonly factors: Float64Array;
  readonly joints: readonly TwistedJoint[];
  /** For each interval how many joints lie before it. */
  readonly passed: Uint16Array;
}

/** 1/mm. Smaller steps of the curvature break nothing by a ten-thousandth of a degree. */
const LEAST_STEP = 1 / 2000;

/** mm along the channel over which a joint is felt, or up to the next joint: long beside the millimetre that is seen, short so that little is added. */
const REACH_MM = 4;

/** The miss of an arch of loft and correction along its channel, told at the points of the line and cubic between them. */
export function channelMiss(line: SmoothLine, loft: Loft, correction: FairNet): ChannelMiss {
  const { points, lengths } = line;
  const places = points.map((place) => missAt(place, loft, correction));
  const bends = points.map((_, at) => curvature(line, Math.min(at, points.length - 2)));
  const factors = new Float64Array(8 * (points.length - 1));
  const passed = new Uint16Array(points.length);
  const joints: TwistedJoint[] = [];
  places.forEach((here, at) => {
    const [before, after] = [bends[at - 1] ?? 0, bends[at] as number];
    if (at > 0 && at < points.length - 1 && Math.abs(after - before) > LEAST_STEP)
      joints.push({
        alongMm: lengths[at] as number,
        before: -before * here.twist,
        after: -after * here.twist,
      });
    passed[at] = joints.length;
    const next = places[at + 1];
    if (!next) return;
    const lengthMm = tangentLengthAt(line, at);
    const inwardGrows = ({ twist, along }: typeof here): number => lengthMm * (twist - after * along);
    putCubic(factors, 8 * at, here.mm, next.mm, lengthMm * here.along, lengthMm * next.along);
    putCubic(factors, 8 * at + 4, here.inward, next.inward, inwardGrows(here), inwardGrows(next));
  });
  return { factors, joints, passed };
}

/** How high loft and correction stand where they should be 0, their slopes along the channel and inwards, and how the one grows with the other. */
function missAt({ x, y, headingRad }: LinePoint, loft: Loft, correction: FairNet) {
  const body = loftShape(loft, x, y);
  const net = netShape(correction, x, y);
  const [alongX, alongY] = [cos(headingRad), sin(headingRad)];
  const [slopeX, slopeY] = [body.slopeX + net.slopeX, body.slopeY + net.slopeY];
  return {
    mm: body.zMm + net.zMm,
    along: slopeX * alongX + slopeY * alongY,
    inward: slopeY * alongX - slopeX * alongY,
    twist:
      alongX * alongY * (body.bendYY + net.bendYY - body.bendXX - net.bendXX) +
      (alongX * alongX - alongY * alongY) * (body.bendXY + net.bendXY),
  };
}

function putCubic(
  factors: Float64Array,
  at: number,
  from: number,
  to: number,
  leaving: number,
  arriving: number,
): void {
  factors[at] = from;
  factors[at + 1] = leaving;
  factors[at + 2] = 3 * (to - from) - 2 * leaving - arriving;
  factors[at + 3] = 2 * (from - to) + leaving + arriving;
}

/** What is missed `insideMm` square inside a place of the channel, and how fast it grows inwards. */
export function missInside(
  miss: ChannelMiss,
  line: SmoothLine,
  at: number,
  insideMm: number,
): { readonly mm: number; readonly inwardSlope: number } {
  const interval = Math.max(0, Math.min(line.points.length - 2, Math.floor(at)));
  const t = at - interval;
  const { factors } = miss;
  const first = 8 * interval;
  const cubic = (from: number): number =>
    (factors[from] as number) +
    t *
      ((factors[from + 1] as number) +
        t * ((factors[from + 2] as number) + t * (factors[from + 3] as number)));
  const inward = cubic(first + 4);
  const twist = twistTerm(miss, line, interval, t);
  return {
    mm: cubic(first) + insideMm * (inward + insideMm * twist),
    inwardSlope: inward + 2 * insideMm * twist,
  };
}

/**
 * What is added to the miss for each square millimetre of the distance from the channel: so much that the miss, told by its foot on the
 * channel, runs on smoothly where the foot's speed steps with the channel's curvature.
 *
 * A miss m + d n with a foot that goes 1 / (1 − κ d) times as fast has along the channel the slope m′ + d w / (1 − κ d), w its twist n′ + κ m′; with
 * d² c more, and c′ = −κ w on both sides of a joint, it is m′ + d w there on both.
 */
function twistTerm({ joints, passed }: ChannelMiss, line: SmoothLine, interval: number, t: number): number {
  const count = passed[interval] as number;
  const last = joints[count - 1];
  const next = joints[count];
  const start = line.lengths[interval] as number;
  const alongMm = start + t * ((line.lengths[interval + 1] as number) - start);
  const apartMm = last && next ? next.alongMm - last.alongMm : REACH_MM;
  const reachMm = Math.min(REACH_MM, apartMm);
  return (
    (last ? ramp(alongMm - last.alongMm, reachMm) * last.after : 0) +
    (next ? ramp(alongMm - next.alongMm, reachMm) * next.before : 0)
  );
}

/** Runs off with the slope 1, and is back at 0 and level at its reach on either side. */
function ramp(awayMm: number, reachMm: number): number {
  const t = Math.abs(awayMm) / reachMm;
  return t >= 1 ? 0 : awayMm * (1 - t) * (1 - t) * (1 + 2 * t);
}

/** 1/mm, positive to the left. */
function curvature({ points, lengths }: SmoothLine, interval: number): number {
  const [a, b] = [points[interval], points[interval + 1]];
  if (!a || !b) return 0;
  const turn = b.headingRad - a.headingRad;
  const lengthMm = (lengths[interval + 1] as number) - (lengths[interval] as number);
  // Headings are only known to whole turns.
  return atan2(sin(turn), cos(turn)) / lengthMm;
}
