import { type FairNet, type Loft, loftShape, netShape } from '../../surface/index.ts';
import type { SmoothLine } from './smoothLine.ts';

/** A place of the channel where its curvature steps, and how an arch is twisted there that should be level: slope square to it, grown along it. */
interface TwistedJoint {
  /** mm along the channel. */
  readonly alongMm: number;
  /** −(curvature × twist) before and after, 1/mm². */
  readonly before: number;
  readonly after: number;
}

/** All of them along a channel, from the lower end up. */
export interface ChannelTwist {
  readonly joints: readonly TwistedJoint[];
  /** For each interval of the channel how many joints lie before it. */
  readonly passed: Uint16Array;
}

/** 1/mm. Smaller steps of the curvature break nothing by a ten-thousandth of a degree. */
const LEAST_STEP = 1 / 2000;

/** mm along the channel over which a joint is felt, or up to the next joint: long beside the millimetre that is seen, short so that little is added. */
const REACH_MM = 4;

/** Where and how an arch of loft and correction is twisted at the joints of its channel. */
export function channelTwist(line: SmoothLine, loft: Loft, correction: FairNet): ChannelTwist {
  const { points, lengths } = line;
  const joints: TwistedJoint[] = [];
  const passed = new Uint16Array(points.length);
  for (let at = 1; at < points.length - 1; at++) {
    const before = curvature(line, at - 1);
    const after = curvature(line, at);
    if (Math.abs(after - before) > LEAST_STEP) {
      const twist = twistAt(line, at, loft, correction);
      joints.push({ alongMm: lengths[at] as number, before: -before * twist, after: -after * twist });
    }
    passed[at] = joints.length;
  }
  return { joints, passed };
}

/**
 * What is added to the miss of an arch beside its channel, for each square millimetre of the distance from it: so much that the miss,
 * told by its foot on the channel, runs on smoothly where the foot's speed steps with the channel's curvature.
 *
 * A miss m + d n with a foot that goes 1 / (1 − κ d) times as fast has along the channel the slope m′ + d w / (1 − κ d), w its twist n′ + κ m′; with
 * d² c more, and c′ = −κ w on both sides of a joint, it is m′ + d w there on both.
 */
export function twistTerm({ joints, passed }: ChannelTwist, line: SmoothLine, at: number): number {
  const interval = Math.min(line.points.length - 2, Math.floor(at));
  const start = line.lengths[interval] as number;
  const alongMm = start + (at - interval) * ((line.lengths[interval + 1] as number) - start);
  const count = passed[interval] as number;
  const [last, next] = [joints[count - 1], joints[count]];
  const apartMm = last && next ? next.alongMm - last.alongMm : Number.POSITIVE_INFINITY;
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

function curvature({ points, lengths }: SmoothLine, interval: number): number {
  const [a, b] = [points[interval], points[interval + 1]];
  if (!a || !b) return 0;
  const turn = b.headingRad - a.headingRad;
  const lengthMm = (lengths[interval + 1] as number) - (lengths[interval] as number);
  // Headings are only known to whole turns.
  return Math.atan2(Math.sin(turn), Math.cos(turn)) / lengthMm;
}

/** Second derivative along and square to the channel: 0 but for what loft and correction miss, since both are level all along it. */
function twistAt({ points }: SmoothLine, at: number, loft: Loft, correction: FairNet): number {
  const place = points[at];
  if (!place) return 0;
  const { x, y, headingRad } = place;
  const [body, net] = [loftShape(loft, x, y), netShape(correction, x, y)];
  const [alongX, alongY] = [Math.cos(headingRad), Math.sin(headingRad)];
  return (
    alongX * alongY * (body.bendYY + net.bendYY - body.bendXX - net.bendXX) +
    (alongX * alongX - alongY * alongY) * (body.bendXY + net.bendXY)
  );
}
