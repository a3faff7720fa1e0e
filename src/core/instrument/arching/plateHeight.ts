import { point } from '../../base/index.ts';
import { loftAt, netAt, type SurfacePoint } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type EdgeState, edgeDistances, finishedEdgeHeight } from './edgeShape.ts';
import { type Foot, footOn } from './smoothLine.ts';

/** Share of the body length, 5 mm on a violin, over which what the correction misses at the channel is faded out. */
const FADE_SHARE = 5 / 355;

/**
 * Height of the plate's outside above its gluing face at a point on the plate (either side; x is taken as |x|), mm.
 *
 * Continuous everywhere; the slope is continuous but for the ridge of the finished edge, and for the line where an arch
 * rises out of the flat edge.
 */
export function plateHeight(arch: PlateArch, xMm: number, yMm: number, state: EdgeState): number {
  const x = Math.abs(xMm);
  const { edgeHeightMm } = arch.numbers;
  const foot = footOn(arch.channel.line, x, yMm);
  if (foot.distanceMm >= 0) {
    const finished = arch.channelZMm + insideHeight(arch, x, yMm, foot);
    return state === 'finished' ? finished : Math.max(edgeHeightMm, finished);
  }
  if (state === 'arched') return edgeHeightMm;
  return finishedEdgeHeight(arch.numbers, edgeDistances(arch.edge, point(x, yMm)), -foot.distanceMm);
}

/**
 * Loft and correction, less the few thousandths that they miss at the channel: height and slope at the foot, faded out.
 * Above the channel, so that it is exactly level with the scoop there.
 */
function insideHeight(arch: PlateArch, x: number, yMm: number, foot: Foot): number {
  const height = bodyAt(arch, x, yMm).zMm;
  const t = foot.distanceMm / (FADE_SHARE * arch.bodyLengthMm);
  if (t >= 1) return height;
  const miss = bodyAt(arch, foot.x, foot.y);
  const inwardSlope = -miss.slopeX * Math.sin(foot.headingRad) + miss.slopeY * Math.cos(foot.headingRad);
  return height - (miss.zMm + foot.distanceMm * inwardSlope) * (1 - t) ** 2 * (1 + 2 * t);
}

/**
 * Height above the gluing face and slopes of the arch where it is deep enough inside the channel for loft and correction
 * alone, exactly; null nearer to the channel and outside it.
 */
export function deepPlaceAt(arch: PlateArch, xMm: number, yMm: number): SurfacePoint | null {
  const foot = footOn(arch.channel.line, Math.abs(xMm), yMm);
  if (foot.distanceMm < FADE_SHARE * arch.bodyLengthMm) return null;
  const { zMm, slopeX, slopeY } = bodyAt(arch, Math.abs(xMm), yMm);
  return { zMm: arch.channelZMm + zMm, slopeX: Math.sign(xMm) * slopeX || 0, slopeY };
}

/** Loft and correction together: height above the channel and slopes. */
function bodyAt(arch: PlateArch, x: number, yMm: number): SurfacePoint {
  const loft = loftAt(arch.loft, x, yMm);
  const correction = netAt(arch.correction, x, yMm);
  return {
    zMm: loft.zMm + correction.zMm,
    slopeX: loft.slopeX + correction.slopeX,
    slopeY: loft.slopeY + correction.slopeY,
  };
}
