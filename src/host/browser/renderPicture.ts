import type { Raster } from '../../core/index.ts';

/** A raster as the bytes of a PNG file, in a page or a worker. */
export async function pngOf({ widthPx, heightPx, rgb }: Raster): Promise<Uint8Array> {
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('this browser draws no pictures');
  const picture = pen.createImageData(widthPx, heightPx);
  for (let at = 0; at < widthPx * heightPx; at++) {
    for (let channel = 0; channel < 3; channel++)
      picture.data[4 * at + channel] = rgb[3 * at + channel] as number;
    picture.data[4 * at + 3] = 255;
  }
  pen.putImageData(picture, 0, 0);
  return new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
}
