export { type DxfRelease, writeDxf } from './writeDxf.ts';
export { writePdf } from './writePdf.ts';
export { writeSvg } from './writeSvg.ts';
