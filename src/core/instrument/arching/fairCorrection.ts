import { accept, type Checked, refuse } from '../../base/index.ts';
import {
  type FairNet,
  fairNet,
  type Loft,
  loftAt,
  type NetCondition,
  type NetGrid,
} from '../../surface/index.ts';
import type { ArchStation } from './archedPlate.ts';
import type { ChannelLine } from './channelLine.ts';

/** Lengths below are for a body of this length and grow with it, mm. */
const REFERENCE_LENGTH_MM = 355;

/** mm between the knots of the net. Finer nets move the surface by less than 0.05 mm (arching 5.4). */
const STEP_MM = 5;

/** mm that the net reaches out beyond the channel. */
const MARGIN_MM = 7;

/** Outside the channel the net only has to be determined. */
const OUTSIDE_WEIGHT = 0.02;

/** Against the bending integral, for each point of the channel: harder pinning locks the net in spots (arching 5.4). */
const CHANNEL_WEIGHT = 100;

/** Holds the stations to less than a ten-thousandth of a millimetre. */
const STATION_WEIGHT = 1_000_000;

/** mm between the points that hold a station. */
const STATION_STEP_MM = 1;

/**
 * What is added to the loft inside the channel: the surface that bends least while it is 0 on the centre line and on the
 * stations as far as they are held, and takes height and slope of the loft away along the channel.
 *
 * Fault: `arch.fair` when the conditions leave it undetermined. Method: docs/methods/arching.md, step 6.
 */
export function fairCorrection(
  loft: Loft,
  channel: ChannelLine,
  stations: readonly ArchStation[],
  bodyLengthMm: number,
): Checked<FairNet> {
  const scale = bodyLengthMm / REFERENCE_LENGTH_MM;
  const { points } = channel.line;
  const stepMm = STEP_MM * scale;
  const marginMm = MARGIN_MM * scale;
  const widestMm = Math.max(...points.map(({ x }) => x)) + marginMm;
  const fromMm = loft.longArch.startMm - marginMm;
  const grid: NetGrid = {
    stepMm,
    fromMm,
    columns: Math.ceil(widestMm / stepMm),
    rows: Math.ceil((loft.longArch.endMm + marginMm - fromMm) / stepMm),
  };
  const inside = insideTest(channel);
  const net = fairNet(grid, (x, y) => (inside(x, y) ? 1 : OUTSIDE_WEIGHT), [
    ...channelConditions(loft, channel, scale),
    ...stations.flatMap((station) => stationConditions(station)),
  ]);
  return net
    ? accept(net)
    : refuse({
        code: 'arch.fair',
        at: 'stations',
        found: 'stations and a channel that no smooth surface joins',
        need: 'stations that stand apart, and a channel inside the edge',
        remedy: 'move the stations apart',
      });
}

/** Height and slope across the channel become 0 there. Scaled so that greater bodies come out alike. */
function channelConditions(loft: Loft, channel: ChannelLine, scale: number): readonly NetCondition[] {
  return channel.line.points.flatMap(({ x, y, headingRad }): readonly NetCondition[] => {
    const inward = { x: -Math.sin(headingRad), y: Math.cos(headingRad) };
    const at = loftAt(loft, x, y);
    const slope = at.slopeX * inward.x + at.slopeY * inward.y;
    return [
      { x, y, value: -at.zMm, weight: CHANNEL_WEIGHT / scale ** 3 },
      { x, y, along: inward, value: -slope, weight: CHANNEL_WEIGHT / scale },
    ];
  });
}

function stationConditions(station: ArchStation): readonly NetCondition[] {
  const held = station.heldShare * station.halfWidthMm;
  const count = Math.ceil(held / STATION_STEP_MM);
  return Array.from({ length: count }, (_, index) => ({
    x: (held * (index + 1)) / count,
    y: station.yMm,
    value: 0,
    weight: STATION_WEIGHT,
  }));
}

/** Whether a point with x ≥ 0 lies inside the channel, by the crossings of its row, which are found once a row. */
function insideTest(channel: ChannelLine): (x: number, y: number) => boolean {
  const rows = new Map<number, readonly number[]>();
  return (x, y) => {
    const known = rows.get(y);
    const crossings = known ?? crossingsAt(channel, y);
    if (!known) rows.set(y, crossings);
    return crossings.filter((crossing) => crossing > x).length % 2 === 1;
  };
}

function crossingsAt(channel: ChannelLine, y: number): readonly number[] {
  const { points } = channel.line;
  return points.flatMap((to, index) => {
    const from = points[index - 1];
    if (!from || from.y > y === to.y > y) return [];
    return [from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)];
  });
}
