import { accept, type Checked, refuse } from '../../base/index.ts';
import { readDesign, type TraceRecord } from '../../design/index.ts';
import { readTrace } from '../../files/index.ts';

/**
 * What an earlier trace was asked for, from its document or from a design that was drafted from it.
 * Faults: those of reading either, `trace.no-record` where it holds none.
 */
export function recordedRequest(json: unknown): Checked<TraceRecord> {
  const { format } = (json ?? {}) as { readonly format?: unknown };
  if (format === 'garland-design') {
    const design = readDesign(json);
    if (!design.ok) return design;
    const { outline } = design.value.design;
    return outline.kind === 'traced' && outline.request ? accept(outline.request) : refuse(noRecord());
  }
  const trace = readTrace(json);
  if (!trace.ok) return trace;
  return trace.value.request ? accept(trace.value.request) : refuse(noRecord());
}

function noRecord() {
  return {
    code: 'trace.no-record',
    at: '--as',
    found: 'nothing is written there of how its outline was traced',
    need: 'a trace, or a design drafted from one',
    remedy: 'give the options of the trace one by one',
  };
}
