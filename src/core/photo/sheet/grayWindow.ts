import { type Point, point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import type { Picture } from '../picture/picture.ts';

/** A stretch of a picture in grey, and where its upper left pixel lies in the picture. */
export interface GrayWindow {
  readonly corner: Point<'photo'>;
  readonly gray: GrayPicture;
}

/** The pixels up to `reachPx` round a place, as far as the picture goes; null where less than two by two are left. */
export function grayWindow(picture: Picture, at: Point<'photo'>, reachPx: number): GrayWindow | null {
  const left = Math.max(0, Math.floor(at.x - reachPx));
  const top = Math.max(0, Math.floor(at.y - reachPx));
  const widthPx = Math.min(picture.widthPx, Math.ceil(at.x + reachPx) + 1) - left;
  const heightPx = Math.min(picture.heightPx, Math.ceil(at.y + reachPx) + 1) - top;
  if (!(widthPx >= 2 && heightPx >= 2)) return null;
  const data = new Uint8Array(widthPx * heightPx);
  const { rgb } = picture;
  for (let row = 0; row < heightPx; row++) {
    let from = 3 * ((top + row) * picture.widthPx + left);
    for (let place = row * widthPx, end = place + widthPx; place < end; place++, from += 3)
      data[place] = (77 * rgb[from] + 150 * rgb[from + 1] + 29 * rgb[from + 2] + 128) >> 8;
  }
  return { corner: point(left, top), gray: { widthPx, heightPx, data } };
}
