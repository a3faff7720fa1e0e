import type { Picture } from '../../core/index.ts';

/**
 * A photograph made small enough for a screen, as a picture file of its own: a browser holds what it shows at full size, four
 * bytes a pixel, and holds as much again of what it makes smaller itself. Every pixel is the mean of those that it stands for.
 */
export async function viewOfPicture(picture: Picture, longSidePx: number): Promise<Blob> {
  const share = Math.min(1, longSidePx / Math.max(picture.widthPx, picture.heightPx));
  const width = Math.max(1, Math.round(share * picture.widthPx));
  const height = Math.max(1, Math.round(share * picture.heightPx));
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (pen === null) throw new Error('this browser gives no canvas to draw on');
  const row = pen.createImageData(width, 1);
  for (let y = 0; y < height; y++) {
    fillRow(picture, y, height, row.data);
    pen.putImageData(row, 0, y);
  }
  const view = await canvas.convertToBlob({ type: 'image/jpeg', quality: VIEW_QUALITY });
  canvas.width = 0;
  return view;
}

/** Of 1: nothing is seen to be lost (chosen by us). */
const VIEW_QUALITY = 0.92;

/** Row `y` of `height`, as many pixels wide as `rgba` holds. */
function fillRow(
  { widthPx, heightPx, rgb }: Picture,
  y: number,
  height: number,
  rgba: Uint8ClampedArray,
): void {
  const width = rgba.length / 4;
  const [top, bottom] = [firstOf(y, height, heightPx), firstOf(y + 1, height, heightPx)];
  for (let x = 0; x < width; x++) {
    const [left, right] = [firstOf(x, width, widthPx), firstOf(x + 1, width, widthPx)];
    let [red, green, blue] = [0, 0, 0];
    for (let row = top; row < bottom; row++) {
      const end = 3 * (row * widthPx + right);
      for (let at = 3 * (row * widthPx + left); at < end; at += 3) {
        red += rgb[at];
        green += rgb[at + 1];
        blue += rgb[at + 2];
      }
    }
    const count = (bottom - top) * (right - left);
    rgba[4 * x] = red / count;
    rgba[4 * x + 1] = green / count;
    rgba[4 * x + 2] = blue / count;
    rgba[4 * x + 3] = 255;
  }
}

/** The first of `from` pixels that the `place`-th of `to` stands for; no more than there are of one, none is left without. */
function firstOf(place: number, to: number, from: number): number {
  return Math.floor((place * from) / to);
}
