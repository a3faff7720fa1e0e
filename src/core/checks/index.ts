export { builtFindings, missWords } from './builtFindings.ts';
export { BUILT_PART_WORDS, BUILT_PARTS, type BuiltPart } from './builtPlaceName.ts';
export {
  type BuiltFault,
  type BuiltMeasure,
  type BuiltPlace,
  type BuiltReport,
  builtReport,
} from './builtReport.ts';
export { checkInstrument } from './checkInstrument.ts';
export { rangeFindings } from './rangeChecks.ts';
