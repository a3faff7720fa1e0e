import type { Point } from '../../base/index.ts';
import { containsPoint, nearestOn } from '../../curve/index.ts';
import {
  BETWEEN_MM,
  drillGrid,
  LEAST_DEPTH_MM,
  lowestTip,
  plateHeight,
  type RoughNumbers,
  SETTING_MM,
} from '../arching/index.ts';
import { insideOfBothHalves } from './bothHalves.ts';
import type { HollowPlate } from './hollow.ts';
import type { ThicknessMap } from './thicknessMap.ts';

/** A hole to drill to depth from the gluing face before the inside is gouged, on either half. */
export interface HollowHole {
  readonly at: Point<'body'>;
  /** From the gluing face to the tip. */
  readonly depthMm: number;
  /** From the tip straight on to the finished outside: what a calliper finds under the hole. */
  readonly leftMm: number;
}

/**
 * The holes that hollow a plate, on the grid of those for its outside, one half, row by row from the lower end; the other
 * half takes them too. No part of the bit comes nearer than the allowance to the finished inside of either half, whatever its
 * point; all of it stays where the hollow has its full depth, off the slope that goes up to linings and blocks.
 */
export function hollowHoles(plate: HollowPlate, rough: RoughNumbers): readonly HollowHole[] {
  const { arch, line, rampMm } = plate;
  const { drill, insideAllowanceMm } = rough;
  // The bit comes from the inside: upside down, the wood it must not touch is a floor under the gluing face.
  const floorAt = ({ x, y }: Point<'body'>): number => insideAllowanceMm - insideOfBothHalves(plate, x, y);
  const betweenMm = looksEvery(plate.thickness);
  const clearMm = drill.diameterMm / 2 + rampMm;
  return drillGrid(arch.bodyLengthMm, drill.pitchMm).flatMap((at) => {
    if (!containsPoint(line, at) || nearestOn(line, at).distanceMm < clearMm) return [];
    const depthMm = SETTING_MM * Math.floor(-lowestTip(floorAt, at, drill, betweenMm) / SETTING_MM);
    // NaN, where the plate has no inside, is no depth either.
    if (!(depthMm >= LEAST_DEPTH_MM)) return [];
    return [{ at, depthMm, leftMm: plateHeight(arch, at.x, at.y, 'finished') - depthMm }];
  });
}

/** Parts of the reach of post or bar: so often an inside is looked at where its thickness changes within it. */
const LOOKS_IN_REACH = 4;

/** mm between two places at which the inside is looked at: wood added at post or bar over a short reach bends it tightly. */
function looksEvery({ areas }: ThicknessMap): number {
  const reaches = areas.flatMap(({ extraMm, reachMm }) => (extraMm === 0 ? [] : [reachMm / LOOKS_IN_REACH]));
  return Math.min(BETWEEN_MM, ...reaches);
}
