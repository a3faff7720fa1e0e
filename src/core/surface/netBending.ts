import type { BandedMatrix } from '../numeric/index.ts';
import { cubicBasis } from './cubicBasis.ts';
import { AT_A_PLACE, addProducts, type NetUnknowns, newTerms, putSpan } from './netTerms.ts';

/** Places in one step of the net, each way, at which the bending is summed. */
const SAMPLES = 4;
/** Pairs of a span's coefficients. */
const PAIRS = AT_A_PLACE ** 2;

/**
 * Adds ∫ w (v_xx² + 2 v_xy² + v_yy²) over the net's rectangle to its matrix: the energy of a thin plate, no unit for v in mm,
 * with the weight w of each place. Summed at the middles of quarter steps: exact enough for what bends over whole steps, and a
 * weight that changes within a step is felt. Each span is summed first and then added once, its 256 pairs of coefficients
 * standing row by row as in {@link addProducts}.
 */
export function addBending(
  unknowns: NetUnknowns,
  weightAt: (x: number, y: number) => number,
  matrix: BandedMatrix,
): void {
  const { grid } = unknowns;
  const samples = bendingSamples(grid.stepMm);
  const evenly = new Float64Array(PAIRS);
  for (const { square } of samples) addTimes(evenly, 1, square);
  const ones = [1, 1, 1, 1];
  const local = new Float64Array(PAIRS);
  const weights = new Float64Array(samples.length);
  const terms = newTerms(1);
  for (let spanY = 0; spanY < grid.rows; spanY++)
    for (let spanX = 0; spanX < grid.columns; spanX++) {
      samples.forEach(({ tX, tY }, at) => {
        weights[at] = weightAt((spanX + tX) * grid.stepMm, grid.fromMm + (spanY + tY) * grid.stepMm);
      });
      let square = local;
      // Most spans have one weight all over.
      if (!weights.every((weight) => weight === weights[0])) {
        local.fill(0);
        samples.forEach((sample, at) => {
          addTimes(local, weights[at] as number, sample.square);
        });
      } else if (weights[0] === 1) square = evenly;
      else {
        local.fill(0);
        addTimes(local, weights[0] as number, evenly);
      }
      putSpan(unknowns, spanX, spanY, ones, ones, 1, terms);
      addProducts(terms, square, matrix);
    }
}

function addTimes(sum: Float64Array, weight: number, square: Float64Array): void {
  for (let at = 0; at < PAIRS; at++) sum[at] = (sum[at] as number) + weight * (square[at] as number);
}

interface BendingSample {
  readonly tX: number;
  readonly tY: number;
  /** 16 × 16: what every pair of a span's coefficients adds to the bending at this point, times its area; 1/mm². */
  readonly square: Float64Array;
}

/** The places of a span, in shares of a step, at which bending is summed. */
function bendingSamples(stepMm: number): readonly BendingSample[] {
  const places = Array.from({ length: SAMPLES }, (_, index) => (index + 0.5) / SAMPLES);
  const scale = 1 / (SAMPLES ** 2 * stepMm ** 2);
  return places.flatMap((tY) =>
    places.map((tX) => {
      const product = (byX: 0 | 1 | 2, byY: 0 | 1 | 2): readonly number[] =>
        cubicBasis(tY, byY).flatMap((inY) => cubicBasis(tX, byX).map((inX) => inX * inY));
      const xx = product(2, 0);
      const xy = product(1, 1);
      const yy = product(0, 2);
      const square = new Float64Array(PAIRS);
      for (let at = 0; at < PAIRS; at++) {
        const [i, j] = [at >> 4, at & 15];
        const term = (d: readonly number[]): number => (d[i] as number) * (d[j] as number);
        square[at] = scale * (term(xx) + 2 * term(xy) + term(yy));
      }
      return { tX, tY, square };
    }),
  );
}
