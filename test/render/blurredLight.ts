/** A picture of one level a pixel, blurred by a bell curve of `sigma` pixels; beyond the rim the outermost pixels go on. */
export function blurredLight(
  light: Float32Array,
  widthPx: number,
  heightPx: number,
  sigma: number,
): Float32Array {
  if (sigma <= 0) return light;
  const half = Math.ceil(4 * sigma);
  const raw = Array.from({ length: 2 * half + 1 }, (_, i) => Math.exp(-((i - half) ** 2) / (2 * sigma ** 2)));
  const total = raw.reduce((sum, one) => sum + one, 0);
  const weights = Float64Array.from(raw, (one) => one / total);
  return blurUpright(blurLevel(light, widthPx, heightPx, weights), widthPx, heightPx, weights);
}

function blurLevel(
  from: Float32Array,
  widthPx: number,
  heightPx: number,
  weights: Float64Array,
): Float32Array {
  const half = weights.length >> 1;
  const to = new Float32Array(from.length);
  const line = new Float64Array(widthPx + 2 * half);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < line.length; x++)
      line[x] = from[y * widthPx + Math.min(widthPx - 1, Math.max(0, x - half))]!;
    for (let x = 0; x < widthPx; x++) {
      let sum = 0;
      for (let k = 0; k < weights.length; k++) sum += weights[k]! * line[x + k]!;
      to[y * widthPx + x] = sum;
    }
  }
  return to;
}

function blurUpright(
  from: Float32Array,
  widthPx: number,
  heightPx: number,
  weights: Float64Array,
): Float32Array {
  const half = weights.length >> 1;
  const to = new Float32Array(from.length);
  const sums = new Float64Array(widthPx);
  for (let y = 0; y < heightPx; y++) {
    sums.fill(0);
    for (let k = 0; k < weights.length; k++) {
      const row = widthPx * Math.min(heightPx - 1, Math.max(0, y + k - half));
      for (let x = 0; x < widthPx; x++) sums[x]! += weights[k]! * from[row + x]!;
    }
    to.set(sums, y * widthPx);
  }
  return to;
}
