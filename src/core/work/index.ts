export { check, derive, instrumentText } from './derive.ts';
export { type Drafted, type DraftInput, designText, draft } from './draft.ts';
export { drawInstrument } from './make/drawInstrument.ts';
export { make, type Pack } from './make/make.ts';
export { type MakeKind, type MakeOptions, parseMakeOptions } from './make/makeOptions.ts';
export { sheet } from './sheet.ts';
export { type Traced, trace } from './trace/trace.ts';
export { type TraceOutcome, traceOutcome } from './trace/traceOutcome.ts';
export {
  type KnownLength,
  parseKnownLength,
  parseSheetBar,
  type TraceRequest,
} from './trace/traceRequest.ts';
