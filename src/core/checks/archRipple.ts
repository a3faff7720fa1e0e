import { atan } from '../base/index.ts';
import { type PlateArch, plateSlopes } from '../instrument/index.ts';
import { bodyHalfWidth } from '../surface/index.ts';
import { USUAL_LENGTH_MM } from './usualLength.ts';

/** Lines along the body that are followed, as shares of the half width. */
const LINES = [0.2, 0.4, 0.6];
/** mm for a body of 355 mm: between places on a line, and what is left out at either end. */
const STEP_MM = 1;
const END_MM = 3;
/** How often the surface swings up and down along a line, and where it does so quickest. */
export interface Ripple {
  readonly swings: number;
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * The line along the body on which the slope turns round most often, each time by `leastDeg` or more: a low lamp shows
 * every one of them as a band. Inside the channel, finished surface.
 */
export function mostRippled(arch: PlateArch, leastDeg: number): Ripple {
  const found = LINES.map((share) => rippleAlong(arch, share, leastDeg));
  return found.reduce((worst, one) => (one.swings > worst.swings ? one : worst));
}

function rippleAlong(arch: PlateArch, share: number, leastDeg: number): Ripple {
  const size = arch.bodyLengthMm / USUAL_LENGTH_MM;
  const { startMm, endMm } = arch.longArch;
  const turns: number[] = [];
  let [high, low, rising] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 0];
  for (let yMm = startMm + END_MM * size; yMm < endMm - END_MM * size; yMm += STEP_MM * size) {
    const { slopeY } = plateSlopes(arch, share * bodyHalfWidth(arch.loft, yMm), yMm);
    const slope = (atan(slopeY) * 180) / Math.PI;
    [high, low] = [Math.max(high, slope), Math.min(low, slope)];
    const turned =
      rising >= 0 && high - slope > leastDeg ? -1 : rising <= 0 && slope - low > leastDeg ? 1 : 0;
    if (turned === 0) continue;
    turns.push(yMm);
    [high, low, rising] = [slope, slope, turned];
  }
  const gaps = turns.slice(1).map((yMm, i) => yMm - (turns[i] ?? 0));
  const at = gaps.indexOf(Math.min(...gaps));
  const yMm = ((turns[at] ?? startMm) + (turns[at + 1] ?? startMm)) / 2;
  return { swings: turns.length, xMm: share * bodyHalfWidth(arch.loft, yMm), yMm };
}
