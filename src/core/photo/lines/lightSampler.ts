import { linearLightTable } from '../picture/linearPicture.ts';
import type { Picture } from '../picture/picture.ts';

/** Light between pixel centres, 0 to 1 in linear light, the mean of the three colours; beyond the rim the nearest pixel's. */
export type LightSampler = (x: number, y: number) => number;

/** Linear light is what a lens mixes: a blurred line or step keeps its place in it, as it does not in sRGB codes. */
export function lightSampler({ widthPx, heightPx, rgb }: Picture): LightSampler {
  const table = linearLightTable();
  const [right, low] = [Math.max(0, widthPx - 1), Math.max(0, heightPx - 1)];
  const row = 3 * widthPx;
  const light = (at: number): number => table[rgb[at]] + table[rgb[at + 1]] + table[rgb[at + 2]];
  return (x, y) => {
    const inX = x > 0 ? Math.min(x, right) : 0;
    const inY = y > 0 ? Math.min(y, low) : 0;
    const column = Math.min(Math.floor(inX), Math.max(0, right - 1));
    const line = Math.min(Math.floor(inY), Math.max(0, low - 1));
    const fx = inX - column;
    const fy = inY - line;
    const at = line * row + 3 * column;
    const aside = right > 0 ? 3 : 0;
    const below = low > 0 ? row : 0;
    const upper = light(at) * (1 - fx) + light(at + aside) * fx;
    const lower = light(at + below) * (1 - fx) + light(at + below + aside) * fx;
    return (upper * (1 - fy) + lower * fy) / 3;
  };
}
