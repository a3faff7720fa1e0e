import type { Picture } from '../picture/picture.ts';
import type { GrayPicture } from './markerFinder.ts';

/**
 * The picture in grey with each block of `times` by `times` pixels averaged into one; a rest at the right and lower
 * edge is dropped. Small pixel (x, y) has its centre at large ((x + ½)·times − ½, (y + ½)·times − ½).
 */
export function shrunkGrayOf(picture: Picture, times: number): GrayPicture {
  const widthPx = Math.max(1, Math.floor(picture.widthPx / times));
  const heightPx = Math.max(1, Math.floor(picture.heightPx / times));
  const data = new Uint8Array(widthPx * heightPx);
  const sums = new Float64Array(widthPx);
  const { rgb } = picture;
  const across = Math.min(times, picture.widthPx);
  const down = Math.min(times, picture.heightPx);
  const share = 1 / (256 * across * down);
  for (let row = 0; row < heightPx; row++) {
    sums.fill(0);
    for (let inner = 0; inner < down; inner++) {
      let from = 3 * (row * times + inner) * picture.widthPx;
      for (let column = 0; column < widthPx; column++) {
        let [red, green, blue] = [0, 0, 0];
        for (const end = from + 3 * across; from < end; from += 3) {
          red += rgb[from];
          green += rgb[from + 1];
          blue += rgb[from + 2];
        }
        sums[column] += 77 * red + 150 * green + 29 * blue;
      }
    }
    for (let column = 0; column < widthPx; column++)
      data[row * widthPx + column] = Math.round(sums[column] * share);
  }
  return { widthPx, heightPx, data };
}
