/**
 * Paints the demo's photographs anew: `node dist/demo/paintPhotographs.js FOLDER`. Twelve megapixels each, as a
 * phone would keep them: turned by the orientation note, with the focal length noted, as JPEG.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { calibrationSheet } from '../src/core/index.ts';
import { fiddleScene } from './painter/fiddleScene.ts';
import { makeLens } from './painter/lens.ts';
import { paint } from './painter/paint.ts';
import type { Face } from './painter/scene.ts';
import { sheetTone } from './painter/sheetTone.ts';

const WIDTH_PX = 3024;
const HEIGHT_PX = 4032;
const FOCAL_PX = 8840;
/** What the phone notes; its true focal length differs a little, as they do. */
const NOTED_FOCAL_35_MM = 77;

/** Where the phone was held for each picture: mm over the sheet's lower left corner. */
const STAND = {
  top: { eye: [252, 118, 1165], target: [216, 149, 18], rollRad: -1.552 },
  back: { eye: [182, 196, 1140], target: [214, 148, 18], rollRad: -1.594 },
} as const;

export async function paintPhotograph(face: Face, share: number): Promise<Buffer> {
  const sheet = calibrationSheet('A3');
  const widthPx = Math.round(WIDTH_PX * share);
  const heightPx = Math.round(HEIGHT_PX * share);
  const lens = makeLens({
    widthPx,
    heightPx,
    focalPx: FOCAL_PX * share,
    centreOffsetPx: [7 * share, -5 * share],
    k1: -0.11,
    k2: 0.04,
    ...STAND[face],
  });
  const scene = fiddleScene(face, sheetTone(sheet), sheet.widthMm, sheet.heightMm);
  const { rgb } = paint(scene, lens, widthPx, heightPx, 2);
  return await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .rotate(270)
    .withMetadata({ orientation: 6, exif: { IFD2: { FocalLengthIn35mmFilm: String(NOTED_FOCAL_35_MM) } } })
    .jpeg({ quality: 90, chromaSubsampling: '4:4:4' })
    .toBuffer();
}

const folder = process.argv[2];
if (folder !== undefined && process.argv[1]?.endsWith('paintPhotographs.js')) {
  mkdirSync(folder, { recursive: true });
  for (const face of ['top', 'back'] as const)
    writeFileSync(join(folder, `fiddle-${face}.jpg`), await paintPhotograph(face, 1));
}
