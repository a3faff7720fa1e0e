import type { Point } from '../../base/index.ts';
import { closeChain, containsPoint, joinChains } from '../../curve/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { lowestTip } from './drillBit.ts';
import { drillGrid, LEAST_DEPTH_MM, SETTING_MM } from './drillGrid.ts';
import { edgeDistances } from './edgeShape.ts';
import { plateHeight } from './plateHeight.ts';
import type { RoughNumbers } from './roughNumbers.ts';

/** A hole to drill to depth before gouging, on the treble half or its mirror image. */
export interface DrillPoint {
  readonly at: Point<'body'>;
  /** Height of the tip above the gluing face when the hole is deep enough: what a stop on the drill's table is set to. */
  readonly leftMm: number;
  /** From the upper face of the board to the tip. */
  readonly depthMm: number;
}

/** mm of wood between a hole and the edge, so that a bit does not break out. */
const FROM_EDGE_MM = 2;

/**
 * The holes of a plate on an even grid about the centre line and the middle of the body, treble half, row by row from
 * the lower end. No part of the bit comes below the arched outside and its allowance, whatever its point.
 */
export function drillPoints(arch: PlateArch, rough: RoughNumbers): readonly DrillPoint[] {
  const { pitchMm, diameterMm } = rough.drill;
  const treble = closeChain(joinChains(...arch.edge));
  const floorAt = ({ x, y }: Point<'body'>): number => plateHeight(arch, x, y, 'arched') + rough.allowanceMm;
  return drillGrid(arch.bodyLengthMm, pitchMm).flatMap((at) => {
    if (!containsPoint(treble, at)) return [];
    if (Math.min(...edgeDistances(arch.edge, at)) < diameterMm / 2 + FROM_EDGE_MM) return [];
    const leftMm = SETTING_MM * Math.ceil(lowestTip(floorAt, at, rough.drill) / SETTING_MM);
    const depthMm = rough.boardMm - leftMm;
    return depthMm >= LEAST_DEPTH_MM ? [{ at, leftMm, depthMm }] : [];
  });
}
