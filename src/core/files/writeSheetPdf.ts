import { PDFDocument, PDFName, type PDFRef } from '@cantoo/pdf-lib';
import { letteringStrokes } from '../drawing/index.ts';
import type { Colour, InkedLine, PictureSheet, PlacedRaster } from '../judging/index.ts';
import { millimetres, pureNumber } from './millimetres.ts';
import { pdfPath } from './pdfPage.ts';
import { letteringPenMm } from './writeSheetSvg.ts';

const POINTS_PER_MM = 72 / 25.4;

/** A picture as a PDF of one page of its own size, at true size, with no wish to be fitted to a paper. The same picture gives the same bytes. */
export async function writeSheetPdf(sheet: PictureSheet): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle(sheet.title);
  document.setCreator('Garland');
  document.setProducer('Garland');
  const { min, max } = sheet.box;
  const page = document.addPage([(max.x - min.x) * POINTS_PER_MM, (max.y - min.y) * POINTS_PER_MM]);
  const { catalog, context } = document;
  const images: Record<string, PDFRef> = {};
  const parts = [
    `${[POINTS_PER_MM, 0, 0, POINTS_PER_MM, -min.x * POINTS_PER_MM, -min.y * POINTS_PER_MM].map(pureNumber).join(' ')} cm`,
    '1 J 1 j',
    `${fill(sheet.ground)}${[min.x, min.y, max.x - min.x, max.y - min.y].map(millimetres).join(' ')} re f`,
  ];
  for (const [index, placed] of sheet.rasters.entries()) {
    const name = `Raster${index}`;
    const { raster } = placed;
    images[name] = context.register(
      context.flateStream(raster.rgb, {
        Type: 'XObject',
        Subtype: 'Image',
        Width: raster.widthPx,
        Height: raster.heightPx,
        ColorSpace: 'DeviceRGB',
        BitsPerComponent: 8,
      }),
    );
    parts.push(rasterPart(placed, name));
  }
  parts.push(...sheet.lines.map(linePart));
  for (const { lettering, ink, bold } of sheet.lettering)
    for (const chain of letteringStrokes(lettering))
      parts.push(linePart({ chain, ink, widthMm: letteringPenMm(lettering.heightMm, bold) }));
  page.node.set(PDFName.of('Contents'), context.register(context.flateStream(parts.join('\n'))));
  page.node.set(PDFName.of('Resources'), context.obj({ XObject: images }));
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None', DisplayDocTitle: true }));
  return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}

function rasterPart({ box, within }: PlacedRaster, name: string): string {
  const clip = within === undefined ? '' : `${pdfPath(within)}h W n\n`;
  const matrix = [box.max.x - box.min.x, 0, 0, box.max.y - box.min.y, box.min.x, box.min.y].map(millimetres);
  return `q\n${clip}${matrix.join(' ')} cm\n/${name} Do\nQ`;
}

function linePart({ chain, ink, widthMm, dashMm = [], fill: area }: InkedLine): string {
  const stroked = widthMm > 0;
  const pen = stroked
    ? `${millimetres(widthMm)} w ${colour(ink)} RG [${dashMm.map(millimetres).join(' ')}] 0 d\n`
    : '';
  const end = area === undefined ? (stroked ? 'S' : 'n') : stroked ? 'B' : 'f';
  return `${pen}${area === undefined ? '' : fill(area)}${pdfPath(chain)}${chain.closed ? 'h ' : ''}${end}`;
}

function fill(area: Colour): string {
  return `${colour(area)} rg\n`;
}

function colour(channels: Colour): string {
  return channels.map((channel) => (channel / 255).toFixed(4)).join(' ');
}
