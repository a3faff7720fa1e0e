import sharp from 'sharp';
import type { Raster } from '../../core/index.ts';

/** A raster as the bytes of a PNG file. */
export async function pngOf({ widthPx, heightPx, rgb }: Raster): Promise<Uint8Array> {
  const png = await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .png(SMALL)
    .toBuffer();
  return new Uint8Array(png);
}

/** An SVG of ours, its size in millimetres, as the bytes of a PNG file with so many pixels a millimetre, to the next whole pixel. */
export async function pngOfSvg(svg: string, pixelsPerMm: number): Promise<Uint8Array> {
  // Renderers part over what a millimetre is; none over a pixel. Whole pixels are filled to their border.
  const inPixels = svg
    .replace('<svg ', '<svg preserveAspectRatio="none" ')
    .replace(/(width|height)="([\d.]+)mm"/g, (_, side: string, mm: string) => {
      return `${side}="${Math.round(Number(mm) * pixelsPerMm)}"`;
    });
  const png = await sharp(new TextEncoder().encode(inPixels), { density: PIXEL_DENSITY })
    .flatten({ background: '#ffffff' })
    .png(SMALL)
    .toBuffer();
  return new Uint8Array(png);
}

/** Dots an inch at which a pixel of an SVG is a pixel of the picture. */
const PIXEL_DENSITY = 72;

const SMALL = { compressionLevel: 9, adaptiveFiltering: true } as const;
