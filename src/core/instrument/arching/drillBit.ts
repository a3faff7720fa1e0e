import { type Point, point } from '../../base/index.ts';

/** A bit that drills to depth, mm. */
export interface DrillBit {
  readonly diameterMm: number;
  /** How far the point stands out beyond the full width; 0 for a flat end. Counted as a cone, which no point exceeds. */
  readonly pointMm: number;
}

/** Directions and shares of the radius in which the wood under a bit is looked at. */
const DIRECTIONS = 16;
const RINGS = [0.25, 0.5, 0.75, 1] as const;

/** mm. What so smooth a surface can rise between the places looked at, and more. */
const BETWEEN_MM = 0.05;

/**
 * The lowest height that the tip of a bit may reach over a place, so that no part of the bit goes below `floorAt`: mm,
 * in the frame of that floor. NaN where the floor has no height under the bit.
 */
export function lowestTip(
  floorAt: (at: Point<'body'>) => number,
  at: Point<'body'>,
  { diameterMm, pointMm }: DrillBit,
): number {
  let least = floorAt(at);
  for (const ring of RINGS)
    for (let step = 0; step < DIRECTIONS; step++) {
      const angle = (2 * Math.PI * step) / DIRECTIONS;
      const reach = (ring * diameterMm) / 2;
      const floor = floorAt(point(at.x + reach * Math.cos(angle), at.y + reach * Math.sin(angle)));
      least = Math.max(least, floor - ring * pointMm);
    }
  return least + BETWEEN_MM;
}
