import { hypot, point } from '../../base/index.ts';
import { containsPoint, nearestOn } from '../../curve/index.ts';
import { THICKNESS_ZONES, type ThicknessZone } from '../../knowledge/index.ts';
import { fullDepthAt, type HollowPlate } from './hollow.ts';
import { placesInArea } from './plateArea.ts';
import { isEven, thicknessAt } from './thicknessMap.ts';

/** A part of a plate whose least thickness a maker watches. */
export type Zone = ThicknessZone;

/** What a zone is thinned to at its thinnest place. Plate frame; where both halves are alike, on the right one. */
export interface ZoneThickness {
  readonly zone: Zone;
  readonly leastMm: number;
  readonly x: number;
  readonly y: number;
}

/** A place where a plate cannot be what its map asks for. */
export interface HollowTrouble {
  /** `too-low`: the arch is lower than its thickness; `too-round`: the outside is rounder than the thickness. */
  readonly kind: 'too-low' | 'too-round';
  readonly zone: Zone;
  readonly x: number;
  readonly y: number;
  readonly askedMm: number;
  /** What is left where the inside is flat with the gluing face; NaN where it is too round. */
  readonly leftMm: number;
}

export interface ThicknessSurvey {
  /** Whether a place stands for its mirror image too. */
  readonly halves: 'alike' | 'apart';
  readonly zones: readonly ZoneThickness[];
  /** The worst place of each kind. */
  readonly troubles: readonly HollowTrouble[];
}

/** Shares of the body length: between the places that are looked at, the middle's radius, the channel's band. */
const STEP_SHARE = 4 / 355;
const MIDDLE_SHARE = 25 / 355;
const CHANNEL_SHARE = 10 / 355;

/**
 * The thinnest place of every zone, and where the plate cannot be what is asked, looked for all over the hollow; the wood under
 * post and bar is looked at for itself too.
 */
export function surveyThickness(plate: HollowPlate): ThicknessSurvey {
  const { arch, thickness, line } = plate;
  const length = arch.bodyLengthMm;
  const stepMm = STEP_SHARE * length;
  const zones = new Map<Zone, ZoneThickness>();
  const seen = (zone: Zone, leastMm: number, x: number, y: number): void => {
    if (!(leastMm >= (zones.get(zone)?.leastMm ?? Number.POSITIVE_INFINITY)))
      zones.set(zone, { zone, leastMm, x, y });
  };
  for (const area of thickness.areas)
    for (const { x, y } of placesInArea(area)) seen(area.name, thicknessAt(thickness, x, y), x, y);
  // Halves that are alike are looked at once.
  const fromMm = isEven(thickness) ? 0 : -stepMm * Math.floor(length / 2 / stepMm);
  const troubles = new Map<HollowTrouble['kind'], HollowTrouble>();
  for (let y = stepMm; y < length; y += stepMm)
    for (let x = fromMm; x < length / 2; x += stepMm) {
      const at = point<'body'>(x, y);
      if (!containsPoint(line, at)) continue;
      const askedMm = thicknessAt(thickness, x, y);
      const zone = zoneOf(plate, x, y, nearestOn(line, at).distanceMm);
      seen(zone, askedMm, x, y);
      const trouble = troubleAt(plate, zone, x, y, askedMm);
      const worst = trouble && troubles.get(trouble.kind);
      if (trouble && !(worst && worst.askedMm - worst.leftMm >= trouble.askedMm - trouble.leftMm))
        troubles.set(trouble.kind, trouble);
    }
  return {
    halves: isEven(thickness) ? 'alike' : 'apart',
    zones: THICKNESS_ZONES.flatMap((zone) => zones.get(zone) ?? []),
    troubles: [...troubles.values()],
  };
}

function zoneOf({ arch, thickness }: HollowPlate, x: number, y: number, insideMm: number): Zone {
  const length = arch.bodyLengthMm;
  if (insideMm < CHANNEL_SHARE * length) return 'channel';
  if (hypot(x, y - thickness.middleYMm) < MIDDLE_SHARE * length) return 'middle';
  const corner = (name: string): number => arch.stations.find((station) => station.name === name)?.yMm ?? 0;
  if (y < corner('lowerCorner')) return 'lowerBout';
  return y < corner('upperCorner') ? 'waist' : 'upperBout';
}

/** mm of height that an inside may lack before it counts: a scraper's last stroke. */
const UNNOTICED_MM = 0.05;

function troubleAt(
  plate: HollowPlate,
  zone: Zone,
  x: number,
  y: number,
  askedMm: number,
): HollowTrouble | null {
  const { zMm } = fullDepthAt(plate, x, y);
  if (Number.isNaN(zMm)) return { kind: 'too-round', zone, x, y, askedMm, leftMm: Number.NaN };
  if (zMm >= -UNNOTICED_MM) return null;
  return { kind: 'too-low', zone, x, y, askedMm, leftMm: askedMm + zMm };
}
