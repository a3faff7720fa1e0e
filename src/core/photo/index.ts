export type { BodyTrace, EdgePoint, NamedStretch, TraceHints } from './body/bodyTrace.ts';
export { SECTION_WORDS } from './body/templateStations.ts';
export { traceBody } from './body/traceBody.ts';
export { type Camera, type Projection, projection, type SheetPlace } from './camera/camera.ts';
export { cameraView } from './camera/cameraView.ts';
export { type HeightFromViews, heightFromViews, type PlaceInTwoViews } from './camera/heightFromViews.ts';
export { boundsInScene, paperInScene } from './camera/paperInScene.ts';
export {
  type Rectified,
  type RectifyOptions,
  rectifiedToScene,
  sceneToRectified,
} from './camera/rectify.ts';
export type { ScenePlane } from './camera/scenePlane.ts';
export type { CardSighting, SheetSighting, Shot, ShotsOptions } from './camera/shot.ts';
export { type CameraOptions, solveCamera } from './camera/solveCamera.ts';
export {
  type PlacedCard,
  type PlacedSheet,
  planeOfCard,
  type SolvedCamera,
  type SolvedScene,
} from './camera/solvedScene.ts';
export { solveShots } from './camera/solveShots.ts';
export { squareOn } from './camera/squareOn.ts';
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
} from './camera/view.ts';
export { lengthBetween, type PlaceInScene, type SceneLength } from './camera/viewUncertainty.ts';
export { type EdgeInScene, edgeInScene } from './edge/edgeInScene.ts';
export { type ExpectedPlace, expectedEdge } from './edge/expectedEdge.ts';
export { type JoinedEdges, joinedEdges } from './edge/joinedEdges.ts';
export { type NearEdge, nearPlateEdge } from './edge/nearPlateEdge.ts';
export { placesInTwoViews, type ViewedEdge } from './edge/placesInTwoViews.ts';
export { purflingPlane } from './edge/purflingPlane.ts';
export type { PurflingPlace, PurflingTrace } from './lines/purflingTrace.ts';
export {
  type HoleHeight,
  type PlacedSoundHole,
  soundHoleOnPlane,
  usualHoleHeight,
} from './lines/soundHoleOnPlane.ts';
export type { SoundHole, SoundHolesTrace } from './lines/soundHoleTrace.ts';
export {
  type CentreJoint,
  type CentreJointTrace,
  traceCentreJoint,
} from './lines/traceCentreJoint.ts';
export { type PurflingOptions, tracePurfling } from './lines/tracePurfling.ts';
export { traceSoundHoles } from './lines/traceSoundHoles.ts';
export { type JointOffAxis, jointOffAxis } from './meant/jointOffAxis.ts';
export type { MeantWishes, PurflingSpot, SeenPurfling, StretchRule } from './meant/meantWishes.ts';
export { type MirrorAxis, mirrorAxis } from './meant/mirrorAxis.ts';
export {
  type LeanPlace,
  type MeantSpot,
  type RestoredOutline,
  restoreOutline,
} from './meant/restoreOutline.ts';
export type { BodyWear, WearPlace } from './meant/wearMap.ts';
export { type ShapeGround, sheetGround } from './paper/sheetGround.ts';
export { type GrayPicture, grayOf } from './picture/grayPicture.ts';
export type { Picture } from './picture/picture.ts';
export type {
  ProfileKind,
  ProfileOptions,
  ProfilePlace,
  ProfileScene,
  TracedProfile,
} from './profile/tracedProfile.ts';
export { softFindings, traceProfile } from './profile/traceProfile.ts';
export { type ScrollSide, type ToldPlace, traceScrollSide } from './profile/traceScrollSide.ts';
export { type ContourPlace, type Silhouette, traceSilhouette } from './profile/traceSilhouette.ts';
export { NO_SHEET_TRUST, type ScaleCorrection, SHEET_TRUST, scaleFromKnown } from './scale/knownLengths.ts';
export { type KnownMeasure, type SceneMeasure, type SceneTrust } from './scale/knownRatio.ts';
export type { ShapeScene } from './shape/outermost.ts';
export { bodyToScene, type ShapeSeat } from './shape/shapeSeat.ts';
export type { ExpectedShape, ShapePlace, TracedShape } from './shape/tracedShape.ts';
export { type ShapeOptions, traceShape } from './shape/traceShape.ts';
export {
  type CalibrationSheet,
  calibrationSheet,
  SHEET_BAR_MM,
  type SheetBar,
} from './sheet/calibrationSheet.ts';
export { markerFinder } from './sheet/findMarkers.ts';
export { CARDS_ON_A_PAGE, type HeightCard, heightCard } from './sheet/heightCard.ts';
export type { MarkedPattern, SheetMarker } from './sheet/markedPattern.ts';
export { blackBoxesOfMarker } from './sheet/markerBoxes.ts';
export type { FoundMarker, MarkerFinder } from './sheet/markerFinder.ts';
export { type PrintScale, type SheetBars } from './sheet/printScale.ts';
export { type CardReading, readSheets, type SheetsReading } from './sheet/readSheets.ts';
export { type Saddle, type SaddleGuess } from './sheet/saddle.ts';
export { SHEET_PAPERS, type SheetPaper, sheetNumbers } from './sheet/sheetPlans.ts';
export { type MeasuredPair, readAnySheet, readSheet, type SheetReading } from './sheet/sheetReading.ts';
export { squaresInScene } from './sheet/squaresInScene.ts';
