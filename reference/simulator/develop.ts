import sharp from 'sharp';
import type { Chance } from './chance.ts';

/** What lens, sensor and file add to the light. */
export interface Development {
  /** px. Standard deviation of the blur on top of the pixel's own square. */
  readonly blurPx: number;
  /** How much darker the picture's corner is, as a share. */
  readonly vignette: number;
  /** Standard deviation of the noise in grey levels of 255 at middle grey. */
  readonly noise: number;
  /** Light that becomes full white. */
  readonly white: number;
  /** JPEG quality, or none for a picture as the sensor gave it. */
  readonly jpeg: number | null;
}

export interface PlainPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgb: Uint8Array;
}

/** Linear light to an eight-bit picture: blur, vignette, noise, the usual tone curve (sRGB), and JPEG where wanted. */
export async function develop(
  light: Float32Array,
  widthPx: number,
  heightPx: number,
  how: Development,
  chance: Chance,
): Promise<PlainPicture> {
  blur(light, widthPx, heightPx, how.blurPx);
  const rgb = new Uint8Array(light.length);
  const curve = toneCurve();
  const bell = Float32Array.from({ length: 65536 }, () => chance.normal());
  const [middleX, middleY] = [widthPx / 2, heightPx / 2];
  const corner = middleX * middleX + middleY * middleY;
  let state = chance.whole(1, 0x7fffffff);
  for (let y = 0, k = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      const far = ((x - middleX) ** 2 + (y - middleY) ** 2) / corner;
      const gain = (1 - how.vignette * far) / how.white;
      for (let c = 0; c < 3; c++, k++) {
        state ^= state << 13;
        state ^= state >>> 17;
        state ^= state << 5;
        const value = (light[k] as number) * gain;
        const level = curve[value >= 1 ? CURVE_STEPS : value <= 0 ? 0 : (value * CURVE_STEPS) | 0] as number;
        const noisy = level + how.noise * (1.3 - level / 425) * (bell[state & 0xffff] as number);
        rgb[k] = noisy < 0 ? 0 : noisy > 255 ? 255 : noisy + 0.5;
      }
    }
  if (how.jpeg === null) return { widthPx, heightPx, rgb };
  const file = await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .jpeg({ quality: how.jpeg })
    .toBuffer();
  const { data } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
  return { widthPx, heightPx, rgb: new Uint8Array(data.buffer, data.byteOffset, data.length) };
}

const CURVE_STEPS = 16384;

function toneCurve(): Float32Array {
  return Float32Array.from({ length: CURVE_STEPS + 1 }, (_, i) => {
    const value = (i + 0.5) / CURVE_STEPS;
    return 255 * Math.min(1, value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055);
  });
}

/** Gaussian blur in place, rows then columns. */
function blur(light: Float32Array, width: number, height: number, sigma: number): void {
  if (sigma < 0.15) return;
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  const kernel = Float32Array.from(weights, (one) => one / sum);
  const row = new Float32Array(3 * (width + 2 * reach));
  for (let y = 0; y < height; y++) {
    const from = 3 * y * width;
    row.set(light.subarray(from, from + 3 * width), 3 * reach);
    for (let i = 0; i < reach; i++)
      for (let c = 0; c < 3; c++) {
        row[3 * i + c] = light[from + c] as number;
        row[3 * (width + reach + i) + c] = light[from + 3 * (width - 1) + c] as number;
      }
    for (let k = 0; k < 3 * width; k++) {
      let total = 0;
      for (let i = 0; i < kernel.length; i++) total += (kernel[i] as number) * (row[k + 3 * i] as number);
      light[from + k] = total;
    }
  }
  blurDown(light, 3 * width, height, kernel, reach);
}

function blurDown(
  light: Float32Array,
  wide: number,
  height: number,
  kernel: Float32Array,
  reach: number,
): void {
  const kept = Array.from({ length: kernel.length }, () => new Float32Array(wide));
  const rowAt = (y: number) => kept[((y % kernel.length) + kernel.length) % kernel.length] as Float32Array;
  const load = (y: number) => {
    const from = Math.min(height - 1, Math.max(0, y)) * wide;
    rowAt(y).set(light.subarray(from, from + wide));
  };
  for (let y = -reach; y < reach; y++) load(y);
  const sum = new Float32Array(wide);
  for (let y = 0; y < height; y++) {
    load(y + reach);
    sum.fill(0);
    for (let i = 0; i < kernel.length; i++) {
      const row = rowAt(y - reach + i);
      const weight = kernel[i] as number;
      for (let k = 0; k < wide; k++) sum[k] = (sum[k] as number) + weight * (row[k] as number);
    }
    light.set(sum, y * wide);
  }
}
