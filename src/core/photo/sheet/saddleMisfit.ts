import { tanh } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { brightnessAt } from '../picture/grayPicture.ts';
import type { SaddleGuess } from './saddle.ts';

/** px. Half widths of an edge that are tried, from a sharp lens to one out of focus. */
const BLURS_PX = [0.6, 1, 1.6, 2.5, 4];
/** Of the best of these, tried after. */
const NEARER = [0.78, 0.88, 1.13, 1.28];

/** How a settled saddle looks against two straight blurred edges. */
export interface SaddleMisfit {
  /** Departure in the worst of the four arms, rms, as a share of the step from black to white. */
  readonly worstArm: number;
  /** The same in the two best arms. */
  readonly bestArms: number;
  /** Departure over all four, rms, in levels of 255. */
  readonly levels: number;
  readonly stepLevels: number;
  /** Half width of the edges. */
  readonly blurPx: number;
}

/**
 * How far the picture round a settled saddle departs from two straight blurred edges under slanting light; null where
 * black and white cannot be made out.
 *
 * Method: brightness is fitted by least squares with a plane and the product of two smoothed steps, for each blur; the
 * best one counts. An arm that something covers, or that ends early, stands out although the other three are clean.
 */
export function saddleMisfit(picture: GrayPicture, at: SaddleGuess): SaddleMisfit | null {
  const samples = samplesOf(picture, at);
  let best: SaddleMisfit | null = null;
  const consider = (blurPx: number) => {
    const misfit = misfitAt(samples, blurPx);
    if (misfit !== null && (best === null || misfit.levels < best.levels)) best = misfit;
  };
  for (const blurPx of BLURS_PX) consider(blurPx);
  const roughPx = (best as SaddleMisfit | null)?.blurPx;
  if (roughPx !== undefined) for (const share of NEARER) consider(roughPx * share);
  return best;
}

/** Brightness at places round the saddle, and how far each lies off the two edges. */
interface Samples {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly offFirst: Float64Array;
  readonly offSecond: Float64Array;
  readonly arm: Uint8Array;
  readonly light: Float64Array;
}

/** px. Arms longer than this are looked at in every other pixel. */
const LONG_ARM_PX = 12;

function samplesOf(picture: GrayPicture, { at, edges, armPx, sidePx }: SaddleGuess): Samples {
  const step = armPx > LONG_ARM_PX ? 2 : 1;
  const half = step * Math.floor(armPx / step);
  const most = (2 * Math.floor(armPx / step) + 1) ** 2;
  const [x, y, offFirst, offSecond, light] = [0, 1, 2, 3, 4].map(() => new Float64Array(most));
  const arm = new Uint8Array(most);
  const [first, second] = edges;
  let count = 0;
  for (let dy = -half; dy <= half; dy += step)
    for (let dx = -half; dx <= half; dx += step) {
      if (dx * dx + dy * dy > armPx * armPx) continue;
      const [one, other] = [first.x * dy - first.y * dx, second.x * dy - second.y * dx];
      if (Math.min(Math.abs(one), Math.abs(other)) > sidePx) continue;
      const isFirst = Math.abs(one) < Math.abs(other);
      const along = isFirst ? first : second;
      arm[count] = (isFirst ? 0 : 2) + (along.x * dx + along.y * dy > 0 ? 1 : 0);
      x[count] = dx / armPx;
      y[count] = dy / armPx;
      offFirst[count] = one;
      offSecond[count] = other;
      light[count] = brightnessAt(picture, at.x + dx, at.y + dy);
      count++;
    }
  return { count, x, y, offFirst, offSecond, arm, light };
}

/** Levels of 255. Below it there is no black and white. */
const LEAST_STEP = 8;

function misfitAt(samples: Samples, blurPx: number): SaddleMisfit | null {
  const { count, x, y, offFirst, offSecond, arm, light } = samples;
  const shape = new Float64Array(count);
  const row = new Float64Array(5);
  const sums = new Float64Array(20);
  row[0] = 1;
  for (let place = 0; place < count; place++) {
    row[1] = x[place];
    row[2] = y[place];
    row[3] = shape[place] = tanh(offFirst[place] / blurPx) * tanh(offSecond[place] / blurPx);
    row[4] = light[place];
    for (let i = 0; i < 4; i++) for (let j = i; j < 5; j++) sums[5 * i + j] += row[i] * row[j];
  }
  const normal = [0, 1, 2, 3].map((i) => [0, 1, 2, 3, 4].map((j) => sums[i <= j ? 5 * i + j : 5 * j + i]));
  const weights = solveFour(normal);
  if (weights === null || Math.abs(2 * weights[3]) < LEAST_STEP) return null;
  const squares = [0, 0, 0, 0];
  const counts = [0, 0, 0, 0];
  for (let place = 0; place < count; place++) {
    const model = weights[0] + weights[1] * x[place] + weights[2] * y[place] + weights[3] * shape[place];
    squares[arm[place]] += (light[place] - model) ** 2;
    counts[arm[place]]++;
  }
  const rms = squares.map((sum, one) => Math.sqrt(sum / Math.max(1, counts[one])));
  const [best, second, , worst] = rms.sort((a, b) => a - b);
  const stepLevels = Math.abs(2 * weights[3]);
  const total = squares.reduce((sum, one) => sum + one, 0);
  return {
    worstArm: worst / stepLevels,
    bestArms: (best + second) / 2 / stepLevels,
    levels: Math.sqrt(total / Math.max(1, count - 4)),
    stepLevels,
    blurPx,
  };
}

/** Four equations by elimination, right side last; changed in place. Null where they are not independent. */
function solveFour(matrix: readonly number[][]): number[] | null {
  for (let step = 0; step < 4; step++) {
    const pivot = matrix[step][step];
    if (!(Math.abs(pivot) > LEAST_PIVOT)) return null;
    for (let row = 0; row < 4; row++) {
      if (row === step) continue;
      const factor = matrix[row][step] / pivot;
      for (let column = step; column < 5; column++) matrix[row][column] -= factor * matrix[step][column];
    }
  }
  return matrix.map((row, place) => row[4] / row[place]);
}

/** Sum of squares of a column that spans the window; less is no column. */
const LEAST_PIVOT = 0.001;
