import { type Point, point } from '../base/index.ts';
import { type Chain, placeChain } from '../curve/index.ts';
import type { PictureSheet } from './pictureSheet.ts';

/** Pictures side by side, their lower edges level, as one. */
export function sheetsInARow(
  title: string,
  sheets: readonly [PictureSheet, ...PictureSheet[]],
): PictureSheet {
  let rightMm = 0;
  const placed = sheets.map((sheet) => {
    const shift = point<'drawing'>(rightMm - sheet.box.min.x, -sheet.box.min.y);
    rightMm += sheet.box.max.x - sheet.box.min.x;
    return shifted(sheet, shift);
  });
  const heightMm = Math.max(...placed.map(({ box }) => box.max.y));
  return {
    title,
    box: { min: point(0, 0), max: point(rightMm, heightMm) },
    ground: sheets[0].ground,
    rasters: placed.flatMap(({ rasters }) => rasters),
    lines: placed.flatMap(({ lines }) => lines),
    lettering: placed.flatMap(({ lettering }) => lettering),
  };
}

function shifted(sheet: PictureSheet, { x, y }: Point<'drawing'>): PictureSheet {
  const at = (place: Point<'drawing'>): Point<'drawing'> => point(place.x + x, place.y + y);
  const chainAt = (chain: Chain<'drawing'>): Chain<'drawing'> =>
    placeChain<'drawing', 'drawing'>(chain, { turnRad: 0, shift: [x, y] });
  return {
    ...sheet,
    box: { min: at(sheet.box.min), max: at(sheet.box.max) },
    rasters: sheet.rasters.map(({ raster, box, within }) => ({
      raster,
      box: { min: at(box.min), max: at(box.max) },
      ...(within && { within: chainAt(within) }),
    })),
    lines: sheet.lines.map((line) => ({ ...line, chain: chainAt(line.chain) })),
    lettering: sheet.lettering.map((one) => ({
      ...one,
      lettering: { ...one.lettering, at: at(one.lettering.at) },
    })),
  };
}
