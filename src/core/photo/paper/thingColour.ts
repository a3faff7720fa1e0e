import { hypot } from '../../base/index.ts';
import { medianOf, solveSquare } from '../../numeric/index.ts';
import type { PaperShares } from './paperLight.ts';
import type { StandOut } from './standOut.ts';

/** Weights of the three shares (less 1) that give 0 on paper and 1 on the thing, and little for a shadow. */
export type ThingColour = readonly [number, number, number];

/** Spread of paper and camera, and of the light over paper in a shadow, in shares. */
const NOISE = 0.02;
const SHADOW = 0.3;

/**
 * How the thing is told from paper and from a shadow on it; null where it cannot be. Method: the direction in colour
 * that parts both best when the spread along grey is taken as wide as shadows are (R. A. Fisher, The use of multiple
 * measurements in taxonomic problems, 1936).
 */
export function thingColour(shares: PaperShares, seen: StandOut): ThingColour | null {
  const samples: number[][] = [];
  const half = seen.cellPx >> 1;
  for (let i = 0; i < seen.bare.length; i++) {
    if (!seen.bare[i]) continue;
    const [column, row] = [i % seen.columns, Math.floor(i / seen.columns)];
    const at = (row * seen.cellPx + half) * shares.widthPx + column * seen.cellPx + half;
    samples.push(shares.planes.map((plane) => plane[at]));
  }
  if (samples.length < FEWEST) return null;
  const middle = [0, 1, 2].map((c) => medianOf(samples.map((sample) => sample[c])) - 1);
  const spread = [0, 1, 2].map((c) => medianOf(samples.map((sample) => Math.abs(sample[c] - 1 - middle[c]))));
  const grain = hypot(NOISE, Math.min(MOST_GRAIN, Math.max(...spread)));
  const matrix = [0, 1, 2].map((row) =>
    Float64Array.from([0, 1, 2], (column) => (row === column ? grain * grain : 0) + SHADOW * SHADOW),
  );
  const weights = solveSquare(matrix, Float64Array.from(middle));
  if (!weights) return null;
  const length = weights.reduce((sum, weight, c) => sum + weight * middle[c], 0);
  return length > LEAST_LENGTH ? [weights[0] / length, weights[1] / length, weights[2] / length] : null;
}

/** 0 on paper, 1 on the thing: how much of it three shares of the paper's light show. */
export function thingness([r, g, b]: ThingColour, red: number, green: number, blue: number): number {
  return r * (red - 1) + g * (green - 1) + b * (blue - 1);
}

const FEWEST = 40;
/** Share of light: a thing more uneven than this is told by its colour all the same. */
const MOST_GRAIN = 0.06;
/** In spreads squared: below it thing and paper are one colour. */
const LEAST_LENGTH = 2;
