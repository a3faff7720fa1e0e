export { canonicalJson, type Json } from './canonicalJson.ts';
export { type PackedDesign, type PackFile, type PackKind, packManifest } from './packManifest.ts';
export { preflight } from './preflight.ts';
export { svgPath } from './svgPath.ts';
export { type DxfRelease, writeDxf } from './writeDxf.ts';
export { writePdf } from './writePdf.ts';
export { escapeXml, writeSvg } from './writeSvg.ts';
