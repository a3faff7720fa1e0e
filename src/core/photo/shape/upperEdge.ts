import { norm } from '../../base/index.ts';
import { fitEdgeProfile } from '../picture/edgeProfileFit.ts';
import type { LinesAcross } from './linesAcross.ts';
import type { ShapeStation } from './shapeStations.ts';

/** The place of one edge on an averaged line, mm from the line's centre. */
export interface FineEdge {
  readonly offsetMm: number;
  readonly sigmaMm: number;
  /** Step of light across it, in shares of the paper. */
  readonly stepShare: number;
}

/** mm along the edge over which lines are averaged, either way. */
export const AVERAGED_MM = 1.3;
/** A profile that leaves its fitted step by more than this share of it is no plain edge. */
const ROUGHEST = 0.2;

/**
 * The edge on line `i` to a fraction of a pixel: neighbouring lines of the run averaged, brought to one channel along
 * the step of colour, and fitted as a blurred step with ramps, so that a soft shadow does not draw it aside. Null where
 * no plain step is found.
 *
 * @param along mm between stations
 */
export function fineEdge(
  lines: LinesAcross,
  stations: readonly ShapeStation[],
  i: number,
  along: number,
  mmPerPixel: number,
): FineEdge | null {
  const { count, fromMm, stepMm } = lines;
  const mean = averaged(lines, stations, i, along);
  const zero = Math.round(-fromMm / stepMm);
  const step = [0, 1, 2].map((c) => {
    const inner = meanOf(mean, c * count, c * count + Math.max(2, zero >> 1));
    return meanOf(mean, (c + 1) * count - Math.max(2, (count - zero) >> 1), (c + 1) * count) - inner;
  });
  const size = norm(step);
  if (!(size > LEAST_STEP)) return null;
  const line = new Float64Array(count);
  for (let j = 0; j < count; j++)
    for (let c = 0; c < 3; c++) line[j] += (step[c] / size) * mean[c * count + j];
  const found = fitEdgeProfile(line, fromMm / mmPerPixel, stepMm / mmPerPixel);
  if (!found || found.roughness > ROUGHEST) return null;
  return { offsetMm: found.atPx * mmPerPixel, sigmaMm: found.sigmaPx * mmPerPixel, stepShare: size };
}

/** Share of the paper's light. A fainter step is lost in grain and noise. */
const LEAST_STEP = 0.04;

/** Triangle-weighted mean of the lines round one, as far to one side as to the other, within the run. */
function averaged(
  { count, values }: LinesAcross,
  stations: readonly ShapeStation[],
  i: number,
  along: number,
): Float64Array {
  const out = new Float64Array(3 * count);
  const most = Math.floor(AVERAGED_MM / along);
  let reach = 0;
  while (
    reach < most &&
    stations[i - reach - 1]?.run === stations[i].run &&
    stations[i + reach + 1]?.run === stations[i].run
  )
    reach++;
  for (let k = -reach; k <= reach; k++) {
    const share = (reach + 1 - Math.abs(k)) / ((reach + 1) * (reach + 1));
    const from = 3 * count * (i + k);
    for (let j = 0; j < out.length; j++) out[j] += share * values[from + j];
  }
  return out;
}

function meanOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / (to - from);
}
