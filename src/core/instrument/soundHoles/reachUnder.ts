import { type Chain, containsPoint, intersections, nearestOn, sampleChain } from '../../curve/index.ts';

/** mm. A hole is followed this finely where it passes other parts. */
const FOLLOWED_MM = 0.1;

/** How far a part, seen from above, reaches under an opening at most, mm; 0 where it stays clear. */
export function reachUnder(opening: Chain<'body'>, part: Chain<'body'>): number {
  if (intersections(opening, part).length === 0) return 0;
  const inside = sampleChain(opening, FOLLOWED_MM).filter((at) => containsPoint(part, at));
  return Math.max(0, ...inside.map((at) => nearestOn(part, at).distanceMm));
}
