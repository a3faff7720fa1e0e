import type { BodyOutline } from './bodyOutline.ts';

/** A cross line that makers mark on form and templates. */
export interface Station {
  readonly name: 'lower bout' | 'lower corners' | 'bridge' | 'waist' | 'upper corners' | 'upper bout';
  /** Height above the lower end of the body. */
  readonly stationMm: number;
}

/** The cross lines from the lower end upward as they come; the bridge line lies one stop below the upper end. */
export function stationsOf(outline: BodyOutline, stopMm: number): readonly Station[] {
  const stations: Station[] = [
    { name: 'lower bout', stationMm: outline.lowerBout.stationMm },
    { name: 'lower corners', stationMm: outline.lowerCorner.stationMm },
    { name: 'bridge', stationMm: outline.bodyLengthMm - stopMm },
    { name: 'waist', stationMm: outline.waist.stationMm },
    { name: 'upper corners', stationMm: outline.upperCorner.stationMm },
    { name: 'upper bout', stationMm: outline.upperBout.stationMm },
  ];
  return stations.toSorted((a, b) => a.stationMm - b.stationMm);
}
