import { letteringStrokes } from '../drawing/index.ts';
import type { Colour, InkedLine, PictureSheet, PlacedRaster, Raster } from '../judging/index.ts';
import { millimetres } from './millimetres.ts';
import { svgPath } from './svgPath.ts';
import { escapeXml } from './writeSvg.ts';

/** Pen of lettering as a share of its height. */
const PEN_SHARE = 0.1;
const BOLD_PEN_SHARE = 0.15;

export function letteringPenMm(heightMm: number, bold: boolean | undefined): number {
  return (bold ? BOLD_PEN_SHARE : PEN_SHARE) * heightMm;
}

/** A picture as an SVG at true size. `pngOf` gives a raster as the bytes of a PNG file. */
export async function writeSheetSvg(
  sheet: PictureSheet,
  pngOf: (raster: Raster) => Promise<Uint8Array>,
): Promise<string> {
  const { min, max } = sheet.box;
  const width = millimetres(max.x - min.x);
  const height = millimetres(max.y - min.y);
  const images: string[] = [];
  for (const [index, placed] of sheet.rasters.entries())
    images.push(...rasterParts(placed, index, sheet, base64(await pngOf(placed.raster))));
  const lettering = sheet.lettering.flatMap(({ lettering: one, ink, bold }) => {
    const path = letteringStrokes(one)
      .map((chain) => svgPath(chain, min.x, max.y))
      .join('');
    return path === '' ? [] : [`<path d="${path}" ${strokeOf(ink, letteringPenMm(one.heightMm, bold))}/>`];
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeXml(sheet.title)}</title>`,
    `<rect width="${width}" height="${height}" fill="${hex(sheet.ground)}"/>`,
    ...images,
    '<g fill="none" stroke-linecap="round" stroke-linejoin="round">',
    ...sheet.lines.map((line) => linePart(line, sheet)),
    ...lettering,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function rasterParts(
  { box, within }: PlacedRaster,
  index: number,
  { box: { min, max } }: PictureSheet,
  png: string,
): string[] {
  const place = [box.min.x - min.x, max.y - box.max.y, box.max.x - box.min.x, box.max.y - box.min.y].map(
    millimetres,
  );
  const clip =
    within === undefined
      ? []
      : [`<clipPath id="within-${index}"><path d="${svgPath(within, min.x, max.y)}"/></clipPath>`];
  const clipped = within === undefined ? '' : ` clip-path="url(#within-${index})"`;
  return [
    ...clip,
    `<g${clipped}><image x="${place[0]}" y="${place[1]}" width="${place[2]}" height="${place[3]}" preserveAspectRatio="none" xlink:href="data:image/png;base64,${png}"/></g>`,
  ];
}

function linePart(
  { chain, ink, widthMm, dashMm, fill }: InkedLine,
  { box: { min, max } }: PictureSheet,
): string {
  const filled = fill === undefined ? '' : ` fill="${hex(fill)}"`;
  const stroke = widthMm > 0 ? ` ${strokeOf(ink, widthMm)}` : '';
  const dashes = dashMm === undefined ? '' : ` stroke-dasharray="${dashMm.map(millimetres).join(' ')}"`;
  return `<path d="${svgPath(chain, min.x, max.y)}"${filled}${stroke}${dashes}/>`;
}

function strokeOf(ink: Colour, widthMm: number): string {
  return `stroke="${hex(ink)}" stroke-width="${millimetres(widthMm)}"`;
}

function hex(colour: Colour): string {
  return `#${colour.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes in the sixty-four digits of RFC 4648. */
function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [a, b, c] = [bytes[at] ?? 0, bytes[at + 1] ?? 0, bytes[at + 2] ?? 0];
    const left = bytes.length - at;
    parts.push(
      (DIGITS[a >> 2] ?? '') +
        (DIGITS[((a & 3) << 4) | (b >> 4)] ?? '') +
        (left > 1 ? (DIGITS[((b & 15) << 2) | (c >> 6)] ?? '') : '=') +
        (left > 2 ? (DIGITS[c & 63] ?? '') : '='),
    );
  }
  return parts.join('');
}
