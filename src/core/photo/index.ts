export type { BodyTrace, NamedStretch, TraceHints } from './bodyTrace.ts';
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
export { cameraView, type ScenePlane } from './cameraView.ts';
export { type EdgeInScene, edgeInScene } from './edgeInScene.ts';
export { grayOf } from './grayPicture.ts';
export { NO_SHEET_TRUST, type ScaleCorrection, SHEET_TRUST, scaleFromKnown } from './knownLengths.ts';
export {
  type KnownMeasure,
  LENGTHS_ACROSS,
  LENGTHS_ALONG,
  type SceneMeasure,
  type SceneTrust,
} from './knownRatio.ts';
export type { FoundMarker, GrayPicture, MarkerFinder } from './markerFinder.ts';
export type { MirrorAxis } from './mirrorAxis.ts';
export { type NearEdge, nearPlateEdge } from './nearPlateEdge.ts';
export type { Picture } from './picture.ts';
export { type PrintScale, printOf } from './printScale.ts';
export {
  type Rectified,
  type RectifyOptions,
  rectifiedToScene,
  rectify,
  sceneBounds,
  sceneToRectified,
} from './rectify.ts';
export { type BodyWear, type RestoredOutline, restoreOutline } from './restoreOutline.ts';
export { refineSaddle, type Saddle, type SaddleGuess } from './saddle.ts';
export { sheetSquaresInScene } from './sheetMask.ts';
export { type MeasuredPair, readAnySheet, readSheet, type SheetReading } from './sheetReading.ts';
export { type CameraOptions, type SolvedCamera, solveCamera } from './solveCamera.ts';
export { traceBody } from './traceBody.ts';
export {
  type CameraTrust,
  type CameraView,
  type ScaleView,
  type Stretch,
  sheetPlaceInScene,
  toPhoto,
  toScene,
  type View,
  type ViewMap,
  viewMap,
} from './view.ts';
export { lengthBetween, type SceneLength } from './viewUncertainty.ts';
