import sharp from 'sharp';
import { fiddleScene, type SheetTone } from '../../demo/painter/fiddleScene.ts';
import { type Lens, makeLens } from '../../demo/painter/lens.ts';
import { paint } from '../../demo/painter/paint.ts';
import { sheetTone } from '../../demo/painter/sheetTone.ts';
import { EDGE_HEIGHT_MM } from '../../demo/villageFiddle.ts';
import { calibrationSheet } from '../../src/core/index.ts';
import { heightCard } from '../../src/core/photo/index.ts';

const [WIDTH_PX, HEIGHT_PX] = [1500, 2000];
/** What the camera notes of itself, as phones do. */
const NOTED_FOCAL_35_MM = '74';
/** mm. Lower left corner of the card, on its block beside the sheet. */
const CARD_AT = [178, -58] as const;

const STAND = {
  'fiddle-card': { eye: [200, 130, 1300], target: [212, 130, 10], focalPx: 4300 },
  'fiddle-tilted': { eye: [230, -210, 1160], target: [212, 149, 10], focalPx: 4250 },
} as const;

/** The pictures kept as `fiddle-card.jpg`, with a height card on the bench, and `fiddle-tilted.jpg`, without one. */
export async function paintFiddleOnSheet(name: keyof typeof STAND): Promise<Buffer> {
  const sheet = calibrationSheet('A3');
  const lens = makeLens({
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    centreOffsetPx: [2, -3],
    k1: -0.11,
    k2: 0.04,
    rollRad: -1.56,
    ...STAND[name],
  });
  const scene = fiddleScene('top', sheetTone(sheet), sheet.widthMm, sheet.heightMm);
  const { rgb } = paint(scene, lens, WIDTH_PX, HEIGHT_PX, 2);
  if (name === 'fiddle-card') layCard(rgb, lens);
  return await sharp(rgb, { raw: { width: WIDTH_PX, height: HEIGHT_PX, channels: 3 } })
    .withExif({ IFD2: { FocalLengthIn35mmFilm: NOTED_FOCAL_35_MM } })
    .jpeg({ quality: 86 })
    .toBuffer();
}

/** Card 3 over the picture, level with the edge of the plate: where a pixel's rays meet it they see its paper or its ink. */
function layCard(rgb: Uint8Array, lens: Lens): void {
  const tone: SheetTone = sheetTone(heightCard(3) as never);
  const steps = [-0.375, -0.125, 0.125, 0.375];
  for (let row = 0; row < HEIGHT_PX; row++)
    for (let column = 0; column < WIDTH_PX; column++) {
      const seen = steps.flatMap((u) =>
        steps.map((v) => {
          const [x, y] = lens.onPlane(column + u, row + v, EDGE_HEIGHT_MM);
          return tone(x - CARD_AT[0], y - CARD_AT[1]);
        }),
      );
      const met = seen.filter((one) => one !== undefined);
      if (met.length === 0) continue;
      const own = met.reduce((sum, one) => sum + 32 + 190 * one, 0);
      const at = 3 * (row * WIDTH_PX + column);
      for (let k = 0; k < 3; k++)
        rgb[at + k] = Math.round((own + (seen.length - met.length) * (rgb[at + k] as number)) / seen.length);
    }
}
