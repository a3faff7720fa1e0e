import { point } from '../base/index.ts';
import { boundsOf } from '../curve/index.ts';
import { lampLight } from '../surface/index.ts';
import { colourAt, shaded, WOOD_SCALE } from './colourScale.ts';
import { acrossPlate, alongPlate } from './contourDrawing.ts';
import { type ContourPlan, contourChain, contourWords, isHeavy, LETTERED_FOR_MM } from './contourPlan.ts';
import { fieldBox, fieldRaster } from './fieldRaster.ts';
import type { Colour, InkedLettering, InkedLine, PictureSheet } from './pictureSheet.ts';

const PAPER: Colour = [255, 255, 255];
const INK: Colour = [62, 44, 30];
const LINE: Colour = [112, 76, 46];
const GUIDE: Colour = [60, 96, 130];

const RIGHT_ANGLE = Math.PI / 2;

/** A lamp from the upper left, high enough to leave the tints: it only lets the shape be seen. */
const RELIEF_LAMP = {
  heightRad: RIGHT_ANGLE / 2,
  fromRad: -RIGHT_ANGLE / 2,
  distanceMm: 3000,
  halfWidthRad: 0,
} as const;
/** Share of the relief's light and shade that is laid over the tints. */
const RELIEF_SHARE = 0.75;

const MARGIN_MM = 7;
const TITLE_MM = 4.2;
const WORDS_MM = 3;

/** The contours of a plate over tints of its heights, to look at: at true size. */
export function contourPicture(plan: ContourPlan): PictureSheet {
  const { arch, field, outline, lines, numbers, intervalMm } = plan;
  const { min, max } = boundsOf(outline);
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const { title, says } = contourWords(plan);
  const light = lampLight(field, RELIEF_LAMP);
  const low = arch.channelZMm;
  const spanMm = arch.archHeightMm - low;
  const places = field.zMm.map((z, index) => (Number.isNaN(z) ? Number.NaN : index));
  const tint = (index: number): Colour => {
    const shade = 1 - RELIEF_SHARE + RELIEF_SHARE * (light[index] ?? 1);
    const share = TINT_SHARE * (((field.zMm[index] as number) - low) / spanMm);
    return shaded(colourAt(WOOD_SCALE, share), shade);
  };
  const inked = lines.map((line): InkedLine => {
    const heavy = isHeavy(line.levelMm, intervalMm);
    return { chain: contourChain(line), ink: heavy ? INK : LINE, widthMm: (heavy ? 0.45 : 0.24) * size };
  });
  const footMm = (MARGIN_MM + 3 * 6) * size;
  return {
    title: `${plan.instrumentName}: ${title}`,
    box: {
      min: point(min.x - MARGIN_MM * size, min.y - footMm),
      max: point(max.x + MARGIN_MM * size, max.y + MARGIN_MM * size),
    },
    ground: PAPER,
    rasters: [{ raster: fieldRaster(field, places, tint, PAPER), box: fieldBox(field), within: outline }],
    lines: [
      ...inked,
      ...acrossPlate(plan).map((chain) => ({ chain, ink: GUIDE, widthMm: 0.15 * size, dashMm: [1.6, 1.6] })),
      ...alongPlate(plan).map((chain) => ({
        chain,
        ink: GUIDE,
        widthMm: 0.15 * size,
        dashMm: [6, 1.4, 0.8, 1.4],
      })),
      { chain: outline, ink: INK, widthMm: 0.5 * size },
    ],
    lettering: [
      ...numbers.map(({ lettering, levelMm }) => ({
        lettering,
        ink: INK,
        bold: isHeavy(levelMm, intervalMm),
      })),
      ...[title, ...says].map(
        (text, line): InkedLettering => ({
          lettering: {
            text,
            at: point((min.x + max.x) / 2, min.y - (10 + 6 * line) * size),
            heightMm: (line === 0 ? TITLE_MM : WORDS_MM) * size,
            turnRad: 0,
            anchor: 'middle',
          },
          ink: INK,
        }),
      ),
    ],
  };
}

/** Share of the scale that the highest place reaches: darker tints would swallow the numbers. */
const TINT_SHARE = 0.72;
