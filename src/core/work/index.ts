export { type BuiltOutcome, builtOutcome } from './built/builtOutcome.ts';
export { type BuiltRequest, parseBuiltOptions } from './built/builtRequest.ts';
export { type CheckedBuilt, checkBuilt } from './built/checkBuilt.ts';
export { checkWishes, mapFile, mapNameFaults } from './built/mapFile.ts';
export { type GarlandOutline, outlineFromGarland } from './built/outlineFromGarland.ts';
export { check, derive, instrumentText } from './derive.ts';
export { type Drafted, type DraftInput, designText, draft } from './draft.ts';
export { drawInstrument } from './make/drawInstrument.ts';
export { make, type Pack } from './make/make.ts';
export { type MakeKind, type MakeOptions, parseMakeOptions } from './make/makeOptions.ts';
export { spokenPieces } from './make/spokenPieces.ts';
export { type PictureFile, type PictureTools, pictureFile } from './picture/pictureFile.ts';
export {
  PICTURE_KINDS,
  type PictureRequest,
  type PictureWords,
  parsePicture,
} from './picture/pictureRequest.ts';
export { type PlatePicture, platePicture } from './picture/platePicture.ts';
export { type ArchWords, parseArchWords } from './profile/profileWords.ts';
export { takeProfiles } from './profile/takeProfiles.ts';
export { type ProfileOutcome, traceArchProfile } from './profile/traceArchProfile.ts';
export { traceScroll } from './profile/traceScroll.ts';
export { valuesOfProfile } from './profile/valuesOfProfile.ts';
export { heightCards, sheet } from './sheet.ts';
export {
  type KeptGround,
  keptGround,
  piecesOf,
  type ShownNumbers,
  showAllNumbers,
  showable,
  showBody,
  showBodyUnderHand,
  showGaugesUnderHand,
  showNumbers,
  showOutline,
  showPages,
  showPlateRoughly,
  standsOn,
} from './show.ts';
export { aboutOfWishes, type GivenHints, givenHints, wishesOfHints } from './trace/givenHints.ts';
export { parseMeant } from './trace/meantWords.ts';
export { recordedRequest } from './trace/recordedRequest.ts';
export { type SheetInPhotograph, sheetInPhotograph } from './trace/sheetInPhotograph.ts';
export type { ShownUnsure } from './trace/shownUnsure.ts';
export { type ShownPlace, shownWays } from './trace/shownWays.ts';
export { type ShownTrace, type ShownWear, showTrace } from './trace/showTrace.ts';
export { type SquareOn, type SquareOnPart, squareOn } from './trace/squareOn.ts';
export { DIFFERENCE_TIMES } from './trace/tenfold.ts';
export { type Traced, trace } from './trace/trace.ts';
export { type TraceOutcome, traceOutcome } from './trace/traceOutcome.ts';
export type { TraceProgress } from './trace/traceProgress.ts';
export { requestOf } from './trace/traceRecord.ts';
export type { KnownLength, Photograph, TraceRequest } from './trace/traceRequest.ts';
export { parseKnownLength, parseScan, parseSheetBar } from './trace/traceWords.ts';
