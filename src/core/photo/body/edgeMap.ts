import type { LabPicture } from '../picture/labPicture.ts';

/** The gradient of the strongest colour channel at every pixel, Lab units a px; zero on masked pixels. */
export interface EdgeMap {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly gx: Float32Array;
  readonly gy: Float32Array;
}

/** How much more a step in a or b counts, squared, than the same step in lightness: colour is less in shadow. */
const CHROMA_WEIGHT = 1.2;

/** The gradient after a Gaussian blur of `sigmaPx`, per pixel from the channel where it is largest. */
export function edgeMapOf(lab: LabPicture, sigmaPx: number, masked?: Uint8Array): EdgeMap {
  const { widthPx, heightPx } = lab;
  const count = widthPx * heightPx;
  const gx = new Float32Array(count);
  const gy = new Float32Array(count);
  const largest = new Float32Array(count);
  const blurred = new Float32Array(count);
  const between = new Float32Array(count);
  const channels: readonly (readonly [Float32Array, number])[] = [
    [lab.lightness, 1],
    [lab.a, CHROMA_WEIGHT],
    [lab.b, CHROMA_WEIGHT],
  ];
  for (const [plane, weight] of channels) {
    blur(plane, widthPx, heightPx, sigmaPx, between, blurred);
    keepLarger(blurred, widthPx, heightPx, weight, gx, gy, largest);
  }
  if (masked)
    for (let i = 0; i < count; i++)
      if (masked[i]) {
        gx[i] = 0;
        gy[i] = 0;
      }
  return { widthPx, heightPx, gx, gy };
}

function keepLarger(
  plane: Float32Array,
  widthPx: number,
  heightPx: number,
  weight: number,
  gx: Float32Array,
  gy: Float32Array,
  largest: Float32Array,
): void {
  const root = Math.sqrt(weight);
  for (let y = 1; y < heightPx - 1; y++) {
    const row = y * widthPx;
    for (let x = 1; x < widthPx - 1; x++) {
      const i = row + x;
      const dx = ((plane[i + 1] as number) - (plane[i - 1] as number)) * 0.5;
      const dy = ((plane[i + widthPx] as number) - (plane[i - widthPx] as number)) * 0.5;
      const size = (dx * dx + dy * dy) * weight;
      if (size <= (largest[i] as number)) continue;
      largest[i] = size;
      gx[i] = dx * root;
      gy[i] = dy * root;
    }
  }
}

/** Gaussian blur of `plane` into `into`, borders repeated; `between` is scratch of the same size. */
export function blur(
  plane: Float32Array,
  widthPx: number,
  heightPx: number,
  sigmaPx: number,
  between: Float32Array,
  into: Float32Array,
): void {
  const kernel = gaussianKernel(sigmaPx);
  const reach = kernel.length - 1;
  for (let y = 0; y < heightPx; y++) {
    const row = y * widthPx;
    const last = row + widthPx - 1;
    for (let x = 0; x < widthPx; x++) {
      const i = row + x;
      let sum = (kernel[0] as number) * (plane[i] as number);
      for (let k = 1; k <= reach; k++) {
        const left = Math.max(row, i - k);
        const right = Math.min(last, i + k);
        sum += (kernel[k] as number) * ((plane[left] as number) + (plane[right] as number));
      }
      between[i] = sum;
    }
  }
  for (let y = 0; y < heightPx; y++) {
    const row = y * widthPx;
    for (let x = 0; x < widthPx; x++) into[row + x] = (kernel[0] as number) * (between[row + x] as number);
    for (let k = 1; k <= reach; k++) {
      const weight = kernel[k] as number;
      const above = Math.max(0, y - k) * widthPx;
      const below = Math.min(heightPx - 1, y + k) * widthPx;
      for (let x = 0; x < widthPx; x++)
        into[row + x] =
          (into[row + x] as number) +
          weight * ((between[above + x] as number) + (between[below + x] as number));
    }
  }
}

function gaussianKernel(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(2.6 * sigmaPx));
  const kernel = new Float64Array(reach + 1);
  let total = 0;
  for (let k = 0; k <= reach; k++) {
    kernel[k] = Math.exp((-k * k) / (2 * sigmaPx * sigmaPx));
    total += (k === 0 ? 1 : 2) * (kernel[k] as number);
  }
  for (let k = 0; k <= reach; k++) kernel[k] = (kernel[k] as number) / total;
  return kernel;
}

/** Bilinear value of `plane` at (x, y) px; the caller keeps 0 ≤ x ≤ width − 1 and 0 ≤ y ≤ height − 1. */
export function valueAt(
  plane: Float32Array,
  widthPx: number,
  heightPx: number,
  x: number,
  y: number,
): number {
  const x0 = Math.min(widthPx - 2, Math.floor(x));
  const y0 = Math.min(heightPx - 2, Math.floor(y));
  const fx = x - x0;
  const fy = y - y0;
  const at = y0 * widthPx + x0;
  const top = (plane[at] as number) * (1 - fx) + (plane[at + 1] as number) * fx;
  const low = (plane[at + widthPx] as number) * (1 - fx) + (plane[at + widthPx + 1] as number) * fx;
  return top * (1 - fy) + low * fy;
}
