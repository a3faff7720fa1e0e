import sharp from 'sharp';
import type { Raster } from '../../core/index.ts';

const MM_PER_INCH = 25.4;

/** A raster as the bytes of a PNG file. */
export async function pngOf({ widthPx, heightPx, rgb }: Raster): Promise<Uint8Array> {
  const png = await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .png(SMALL)
    .toBuffer();
  return new Uint8Array(png);
}

/** An SVG of ours, its size in millimetres, as the bytes of a PNG file with so many pixels a millimetre. */
export async function pngOfSvg(svg: string, pixelsPerMm: number): Promise<Uint8Array> {
  const png = await sharp(new TextEncoder().encode(svg), { density: pixelsPerMm * MM_PER_INCH })
    .flatten({ background: '#ffffff' })
    .png(SMALL)
    .toBuffer();
  return new Uint8Array(png);
}

const SMALL = { compressionLevel: 9, adaptiveFiltering: true } as const;
