export { BOTH_WAYS_SCALE, type ColourScale, colourAt, WOOD_SCALE } from './colourScale.ts';
export { contourDrawing } from './contourDrawing.ts';
export { contourPicture } from './contourPicture.ts';
export { type ContourPlan, contourPlan } from './contourPlan.ts';
export type {
  Colour,
  InkedLettering,
  InkedLine,
  PictureSheet,
  PlacedRaster,
  Raster,
} from './pictureSheet.ts';
export { type RakingLightPlan, rakingLight } from './rakingLight.ts';
