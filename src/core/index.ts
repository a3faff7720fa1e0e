/** The public face of the library: the verbs of `work` and the types that go in and come out of them. */
export {
  accept,
  Bug,
  type Checked,
  type Fault,
  type Finding,
  type Frame,
  faultSentence,
  type Point,
  point,
  refuse,
  seededRandom,
} from './base/index.ts';
export { BUILT_PARTS, type BuiltPart, missWords } from './checks/index.ts';
// curves, for benchmarks and other programs
export {
  type ArcFit,
  areaOf,
  type Chain,
  fitArcs,
  offsetChain,
  sampleChain,
  segments,
} from './curve/index.ts';
export { type Design, type Family, readDesign } from './design/index.ts';
export { type PackFile, type PhotographHints, readHints } from './files/index.ts';
export type { Instrument } from './instrument/index.ts';
export {
  blackBoxesOfMarker,
  type CalibrationSheet,
  calibrationSheet,
  type FoundMarker,
  type GrayPicture,
  type MarkerFinder,
  markerFinder,
  type Picture,
  SHEET_PAPERS,
  type SheetPaper,
  sheetNumbers,
  type TraceHints,
} from './photo/index.ts';
export { registerText } from './quantity/index.ts';
export { GARLAND_VERSION } from './version.ts';
export {
  type BuiltOutcome,
  type BuiltRequest,
  builtOutcome,
  type CheckedBuilt,
  check,
  checkBuilt,
  checkWishes,
  type Drafted,
  type DraftInput,
  derive,
  designText,
  draft,
  type GarlandOutline,
  heightCards,
  instrumentText,
  type KnownLength,
  type MakeKind,
  type MakeOptions,
  make,
  mapFile,
  outlineFromGarland,
  type Pack,
  type Photograph,
  parseBuiltOptions,
  parseKnownLength,
  parseMakeOptions,
  parseMeant,
  parseScan,
  parseSheetBar,
  recordedRequest,
  requestOf,
  sheet,
  type Traced,
  type TraceOutcome,
  type TraceRequest,
  trace,
  traceOutcome,
} from './work/index.ts';
