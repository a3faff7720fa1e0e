import type { PlateArch } from './archedPlate.ts';
import { type ArchProfile, longProfile, stationProfile } from './archProfile.ts';

/** One plate as it stands in the instrument's record for other programs: millimetres, heights from the gluing face. */
export interface PlateRecord {
  readonly channelZ: number;
  readonly archHeight: number;
  readonly stations: readonly {
    readonly name: string;
    readonly y: number;
    readonly halfWidth: number;
    readonly rise: number;
    readonly fullness: number;
    /** The finished outside from edge to edge, [x, z]. */
    readonly profile: readonly (readonly [number, number])[];
  }[];
  /** Heights that the surface is drawn to and how far each stands over it, [x, y, z, mm]; only where there are any. */
  readonly measuredHeights?: readonly (readonly [number, number, number, number])[];
  /** The finished outside along the centre line, [y, z]. */
  readonly longArch: readonly (readonly [number, number])[];
}

/** The record of a plate, profiles sampled every quarter millimetre or finer. */
export function plateRecord(arch: PlateArch): PlateRecord {
  return {
    channelZ: arch.channelZMm,
    archHeight: arch.archHeightMm,
    stations: arch.stations.map((station) => ({
      name: station.name,
      y: station.yMm,
      halfWidth: station.halfWidthMm,
      rise: station.riseMm,
      fullness: station.fullness,
      profile: pairs(stationProfile(arch, station, 'finished')),
    })),
    ...(arch.pull && {
      measuredHeights: arch.pull.left.map(
        ({ xMm, yMm, zMm, leftMm }) => [xMm, yMm, zMm, Math.round(leftMm * 1000) / 1000] as const,
      ),
    }),
    longArch: pairs(longProfile(arch, 'finished')),
  };
}

function pairs(profile: ArchProfile): readonly (readonly [number, number])[] {
  return profile.points.map(({ x, y }) => [x, y] as const);
}
