export { canonicalJson, type Json } from './canonicalJson.ts';
export { chainFromDocument, chainToDocument, pointsToDocument, toFile } from './chainDocument.ts';
export { documentText } from './documentText.ts';
export {
  type HintsAbout,
  hintsFrom,
  hintsText,
  hintsToFile,
  type PhotographHints,
  readHints,
} from './hintsDocument.ts';
export { instrumentDocument } from './instrumentDocument.ts';
export { type PackedDesign, type PackFile, type PackKind, packManifest } from './packManifest.ts';
export { preflight } from './preflight.ts';
export { settledDigits } from './settledDigits.ts';
export { svgPath } from './svgPath.ts';
export { type HoleDocument, readTrace, type TraceDocument } from './traceDocument.ts';
export { write3mf } from './write3mf.ts';
export { type DxfRelease, writeDxf } from './writeDxf.ts';
export { writeEdgedStep } from './writeEdgedStep.ts';
export { writePdf } from './writePdf.ts';
export { writePictureSvg } from './writePictureSvg.ts';
export { writePlateStep } from './writePlateStep.ts';
export { writeSheetPdf } from './writeSheetPdf.ts';
export { writeSheetSvg } from './writeSheetSvg.ts';
export { writeStep } from './writeStep.ts';
export { writeStl } from './writeStl.ts';
export { escapeXml, writeSvg } from './writeSvg.ts';
