import type { EdgeStrips } from './edgeStrips.ts';

/** mm. Half the width over which the darkness of one dark line is averaged. */
const LINE_HALF_MM = 0.14;
/** mm beyond the middle of a dark line where the wood beside it begins, and how wide it is looked at. */
const WOOD_FROM_MM = 0.36;
const WOOD_WIDE_MM = 0.45;
/**
 * How much a light strip between the dark lines adds, no lighter than the wood is counted: it tells purfling from one broad
 * dark line, and under dark varnish or a glare, where black hardly stands out from the wood, it is all that shows.
 */
const BETWEEN_SHARE = 0.5;
const LEAST_LIGHT = 0.001;

/**
 * How plainly two dark lines `widthMm` apart (middle to middle) lie about each sample, as a share of the light of the
 * wood beside them; same shape as the strips. Where the wood is no lighter than the lines, as beside a glint, only a light
 * strip between them can make up for it.
 */
export function doubleLineResponse({ samples, stepMm, light }: EdgeStrips, widthMm: number): Float32Array {
  const rows = light.length / samples;
  const out = new Float32Array(light.length);
  const sums = new Float64Array(samples + 1);
  const bins = (mm: number): number => Math.round(mm / stepMm);
  const half = bins(widthMm / 2);
  const line = bins(LINE_HALF_MM);
  const near = bins(widthMm / 2 + WOOD_FROM_MM);
  const far = bins(widthMm / 2 + WOOD_FROM_MM + WOOD_WIDE_MM);
  const between = Math.max(0, bins(widthMm / 2 - WOOD_FROM_MM));
  for (let row = 0; row < rows; row++) {
    for (let j = 0; j < samples; j++) sums[j + 1] = sums[j] + light[row * samples + j];
    for (let j = 0; j < samples; j++) {
      if (j < far || j + far >= samples) continue;
      const inner = meanOf(sums, j + near, j + far);
      const outer = meanOf(sums, j - far, j - near);
      const inLine = meanOf(sums, j + half - line, j + half + line);
      const outLine = meanOf(sums, j - half - line, j - half + line);
      const wood = Math.min(inner, outer);
      const plain = wood - Math.max(inLine, outLine);
      const strip = Math.max(
        0,
        Math.min(wood, meanOf(sums, j - between, j + between) - (inLine + outLine) / 2),
      );
      out[row * samples + j] = (plain + BETWEEN_SHARE * strip) / Math.max(LEAST_LIGHT, wood);
    }
  }
  return out;
}

/** The mean from one sample to another, by running sums. */
function meanOf(sums: Float64Array, from: number, to: number): number {
  return (sums[to + 1] - sums[from]) / (to - from + 1);
}
