import type { Picture } from './picture.ts';

/** An eight-bit picture in grey, row by row from the top left. */
export interface GrayPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly data: Uint8Array;
}

/** The picture's brightness: green weighs most, as for the eye (ITU-R BT.601). */
export function grayOf(picture: Picture): GrayPicture {
  const { widthPx, heightPx, rgb } = picture;
  const data = new Uint8Array(widthPx * heightPx);
  for (let place = 0, from = 0; place < data.length; place++, from += 3)
    data[place] = (77 * rgb[from] + 150 * rgb[from + 1] + 29 * rgb[from + 2] + 128) >> 8;
  return { widthPx, heightPx, data };
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
