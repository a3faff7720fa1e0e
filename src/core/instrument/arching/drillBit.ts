import { cos, type Point, point, sin } from '../../base/index.ts';

/** A bit that drills to depth, mm. */
export interface DrillBit {
  readonly diameterMm: number;
  /** How far the point stands out beyond the full width; 0 for a flat end. Counted as a cone, which no point exceeds. */
  readonly pointMm: number;
}

/** mm between two places at which the wood under a bit is looked at, about. */
const BETWEEN_MM = 1.5;

/** mm. What so smooth a surface can rise between the places looked at, and more. */
const RISE_MM = 0.05;

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
  const radiusMm = diameterMm / 2;
  const rings = Math.ceil(radiusMm / BETWEEN_MM);
  for (let ring = 1; ring <= rings; ring++) {
    const reach = (radiusMm * ring) / rings;
    const steps = Math.ceil((2 * Math.PI * reach) / BETWEEN_MM);
    for (let step = 0; step < steps; step++) {
      const angle = (2 * Math.PI * step) / steps;
      const floor = floorAt(point(at.x + reach * cos(angle), at.y + reach * sin(angle)));
      least = Math.max(least, floor - (ring / rings) * pointMm);
    }
  }
  return least + RISE_MM;
}
