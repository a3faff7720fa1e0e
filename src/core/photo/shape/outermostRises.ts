import { type ThingColour, thingness } from '../paper/thingColour.ts';
import type { LinesAcross } from './linesAcross.ts';
import type { ShapeStation } from './shapeStations.ts';

/** mm compared on either side of an edge, and left out round it for blur. */
const SIDE_MM = 0.9;
const BLUR_MM = 0.2;
/** Least rise from paper to thing (1 is the whole of it), and the share of the largest rise that an outer one must reach. */
const LEAST_RISE = 0.35;
const OUTER_SHARE = 0.75;
/** Stations on either side that must agree. */
const NEIGHBOURS = 3;

/**
 * The outermost plain rise from paper to thing on each line, mm from the line's centre, made coherent along each run by
 * the median of its neighbours; NaN where no rise is plain.
 */
export function outermostRises(
  lines: LinesAcross,
  stations: readonly ShapeStation[],
  colour: ThingColour,
): Float64Array {
  const { count, stepMm, fromMm, values } = lines;
  const gap = Math.max(1, Math.round(BLUR_MM / stepMm));
  const side = Math.max(2, Math.round(SIDE_MM / stepMm));
  const raw = new Float64Array(stations.length);
  const sums = new Float64Array(count + 1);
  for (let i = 0; i < stations.length; i++) {
    const at = 3 * count * i;
    for (let j = 0; j < count; j++)
      sums[j + 1] =
        sums[j] +
        clipped(thingness(colour, values[at + j], values[at + j + count], values[at + j + 2 * count]));
    raw[i] = fromMm + stepMm * outermostRise(sums, count, gap, side);
  }
  return coherent(raw, stations);
}

function clipped(value: number): number {
  return Math.min(1.3, Math.max(-0.3, value));
}

function outermostRise(sums: Float64Array, count: number, gap: number, side: number): number {
  const rise = (j: number): number => {
    const inner = (sums[j - gap + 1] - sums[j - gap - side + 1]) / side;
    const outer = (sums[j + gap + side] - sums[j + gap]) / side;
    return inner - outer;
  };
  const [low, high] = [gap + side, count - gap - side - 1];
  let most = 0;
  for (let j = low; j <= high; j++) most = Math.max(most, rise(j));
  if (most < LEAST_RISE) return Number.NaN;
  for (let j = high; j >= low; j--) {
    const here = rise(j);
    if (here < OUTER_SHARE * most) continue;
    // The highest within one side's width, so that the foot of a rise is not taken for it.
    let best = j;
    for (let k = j; k >= Math.max(low, j - side); k--) if (rise(k) > rise(best)) best = k;
    return best;
  }
  return Number.NaN;
}

function coherent(raw: Float64Array, stations: readonly ShapeStation[]): Float64Array {
  return raw.map((_, i) => {
    const near: number[] = [];
    for (let k = i - NEIGHBOURS; k <= i + NEIGHBOURS; k++)
      if (stations[k]?.run === stations[i].run && !Number.isNaN(raw[k])) near.push(raw[k]);
    if (near.length <= NEIGHBOURS / 2) return Number.NaN;
    near.sort((a, b) => a - b);
    return near[near.length >> 1];
  });
}
