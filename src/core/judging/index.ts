export type { ColourScale } from './colourScale.ts';
export { compareDesigns, type DesignDifference } from './compareDesigns.ts';
export { contourDrawing } from './contourDrawing.ts';
export { contourPicture } from './contourPicture.ts';
export { type ContourPlan, contourPlan } from './contourPlan.ts';
export { curvaturePicture } from './curvaturePicture.ts';
export { differencePicture } from './differencePicture.ts';
export type {
  Colour,
  InkedLettering,
  InkedLine,
  PictureSheet,
  PlacedRaster,
  Raster,
} from './pictureSheet.ts';
export { type PlateContours, plateContours, roughContours } from './plateContours.ts';
export type { PlateMapPlan } from './plateMap.ts';
export { type RakingLightPlan, rakingLight } from './rakingLight.ts';
export { type PlateSection, sectionDrawing } from './sectionDrawing.ts';
export { spokenSheet } from './spokenSheet.ts';
export { thicknessDrawing } from './thicknessDrawing.ts';
export { thicknessPicture } from './thicknessPicture.ts';
export { roughThicknessPlan, type ThicknessPlan, thicknessPlan } from './thicknessPlan.ts';
