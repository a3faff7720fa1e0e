import type { HoleFrame } from './holeFrame.ts';
import type { LightSampler } from './lightSampler.ts';

/** The middle of a plate, square on: rows across it from the lower to the upper end. Lengths in 355ths of the body. */
export interface JointStrip {
  readonly columns: number;
  readonly step: number;
  readonly rows: readonly number[];
  /** How much darker a thin line at the place is than what lies beside it, as a share; row by row. */
  readonly line: Float32Array;
}

/** 355ths: how far to either side of the centre line a joint is looked for, and between which heights. */
const JOINT_REACH = 6;
const BESIDE = 1;
const [LOW, HIGH] = [8, 347];
const ROW_STEP = 1;
/** 355ths along the body that one row is the mean of, either way, and samples in it. */
const ALONG = 0.5;
const ALONG_SAMPLES = 5;
/** Share of the usual light beyond which something lies over the plate. */
const [DARKEST, LIGHTEST] = [0.65, 1.6];
/** 355ths: half the line's own breadth, and from where to where the wood beside it is looked at. */
const LINE_HALF = 0.12;
const [WOOD_FROM, WOOD_TO] = [0.35, 0.85];
const FINEST_STEP = 0.1;

/** Rows in which something other than the plate lies in the middle are left out. */
export function jointStrip(lightAt: LightSampler, frame: HoleFrame): JointStrip {
  const step = Math.max(FINEST_STEP, 1 / 2 / frame.pxPerUnit);
  const half = Math.ceil((JOINT_REACH + BESIDE) / step);
  const wide = 2 * half + 1;
  const all: { readonly y: number; readonly light: Float64Array; readonly mean: number }[] = [];
  for (let y = LOW; y <= HIGH; y += ROW_STEP) {
    const light = Float64Array.from({ length: wide }, (_, i) =>
      lightOf(lightAt, frame, (i - half) * step, y),
    );
    all.push({ y, light, mean: light.reduce((a, b) => a + b, 0) / wide });
  }
  const usual = all.map(({ mean }) => mean).sort((a, b) => a - b)[Math.floor(all.length * USUAL_RANK)];
  const bare = all.filter(({ light }) => {
    const [low, high] = [Math.min(...light), Math.max(...light)];
    return low > (DARKEST - LINE_DARK) * usual && high < LIGHTEST * usual;
  });
  const margin = Math.round(BESIDE / step);
  const columns = wide - 2 * margin;
  const line = new Float32Array(bare.length * columns);
  bare.forEach(({ light }, row) => {
    const sums = new Float64Array(wide + 1);
    for (let i = 0; i < wide; i++) sums[i + 1] = sums[i] + light[i];
    const mean = (at: number, from: number, to: number): number => {
      const [low, high] = [at + Math.round(from / step), at + Math.round(to / step)];
      return (sums[high + 1] - sums[low]) / (high - low + 1);
    };
    for (let j = 0; j < columns; j++) {
      const at = j + margin;
      const beside = (mean(at, WOOD_FROM, WOOD_TO) + mean(at, -WOOD_TO, -WOOD_FROM)) / 2;
      line[row * columns + j] = (beside - mean(at, -LINE_HALF, LINE_HALF)) / Math.max(LEAST_LIGHT, beside);
    }
  });
  return { columns, step, rows: bare.map(({ y }) => y), line };
}

/** Board and tailpiece, both dark, cover up to three quarters of the middle, so the plate's own light is among the highest. */
const USUAL_RANK = 0.85;
/** What a dark line or the grain may take off the light, as a share of the usual. */
const LINE_DARK = 0.4;
const LEAST_LIGHT = 0.001;

function lightOf(lightAt: LightSampler, frame: HoleFrame, x: number, y: number): number {
  let sum = 0;
  for (let k = 0; k < ALONG_SAMPLES; k++) {
    const at = frame.toPhoto(x, y + ((2 * k) / (ALONG_SAMPLES - 1) - 1) * ALONG);
    sum += lightAt(at.x, at.y);
  }
  return sum / ALONG_SAMPLES;
}
