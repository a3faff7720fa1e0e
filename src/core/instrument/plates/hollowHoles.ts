import type { Point } from '../../base/index.ts';
import { containsPoint, nearestOn } from '../../curve/index.ts';
import {
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
  const spared = { ...plate, thickness: sparingAreas(plate.thickness) };
  // The bit comes from the inside: upside down, the wood it must not touch is a floor under the gluing face.
  const floorAt = ({ x, y }: Point<'body'>): number => insideAllowanceMm - insideOfBothHalves(spared, x, y);
  const clearMm = drill.diameterMm / 2 + rampMm;
  return drillGrid(arch.bodyLengthMm, drill.pitchMm).flatMap((at) => {
    if (!containsPoint(line, at) || nearestOn(line, at).distanceMm < clearMm) return [];
    const depthMm = SETTING_MM * Math.floor(-lowestTip(floorAt, at, drill) / SETTING_MM);
    // NaN, where the plate has no inside, is no depth either.
    if (!(depthMm >= LEAST_DEPTH_MM)) return [];
    return [{ at, depthMm, leftMm: plateHeight(arch, at.x, at.y, 'finished') - depthMm }];
  });
}

/** Share of the body length, 10 mm on a violin: over less than this an inside would bend more tightly than bits are looked at. */
const SPARED_SHARE = 10 / 355;

/**
 * The map with the wood that post and bar add spared generously: all of it as far as its own reach goes, where that is
 * short, and then fading gently; nothing thinner than the map without it.
 */
function sparingAreas(thickness: ThicknessMap): ThicknessMap {
  const gentleMm = SPARED_SHARE * thickness.arch.bodyLengthMm;
  return {
    ...thickness,
    areas: thickness.areas.map((area) => {
      if (area.extraMm <= 0) return { ...area, extraMm: 0 };
      if (area.reachMm >= gentleMm) return area;
      return { ...area, halfWidthMm: area.halfWidthMm + area.reachMm, reachMm: gentleMm };
    }),
  };
}
