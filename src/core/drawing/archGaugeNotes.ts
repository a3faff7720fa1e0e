import type { EdgeState, GaugeStuff, PlateArch } from '../instrument/index.ts';
import type { ArchGaugeOptions, GaugeStand } from './archGaugeOptions.ts';

/** Stands wherever an arch is cut to a gauge. */
export const EDGE_TOOLS_CAUTION =
  'Gouges, planes, scrapers, knives, routers and lasers can hurt: clamp the plate, keep both hands behind the edge, wear eye protection, draw off dust and fumes, and follow the manual of the machine.';

/** mm. A square edge that rides by less is as good as a bevelled one: paper and kerf are coarser. */
const NO_RIDE_MM = 0.02;

/** What stands beside a gauge on its sheet. A stand of null is the long gauge. */
export function gaugeNotes(
  arch: PlateArch,
  stand: GaugeStand | null,
  state: EdgeState,
  options: ArchGaugeOptions,
): readonly string[] {
  const place = stand?.place;
  const made = `Made for stuff ${mm(options.gaugeThicknessMm)} thick.`;
  const where = stand
    ? `The lettered face stands on the station line, ${mm(stand.place.yMm)} above the lower end; the stuff lies behind it. ${squareEdgeText(stand.stuff, options)}`
    : 'Stands on the centre line. Thick stuff is bevelled off to one face, and that face is held on the line.';
  const wing =
    place && place.heldShare < 1
      ? [
          `Near a corner the arch keeps to its formula over the inner ${Math.round(100 * place.heldShare)} % of its half width; outside, the gauge follows the surface of the plate.`,
        ]
      : [];
  return [
    ...(options.feet === 'bench' ? [benchText(arch, stand, state)] : []),
    restText(arch, state, options),
    `${made} ${where}`,
    ...wing,
    'Light under the gauge shows where the wood is already low; where it rides, wood is still to go. Common practice.',
    EDGE_TOOLS_CAUTION,
  ];
}

function restText(arch: PlateArch, state: EdgeState, { feet }: ArchGaugeOptions): string {
  const { edgeHeightMm, edgeLandMm, crestInsetMm } = arch.numbers;
  const rests = feet === 'bench' ? 'Touches' : 'Rests on';
  return state === 'arched'
    ? `${rests} the flat edge, ${mm(edgeHeightMm)} thick, before the channel is cut: the arch is right when it comes down to the flat all along the gauge. At least ${mm(edgeLandMm)} stays flat until the purfling is in.`
    : `${rests} the crest of the finished edge, ${mm(crestInsetMm)} in from the edge and ${mm(edgeHeightMm)} thick, and reaches down into the finished channel.`;
}

function benchText(arch: PlateArch, stand: GaugeStand | null, state: EdgeState): string {
  const level =
    state === 'arched'
      ? 'where the edge is still too thick the gauge rocks on it'
      : 'a gauge that rocks on the crest says that the edge is too thick';
  const button =
    !stand && arch.plate === 'back' ? ' At the neck end it steps over the button and stands beyond it.' : '';
  return `Stands over the plate from the bench: lay the plate flat on its gluing face and stand both feet on the same surface, beside it; ${level}.${button}`;
}

/** How the working edge is to be made, and what a square one would read wrongly. */
export function squareEdgeText({ rideMm, rideAtMm }: GaugeStuff, { workingEdge }: ArchGaugeOptions): string {
  const most = `${rideMm.toFixed(2)} mm, ${rideAtMm === 0 ? 'on the centre line' : `${rideAtMm.toFixed(0)} mm from the centre line`}`;
  if (rideMm < NO_RIDE_MM)
    return `Its edge may stay square: nowhere within its thickness does the plate rise more than ${NO_RIDE_MM} mm above the line.`;
  return workingEdge === 'square'
    ? `Its edge stays square and clears the plate with its whole thickness: at the lettered face it stands off the finished wood by up to ${most}.`
    : `The stuff is bevelled off behind the working edge: left square it would ride on the wood behind its face by up to ${most}.`;
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
