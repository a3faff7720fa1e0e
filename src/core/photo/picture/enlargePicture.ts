import type { Picture } from './picture.ts';

/**
 * The picture with `times` as many pixels along a side, smoothly between the given ones (cubic through four
 * neighbours). Pixel centres obey large = (small + ½) · times − ½. For pictures too small to be looked at otherwise:
 * it shows nothing new.
 */
export function enlargePicture(picture: Picture, times: number): Picture {
  const { widthPx, heightPx, rgb, ...rest } = picture;
  const across = new Float32Array(3 * widthPx * times * heightPx);
  const widerPx = widthPx * times;
  const columns = cubicSteps(widthPx, times);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widerPx; x++)
      for (let c = 0; c < 3; c++)
        across[3 * (y * widerPx + x) + c] = mix(columns, x, (column) => rgb[3 * (y * widthPx + column) + c]);
  const higherPx = heightPx * times;
  const rows = cubicSteps(heightPx, times);
  const out = new Uint8Array(3 * widerPx * higherPx);
  for (let y = 0; y < higherPx; y++)
    for (let i = 0; i < 3 * widerPx; i++) {
      const value = mix(rows, y, (row) => across[3 * row * widerPx + i]);
      out[3 * y * widerPx + i] = Math.round(Math.min(255, Math.max(0, value)));
    }
  return { ...rest, widthPx: widerPx, heightPx: higherPx, rgb: out };
}

/** For every large place the four small ones and their weights. */
interface CubicSteps {
  readonly places: Int32Array;
  readonly weights: Float64Array;
}

function cubicSteps(count: number, times: number): CubicSteps {
  const places = new Int32Array(4 * count * times);
  const weights = new Float64Array(4 * count * times);
  for (let i = 0; i < count * times; i++) {
    const at = (i + 0.5) / times - 0.5;
    const first = Math.floor(at) - 1;
    const t = at - Math.floor(at);
    const own = [
      ((2 - t) * t - 1) * t * 0.5,
      ((3 * t - 5) * t * t + 2) * 0.5,
      ((4 - 3 * t) * t + 1) * t * 0.5,
      (t - 1) * t * t * 0.5,
    ];
    own.forEach((weight, k) => {
      places[4 * i + k] = Math.min(count - 1, Math.max(0, first + k));
      weights[4 * i + k] = weight;
    });
  }
  return { places, weights };
}

function mix({ places, weights }: CubicSteps, at: number, valueOf: (place: number) => number): number {
  let sum = 0;
  for (let k = 4 * at; k < 4 * at + 4; k++) sum += weights[k] * valueOf(places[k]);
  return sum;
}
