import type { Picture } from '../../core/index.ts';

/** An upright square of whole pixels of a photograph. */
export interface PixelSquare {
  readonly left: number;
  readonly top: number;
  readonly sidePx: number;
}

/** What a photograph shows in a square, row by row in red, green, blue and how solid; clear beyond its rim. */
export function pixelsIn(
  { widthPx, heightPx, rgb }: Picture,
  { left, top, sidePx }: PixelSquare,
): Uint8ClampedArray<ArrayBuffer> {
  const rgba = new Uint8ClampedArray(4 * sidePx * sidePx);
  const [firstX, lastX] = [Math.max(0, left), Math.min(widthPx, left + sidePx)];
  const [firstY, lastY] = [Math.max(0, top), Math.min(heightPx, top + sidePx)];
  for (let y = firstY; y < lastY; y++)
    for (let x = firstX; x < lastX; x++) {
      const from = 3 * (y * widthPx + x);
      const to = 4 * ((y - top) * sidePx + x - left);
      for (let tone = 0; tone < 3; tone++) rgba[to + tone] = rgb[from + tone];
      rgba[to + 3] = 255;
    }
  return rgba;
}
