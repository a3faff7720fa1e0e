import { accept, type Checked, type Finding, refuse } from '../../base/index.ts';
import { layoutPages } from '../../drawing/index.ts';
import { writePdf, writePictureSvg, writeSheetPdf, writeSheetSvg } from '../../files/index.ts';
import type { Raster } from '../../judging/index.ts';
import { speechOf } from '../../words/index.ts';
import { type PictureRequest, pictureNameFaults } from './pictureRequest.ts';
import type { PlatePicture } from './platePicture.ts';

/** What a machine brings for writing pictures. */
export interface PictureTools {
  /** A raster as the bytes of a PNG file. */
  readonly pngOf: (raster: Raster) => Promise<Uint8Array>;
  /** An SVG of ours as the bytes of a PNG file with so many pixels a millimetre. */
  readonly pngOfSvg: (svg: string, pixelsPerMm: number) => Promise<Uint8Array>;
}

export interface PictureFile {
  readonly bytes: Uint8Array;
  readonly findings: readonly Finding[];
}

/**
 * A picture as the bytes of a file, by the ending of its name: SVG and PDF at true size, PNG with the pixels asked for. What is a
 * drawing prints as pages of the chosen paper, tiled where it is larger. Faults: `map.name`, those of the writers.
 */
export async function pictureFile(
  picture: PlatePicture,
  request: PictureRequest,
  path: string,
  tools: PictureTools,
): Promise<Checked<PictureFile>> {
  const faults = pictureNameFaults(path);
  if (faults.length > 0) return refuse(...faults);
  if (/\.pdf$/i.test(path)) return printed(picture, request);
  const svg = await svgOf(picture, tools);
  if (!svg.ok) return svg;
  const bytes = /\.svg$/i.test(path)
    ? new TextEncoder().encode(svg.value)
    : await tools.pngOfSvg(svg.value, request.pixelsPerMm);
  return accept({ bytes, findings: [] });
}

async function svgOf({ sheet, drawing }: PlatePicture, { pngOf }: PictureTools): Promise<Checked<string>> {
  if (sheet !== undefined) return accept(await writeSheetSvg(sheet, pngOf));
  return drawing === undefined ? refuse(nothing()) : writePictureSvg(drawing);
}

async function printed(
  { sheet, drawing }: PlatePicture,
  { paper, language }: PictureRequest,
): Promise<Checked<PictureFile>> {
  if (drawing !== undefined) {
    const pages = layoutPages([drawing], { paper, title: drawing.title, say: speechOf(language).tell });
    return pages.ok ? accept({ bytes: await writePdf(pages.value), findings: pages.value.findings }) : pages;
  }
  return sheet === undefined
    ? refuse(nothing())
    : accept({ bytes: await writeSheetPdf(sheet), findings: [] });
}

function nothing() {
  return {
    code: 'picture.empty',
    at: 'the picture',
    found: 'nothing to draw',
    need: 'a picture',
    remedy: 'ask for another',
  };
}
