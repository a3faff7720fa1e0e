export { checkDesign } from './checkDesign.ts';
export { checkInstrument } from './checkInstrument.ts';
