export {
  HAND_STUFF,
  type HandBody,
  type HandHold,
  type HandPicture,
  handBody,
  handLamp,
  handPicture,
  seesTop,
} from './hand/index.ts';
export { type LampStand, type LitPlate, litPlate } from './litPlate.ts';
export { type ShownBeside, type ShownDifference, shownBeside } from './shownBeside.ts';
export {
  type BodyKind,
  type BodyUnderHand,
  bodyUnderHand,
  type ShownBody,
  type ShownNote,
  type ShownWidth,
  shownBody,
} from './shownBody.ts';
export { type ShownDrawing, shownDrawing } from './shownDrawing.ts';
export { type HoleKind, type ShownHoles, shownHoles } from './shownHoles.ts';
export { type ShownLine, shownLine } from './shownLine.ts';
export { type ShownOutline, shownOutline } from './shownOutline.ts';
export { type SheetInk, type SheetPen, type ShownPage, type ShownPages, shownPages } from './shownPages.ts';
export {
  gaugesUnderHand,
  roughPlate,
  type ShownContour,
  type ShownPlate,
  type ShownStation,
  shownPlate,
} from './shownPlate.ts';
export { type ShownSide, type SideKind, shownSide } from './shownSide.ts';
export type { ShownSpan } from './shownSpan.ts';
export {
  roughThickness,
  type ShownCut,
  type ShownFigure,
  type ShownThickness,
  type ShownZone,
  shownThickness,
} from './shownThickness.ts';
