import { accept, type Checked, cos, type Finding, refuse } from '../../base/index.ts';
import { STATION_NAMES, type StationName } from './archNumbers.ts';
import { type ChannelCorner, type ChannelLine, cornerPoint } from './channelLine.ts';
import { type LinePoint, placesWhere } from './smoothLine.ts';

/** A place across the plate: its height above the lower end and the channel's half width there. */
export interface StationPlace {
  readonly name: StationName;
  readonly yMm: number;
  readonly halfWidthMm: number;
  /** The channel runs straight along the body here, so the width is a true extreme. */
  readonly level: boolean;
}

/** At the corners the wing outside this share of the half width is what the surface gives; no unit, chosen by us. */
const CORNER_HELD_SHARE = 0.7;

/** Share of a station's half width, from the middle, on which the surface is held to its formula. */
export function heldShare(name: StationName): number {
  return name === 'lowerCorner' || name === 'upperCorner' ? CORNER_HELD_SHARE : 1;
}

/** rad. A moved station on a channel that leaves the body's direction by more than this stands on a corner's flank. */
const STEEP_RAD = 0.6;

/**
 * The five stations of a plate, from the lower end up, found on the channel line: widest in the bouts, narrowest at
 * the waist, and in the corners the widest place of the rounding (its middle when it has none). `movedMm` puts
 * some of them elsewhere.
 *
 * Fault: `arch.stations` (out of order or off the plate).
 */
export function findStations(
  channel: ChannelLine,
  movedMm: Readonly<Partial<Record<StationName, number>>> = {},
): Checked<{ readonly places: readonly StationPlace[]; readonly findings: readonly Finding[] }> {
  const found: Record<StationName, LinePoint> = {
    lowerBout: extreme(channel, 0, channel.lastOf[0], 'widest'),
    lowerCorner: cornerStation(channel.lowerCorner),
    waist: extreme(channel, channel.lastOf[1], channel.lastOf[2], 'narrowest'),
    upperCorner: cornerStation(channel.upperCorner),
    upperBout: extreme(channel, channel.lastOf[3], channel.lastOf[4], 'widest'),
  };
  const findings: Finding[] = [];
  const places = STATION_NAMES.map((name): StationPlace => {
    const moved = movedMm[name];
    const at = moved === undefined ? found[name] : outermostAt(channel, moved);
    const lean = Math.abs((at?.headingRad ?? 0) - Math.PI / 2);
    if (moved !== undefined && at && lean > STEEP_RAD) findings.push(steepFinding(name, moved));
    return {
      name,
      yMm: at?.y ?? Number.NaN,
      halfWidthMm: at?.x ?? Number.NaN,
      level: lean < LEVEL_RAD,
    };
  });
  const ordered = places.every(({ yMm }, index) => yMm > (places[index - 1]?.yMm ?? 0));
  if (!ordered)
    return refuse({
      code: 'arch.stations',
      at: 'stations',
      found: `stations at ${places.map(({ yMm }) => yMm.toFixed(1)).join(', ')} mm above the lower end`,
      need: 'five heights on the plate, each above the one before',
      remedy: 'move the stations back between the ends of the plate',
    });
  return accept({ places, findings });
}

/** rad. Nearer than this to the body's direction, the width is an extreme for every purpose of the wood. */
const LEVEL_RAD = 0.001;

/** The outermost place of the channel at a height above the lower end, or none when the channel does not reach it. */
function outermostAt(channel: ChannelLine, yMm: number): LinePoint | undefined {
  const places = placesWhere(channel.line, ({ y }) => y - yMm);
  return places.reduce<LinePoint | undefined>(
    (best, place) => (best && best.x >= place.x ? best : place),
    undefined,
  );
}

function extreme(channel: ChannelLine, first: number, last: number, kind: 'widest' | 'narrowest'): LinePoint {
  const places = placesWhere(channel.line, ({ headingRad }) => cos(headingRad), first, last);
  const ends = [channel.line.points[first], channel.line.points[last]].filter((place) => place !== undefined);
  const candidates = places.length > 0 ? places : ends;
  return candidates.reduce((best, place) =>
    (kind === 'widest' ? place.x > best.x : place.x < best.x) ? place : best,
  );
}

function cornerStation(corner: ChannelCorner): LinePoint {
  const { fromRad, toRad } = corner;
  // Headings are only known to whole turns.
  const turns = Math.round((fromRad - Math.PI / 2) / (2 * Math.PI));
  const upright = Math.PI / 2 + 2 * Math.PI * turns;
  const widest = [upright, upright + 2 * Math.PI].find((angle) => angle > fromRad && angle < toRad);
  return cornerPoint(corner, widest ?? (fromRad + toRad) / 2);
}

function steepFinding(name: StationName, yMm: number): Finding {
  return {
    weight: 'caution',
    code: 'arch.station-on-flank',
    at: name,
    found: `the station at ${yMm.toFixed(1)} mm stands where the channel runs away into a corner`,
    need: 'a station where the channel runs nearly along the body',
    remedy: 'move it out of the corner; until then the arch there follows the neighbouring stations',
  };
}
