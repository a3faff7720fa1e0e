import { brightnessAt } from '../picture/grayPicture.ts';
import type { GrayPicture } from './markerFinder.ts';
import type { SaddleGuess } from './saddle.ts';

/** px. Half widths of an edge that are tried, from a sharp lens to one out of focus. */
const BLURS_PX = [0.6, 1, 1.6, 2.5, 4];

/**
 * How far the picture round a settled saddle departs from two straight blurred edges under slanting light, rms, as a
 * share of the step from black to white, in the worst of the four arms; null where the step cannot be made out.
 *
 * Method: brightness is fitted by least squares with a plane and the product of two smoothed steps, for each blur; the
 * best one counts. An arm that something covers, or that ends early, stands out although the other three are clean.
 */
export function saddleMisfit(picture: GrayPicture, at: SaddleGuess): number | null {
  const samples = samplesOf(picture, at);
  let best: number | null = null;
  for (const blurPx of BLURS_PX) {
    const misfit = misfitAt(samples, blurPx, at.armPx);
    if (misfit !== null && (best === null || misfit < best)) best = misfit;
  }
  return best;
}

interface Sample {
  readonly x: number;
  readonly y: number;
  readonly off: readonly [number, number];
  readonly arm: number;
  readonly light: number;
}

function samplesOf(picture: GrayPicture, { at, edges, armPx, sidePx }: SaddleGuess): readonly Sample[] {
  const half = Math.floor(armPx);
  const samples: Sample[] = [];
  const [first, second] = edges;
  for (let y = -half; y <= half; y++)
    for (let x = -half; x <= half; x++) {
      if (x * x + y * y > armPx * armPx) continue;
      const off = [first.x * y - first.y * x, second.x * y - second.y * x] as const;
      if (Math.min(Math.abs(off[0]), Math.abs(off[1])) > sidePx) continue;
      const along = Math.abs(off[0]) < Math.abs(off[1]) ? first : second;
      const ahead = along.x * x + along.y * y > 0;
      const arm = (along === first ? 0 : 2) + (ahead ? 1 : 0);
      samples.push({ x, y, off, arm, light: brightnessAt(picture, at.x + x, at.y + y) });
    }
  return samples;
}

/** Levels of 255. Below it there is no black and white. */
const LEAST_STEP = 8;

function misfitAt(samples: readonly Sample[], blurPx: number, armPx: number): number | null {
  const shape = samples.map(({ off }) => Math.tanh(off[0] / blurPx) * Math.tanh(off[1] / blurPx));
  const basis = samples.map(({ x, y }, place) => [1, x / armPx, y / armPx, shape[place]]);
  const weights = solveFour(
    basis,
    samples.map((one) => one.light),
  );
  if (weights === null || Math.abs(2 * weights[3]) < LEAST_STEP) return null;
  const squares = [0, 0, 0, 0];
  const counts = [0, 0, 0, 0];
  for (const [place, { arm, light }] of samples.entries()) {
    const model = basis[place].reduce((sum, one, index) => sum + one * weights[index], 0);
    squares[arm] += (light - model) ** 2;
    counts[arm]++;
  }
  const rms = squares.map((sum, arm) => Math.sqrt(sum / Math.max(1, counts[arm])));
  return Math.max(...rms) / Math.abs(2 * weights[3]);
}

/** Least squares with four unknowns by elimination; null where the columns are not independent. */
function solveFour(rows: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const matrix = [0, 1, 2, 3].map((i) => [
    ...[0, 1, 2, 3].map((j) => rows.reduce((sum, row) => sum + row[i] * row[j], 0)),
    rows.reduce((sum, row, place) => sum + row[i] * right[place], 0),
  ]);
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
