import type { Picture } from '../../src/core/index.ts';

/** The picture so many pixels wide, brightness between its pixels taken in proportion. */
export function enlargedTo({ widthPx, heightPx, rgb }: Picture, newWidthPx: number): Picture {
  const scale = widthPx / newWidthPx;
  const newHeightPx = Math.floor(heightPx / scale);
  const out = new Uint8Array(3 * newWidthPx * newHeightPx);
  for (let y = 0; y < newHeightPx; y++) {
    const fromY = Math.min(heightPx - 2, Math.max(0, (y + 0.5) * scale - 0.5));
    const row = Math.floor(fromY);
    const down = fromY - row;
    for (let x = 0; x < newWidthPx; x++) {
      const fromX = Math.min(widthPx - 2, Math.max(0, (x + 0.5) * scale - 0.5));
      const column = Math.floor(fromX);
      const right = fromX - column;
      const upper = 3 * (row * widthPx + column);
      const lower = upper + 3 * widthPx;
      for (let colour = 0; colour < 3; colour++) {
        const high = rgb[upper + colour] * (1 - right) + rgb[upper + 3 + colour] * right;
        const low = rgb[lower + colour] * (1 - right) + rgb[lower + 3 + colour] * right;
        out[3 * (y * newWidthPx + x) + colour] = Math.round(high * (1 - down) + low * down);
      }
    }
  }
  return { widthPx: newWidthPx, heightPx: newHeightPx, rgb: out };
}
