import { cbrt } from '../../base/index.ts';
import type { LinearPicture } from './linearPicture.ts';

/** A picture in CIE L*a*b* (white of daylight, D65): `lightness` 0 to 100, `a` and `b` about −100 to 100. */
export interface LabPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly lightness: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
}

const CURVE_STEPS = 4096;

/** The picture in Lab. Method: sRGB primaries to XYZ, cube roots from a table of 4096 steps. */
export function labOf(picture: LinearPicture): LabPicture {
  const curve = cubeRootTable();
  const [red, green, blue] = picture.planes;
  const count = red.length;
  const lightness = new Float32Array(count);
  const a = new Float32Array(count);
  const b = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    const r = red[i] as number;
    const g = green[i] as number;
    const u = blue[i] as number;
    const x = look(curve, (0.4124 * r + 0.3576 * g + 0.1805 * u) / 0.9505);
    const y = look(curve, 0.2126 * r + 0.7152 * g + 0.0722 * u);
    const z = look(curve, (0.0193 * r + 0.1192 * g + 0.9505 * u) / 1.089);
    lightness[i] = 116 * y - 16;
    a[i] = 500 * (x - y);
    b[i] = 200 * (y - z);
  }
  return { widthPx: picture.widthPx, heightPx: picture.heightPx, lightness, a, b };
}

function cubeRootTable(): Float32Array {
  const table = new Float32Array(CURVE_STEPS + 2);
  for (let i = 0; i < table.length; i++) {
    const t = i / CURVE_STEPS;
    table[i] = t > 0.008856 ? cbrt(t) : 7.787 * t + 16 / 116;
  }
  return table;
}

function look(table: Float32Array, value: number): number {
  const at = Math.min(CURVE_STEPS, Math.max(0, value * CURVE_STEPS));
  const step = Math.floor(at);
  const low = table[step] as number;
  return low + (at - step) * ((table[step + 1] as number) - low);
}
