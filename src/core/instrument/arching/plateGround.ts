import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import type { FairSpline } from '../../surface/index.ts';
import type { StationName } from './archNumbers.ts';
import { squaredBodyWidth } from './bodyWidth.ts';
import { type ChannelLine, channelLine } from './channelLine.ts';
import { type EdgeMembers, edgeMembers } from './edgeShape.ts';
import { type CorrectionFrame, correctionFrame } from './fairCorrection.ts';
import { findStations, type StationPlace } from './stations.ts';

/** What an arching stands on before any height is known: channel, edge and stations. Both plates may share one. */
export interface PlateGround {
  readonly bodyLengthMm: number;
  /** The values that it was laid out from. */
  readonly channelMm: Readonly<Record<ChannelValue, number>>;
  readonly channel: ChannelLine;
  readonly edge: EdgeMembers;
  readonly places: readonly StationPlace[];
  /** W² over y. */
  readonly squaredHalfWidth: FairSpline;
  readonly correction: CorrectionFrame;
  readonly findings: readonly Finding[];
}

const CHANNEL_VALUES = [
  'channelAtBouts',
  'channelAtWaist',
  'channelAtCorners',
  'channelCornerRounding',
] as const satisfies readonly ValueName[];

type ChannelValue = (typeof CHANNEL_VALUES)[number];

/**
 * The ground of both plates from a design's channel values and its outline.
 *
 * Faults: `arch.missing`, those of the channel (`channel.…`), `arch.stations`, `arch.fair`.
 */
export function plateGround(
  values: Design['values'],
  half: HalfOutline,
  stationsMm: Readonly<Partial<Record<StationName, number>>> = {},
): Checked<PlateGround> {
  const missing = CHANNEL_VALUES.filter((name) => !Number.isFinite(values[name]?.value));
  if (missing.length > 0) return refuse(...missing.map(missingFault));
  const channelMm = channelValues(values);
  const drawn = channelLine(half, {
    boutsMm: channelMm.channelAtBouts,
    waistMm: channelMm.channelAtWaist,
    cornersMm: channelMm.channelAtCorners,
    roundingMm: channelMm.channelCornerRounding,
  });
  if (!drawn.ok) return drawn;
  const channel = drawn.value;
  const found = findStations(channel, stationsMm);
  if (!found.ok) return found;
  const { places, findings } = found.value;
  const bodyLengthMm = half.upperBout.vertices.at(-1)?.y ?? channel.line.points.at(-1)?.y ?? 0;
  const width = squaredBodyWidth(channel, places, bodyLengthMm);
  if (!width.ok) return width;
  const correction = correctionFrame(channel, places, bodyLengthMm);
  if (!correction.ok) return correction;
  return accept({
    bodyLengthMm,
    channelMm,
    channel,
    edge: edgeMembers(half),
    places,
    squaredHalfWidth: width.value,
    correction: correction.value,
    findings,
  });
}

/** Whether a ground was laid out from the channel that these values ask for. */
export function isGroundOf(ground: PlateGround, values: Design['values']): boolean {
  return CHANNEL_VALUES.every((name) => values[name]?.value === ground.channelMm[name]);
}

function channelValues(values: Design['values']): Readonly<Record<ChannelValue, number>> {
  const of = (name: ChannelValue): number => values[name]?.value ?? Number.NaN;
  return {
    channelAtBouts: of('channelAtBouts'),
    channelAtWaist: of('channelAtWaist'),
    channelAtCorners: of('channelAtCorners'),
    channelCornerRounding: of('channelCornerRounding'),
  };
}

function missingFault(name: ChannelValue): Fault {
  return {
    code: 'arch.missing',
    at: name,
    found: 'no value',
    need: 'a number, to draw the arching',
    remedy: 'give it, or draft the design again so that it is filled from the habits of the trade',
  };
}
