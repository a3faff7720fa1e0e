export { BOTH_WAYS_SCALE, type ColourScale, colourAt, WOOD_SCALE } from './colourScale.ts';
export type {
  Colour,
  InkedLettering,
  InkedLine,
  PictureSheet,
  PlacedRaster,
  Raster,
} from './pictureSheet.ts';
export { type RakingLightPlan, rakingLight } from './rakingLight.ts';
