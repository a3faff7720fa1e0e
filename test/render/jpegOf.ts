import sharp from 'sharp';
import type { Picture } from '../../src/core/photo/index.ts';

/** The picture as it comes back from a JPEG file of a quality, 1 to 100. */
export async function throughJpeg({ rgb, widthPx, heightPx }: Picture, quality: number): Promise<Picture> {
  const raw = { width: widthPx, height: heightPx, channels: 3 } as const;
  const file = await sharp(rgb, { raw }).jpeg({ quality }).toBuffer();
  const data = await sharp(file).removeAlpha().raw().toBuffer();
  return { widthPx, heightPx, rgb: new Uint8Array(data) };
}
