import type { ArchReading, Measurements } from '../../design/index.ts';
import { STATION_NAMES, type StationName } from '../../instrument/index.ts';

/** What a maker calls the stations. */
export const STATION_WORDS: Readonly<Record<StationName, string>> = {
  lowerBout: 'lower bout',
  lowerCorner: 'lower corners',
  waist: 'waist',
  upperCorner: 'upper corners',
  upperBout: 'upper bout',
};

/** Where the stations lie as shares of the body length: those of our own default outline, found on its channel line. */
const SHARES: Readonly<Record<StationName, number>> = {
  lowerBout: 0.213,
  lowerCorner: 0.388,
  waist: 0.56,
  upperCorner: 0.675,
  upperBout: 0.809,
};

/** Share of the body length. Farther from every station a reading belongs to none. */
const NEAR_SHARE = 0.05;

/** The station that a reading was taken at, or null where its height above the lower end is near none of the five. */
export function stationOf({ station }: ArchReading, { values }: Measurements): StationName | null {
  if (typeof station === 'string') return station;
  const length = values.bodyLength?.value;
  if (length === undefined) return null;
  const away = (name: StationName) => Math.abs(station.yMm / length - SHARES[name]);
  const nearest = STATION_NAMES.reduce((best, name) => (away(name) < away(best) ? name : best));
  return away(nearest) <= NEAR_SHARE ? nearest : null;
}
