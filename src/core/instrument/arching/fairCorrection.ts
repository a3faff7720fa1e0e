import { accept, type Checked, cos, power, refuse, sin } from '../../base/index.ts';
import {
  type FairNet,
  fairNet,
  type Loft,
  loftAt,
  type NetCondition,
  type NetFrame,
  type NetGrid,
  type NetPlace,
  netFrame,
  solveNet,
} from '../../surface/index.ts';
import type { ChannelLine } from './channelLine.ts';
import { heldShare, type StationPlace } from './stations.ts';

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

/** The fair correction of every arch over one channel and its stations: all that does not depend on their heights. */
export interface CorrectionFrame {
  readonly net: NetFrame;
  readonly channel: ChannelLine;
  readonly stations: readonly StationPlace[];
  readonly bodyLengthMm: number;
  /** How much longer the body is than the one that the lengths here are for. */
  readonly scale: number;
}

/**
 * What {@link fairCorrection} needs of channel and stations; the costly part, the same for both plates and for every rise,
 * fullness and long arch.
 *
 * Fault: `arch.fair` when the conditions leave the correction undetermined. Method: docs/methods/arching.md, step 6.
 */
export function correctionFrame(
  channel: ChannelLine,
  stations: readonly StationPlace[],
  bodyLengthMm: number,
): Checked<CorrectionFrame> {
  const scale = bodyLengthMm / REFERENCE_LENGTH_MM;
  const { points } = channel.line;
  const stepMm = STEP_MM * scale;
  const marginMm = MARGIN_MM * scale;
  const widestMm = Math.max(...points.map(({ x }) => x)) + marginMm;
  const fromMm = (points[0]?.y ?? 0) - marginMm;
  const toMm = (points.at(-1)?.y ?? bodyLengthMm) + marginMm;
  const grid: NetGrid = {
    stepMm,
    fromMm,
    columns: Math.ceil(widestMm / stepMm),
    rows: Math.ceil((toMm - fromMm) / stepMm),
  };
  const net = netFrame(grid, bendingWeight(channel), [
    ...channelPlaces(channel, scale),
    ...stations.flatMap((station) => stationPlaces(station)),
  ]);
  return net
    ? accept({ net, channel, stations, bodyLengthMm, scale })
    : refuse({
        code: 'arch.fair',
        at: 'stations',
        found: 'stations and a channel that no smooth surface joins',
        need: 'stations that stand apart, and a channel inside the edge',
        remedy: 'move the stations apart',
      });
}

/**
 * What is added to the loft inside the channel: the surface that bends least while it is 0 on the centre line and on the
 * stations as far as they are held, and takes height and slope of the loft away along the channel.
 */
export function fairCorrection({ net, channel }: CorrectionFrame, loft: Loft): FairNet {
  const values = new Float64Array(net.places);
  channel.line.points.forEach(({ x, y, headingRad }, index) => {
    const at = loftAt(loft, x, y);
    values[2 * index] = -at.zMm;
    values[2 * index + 1] = at.slopeX * sin(headingRad) - at.slopeY * cos(headingRad);
  });
  return solveNet(net, values);
}

/**
 * A net over the frame's grid that bends least while it is 0 and level along the channel and goes near more values at
 * places inside it, free on the centre line; null where these leave it undetermined.
 */
export function netInChannel(
  { net, channel, scale }: CorrectionFrame,
  conditions: readonly NetCondition[],
): FairNet | null {
  const level = channelPlaces(channel, scale).map((place) => ({ ...place, value: 0 }));
  return fairNet(net.grid, bendingWeight(channel), [...level, ...conditions], 'free');
}

function bendingWeight(channel: ChannelLine): (x: number, y: number) => number {
  const inside = insideTest(channel);
  return (x, y) => (inside(x, y) ? 1 : OUTSIDE_WEIGHT);
}

/** Height and slope across the channel become 0 there. Scaled so that greater bodies come out alike. */
function channelPlaces(channel: ChannelLine, scale: number): readonly NetPlace[] {
  return channel.line.points.flatMap(({ x, y, headingRad }): readonly NetPlace[] => {
    const inward = { x: -sin(headingRad), y: cos(headingRad) };
    return [
      { x, y, weight: CHANNEL_WEIGHT / power(scale, 3) },
      { x, y, along: inward, weight: CHANNEL_WEIGHT / scale },
    ];
  });
}

function stationPlaces({ name, halfWidthMm, yMm }: StationPlace): readonly NetPlace[] {
  const held = heldShare(name) * halfWidthMm;
  const count = Math.ceil(held / STATION_STEP_MM);
  return Array.from({ length: count }, (_, index) => ({
    x: (held * (index + 1)) / count,
    y: yMm,
    weight: STATION_WEIGHT,
  }));
}

/** Whether a point with x ≥ 0 lies inside the channel, by the crossings of its row, which are found once a row. */
function insideTest({ line }: ChannelLine): (x: number, y: number) => boolean {
  const { xs, ys } = line.grid;
  const rows = new Map<number, readonly number[]>();
  const crossingsOf = (y: number): readonly number[] => {
    const known = rows.get(y);
    const crossings = known ?? crossingsAt(xs, ys, y);
    if (!known) rows.set(y, crossings);
    return crossings;
  };
  // Places are asked along a row, several in turn.
  let lastY = Number.NaN;
  let crossings: readonly number[] = [];
  return (x, y) => {
    if (y !== lastY) {
      crossings = crossingsOf(y);
      lastY = y;
    }
    let beyond = 0;
    for (const crossing of crossings) if (crossing > x) beyond++;
    return beyond % 2 === 1;
  };
}

function crossingsAt(xs: Float64Array, ys: Float64Array, y: number): readonly number[] {
  const found: number[] = [];
  let fromY = ys[0] as number;
  for (let to = 1; to < ys.length; to++) {
    const toY = ys[to] as number;
    if (fromY > y !== toY > y) {
      const fromX = xs[to - 1] as number;
      found.push(fromX + (((xs[to] as number) - fromX) * (y - fromY)) / (toY - fromY));
    }
    fromY = toY;
  }
  return found;
}
