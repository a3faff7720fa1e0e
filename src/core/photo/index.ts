export {
  blackBoxesOfMarker,
  type CalibrationSheet,
  calibrationSheet,
  paperOfMarker,
  SHEET_BAR_MM,
  SHEET_PAPERS,
  type SheetBar,
  type SheetMarker,
  type SheetPaper,
} from './calibrationSheet.ts';
export { type Camera, type Projection, projection, type SheetPlace } from './camera.ts';
export type { FoundMarker, GrayPicture, MarkerFinder } from './markerFinder.ts';
export type { Picture } from './picture.ts';
export {
  type CameraTrust,
  type CameraView,
  type ScaleView,
  type Stretch,
  toPhoto,
  toScene,
  type View,
  type ViewMap,
  viewMap,
} from './view.ts';
