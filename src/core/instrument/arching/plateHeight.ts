import { point } from '../../base/index.ts';
import { loftAt } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type EdgeState, edgeDistances, edgeHeight } from './edgeShape.ts';
import { type Foot, footOn } from './smoothLine.ts';

/** Share of the corner rounding's radius over which the loft is eased onto the channel: inside it the foot is unique. */
const EASING_SHARE = 0.75;

/**
 * Height of the plate's outside above its gluing face at a point on the plate (either side; x is taken as |x|), mm.
 *
 * Continuous everywhere; the slope is continuous but for the ridge where scoop and crest (or land) meet.
 */
export function plateHeight(arch: PlateArch, xMm: number, yMm: number, state: EdgeState): number {
  const x = Math.abs(xMm);
  const foot = footOn(arch.channel.line, x, yMm);
  if (foot.distanceMm >= 0) return arch.channelZMm + insideHeight(arch, x, yMm, foot);
  const distances = edgeDistances(arch.edge, point(x, yMm));
  return edgeHeight(arch.numbers, state, distances, -foot.distanceMm);
}

/**
 * The loft, less what it misses at the channel: its height and slope at the foot, faded out over the easing.
 * A fair correction that bends least may take the place of the fade; both are 0 on the stations and the centre line.
 */
function insideHeight(arch: PlateArch, x: number, yMm: number, foot: Foot): number {
  const height = loftAt(arch.loft, x, yMm).zMm;
  const easing = EASING_SHARE * arch.channel.lowerCorner.radiusMm;
  const t = foot.distanceMm / easing;
  if (t >= 1) return height;
  const miss = loftAt(arch.loft, foot.x, foot.y);
  const inwardSlope = -miss.slopeX * Math.sin(foot.headingRad) + miss.slopeY * Math.cos(foot.headingRad);
  return height - (miss.zMm + foot.distanceMm * inwardSlope) * (1 - t) ** 2 * (1 + 2 * t);
}
