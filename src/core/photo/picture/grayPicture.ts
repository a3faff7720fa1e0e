import type { GrayPicture } from '../sheet/markerFinder.ts';
import type { Picture } from './picture.ts';

/** The picture's brightness: green weighs most, as for the eye (ITU-R BT.601). */
export function grayOf(picture: Picture): GrayPicture {
  const { widthPx, heightPx, rgb } = picture;
  const data = new Uint8Array(widthPx * heightPx);
  for (let place = 0, from = 0; place < data.length; place++, from += 3)
    data[place] = (77 * rgb[from] + 150 * rgb[from + 1] + 29 * rgb[from + 2] + 128) >> 8;
  return { widthPx, heightPx, data };
}

/**
 * The picture with each block of `times` by `times` pixels averaged into one; a rest at the right and lower edge is
 * dropped. Small pixel (x, y) has its centre at large ((x + ½)·times − ½, (y + ½)·times − ½): {@link enlarged}.
 */
export function shrunk(picture: GrayPicture, times: number): GrayPicture {
  if (times === 1) return picture;
  const widthPx = Math.floor(picture.widthPx / times);
  const heightPx = Math.floor(picture.heightPx / times);
  const data = new Uint8Array(widthPx * heightPx);
  const sums = new Uint32Array(widthPx);
  const half = (times * times) >> 1;
  for (let row = 0; row < heightPx; row++) {
    sums.fill(half);
    for (let inner = 0; inner < times; inner++) {
      let from = (row * times + inner) * picture.widthPx;
      for (let column = 0; column < widthPx; column++)
        for (let step = 0; step < times; step++) sums[column] = sums[column] + picture.data[from++];
    }
    for (let column = 0; column < widthPx; column++)
      data[row * widthPx + column] = Math.floor(sums[column] / (times * times));
  }
  return { widthPx, heightPx, data };
}

/** Where a coordinate of a picture shrunk `times` lies in the large one; pixel centres have whole numbers in both. */
export function enlarged(coordinatePx: number, times: number): number {
  return (coordinatePx + 0.5) * times - 0.5;
}

/** Brightness between pixel centres, bilinear; beyond the edge the nearest pixel's. */
export function brightnessAt(picture: GrayPicture, x: number, y: number): number {
  const { widthPx, heightPx, data } = picture;
  const [inX, inY] = [Math.min(Math.max(x, 0), widthPx - 1), Math.min(Math.max(y, 0), heightPx - 1)];
  const column = Math.min(Math.floor(inX), widthPx - 2);
  const row = Math.min(Math.floor(inY), heightPx - 2);
  const [right, down] = [inX - column, inY - row];
  const place = row * widthPx + column;
  const upper = data[place] * (1 - right) + data[place + 1] * right;
  const lower = data[place + widthPx] * (1 - right) + data[place + widthPx + 1] * right;
  return upper * (1 - down) + lower * down;
}
