import { accept, type Checked, refuse } from '../../base/index.ts';
import { type MarkerFinder, readAnySheet } from '../../photo/index.ts';
import { seeAsPhotographed } from './seeAsPhotographed.ts';
import type { SeenBody } from './seenBody.ts';
import { seeOnSheet } from './seeOnSheet.ts';
import type { Photograph, TraceRequest } from './traceRequest.ts';

/**
 * The body in each photograph: through the calibration sheet where there is one; a scan by its own scale; else in the
 * photograph as it is, with the scale still open. Faults: those of the sheet, the camera and the tracing, with the
 * photograph's name where there are several; `trace.edge-height` when there is a sheet and no height;
 * `known.none` when there is neither sheet nor length nor scale; `trace.no-sheet-among-several`.
 */
export function seeBodies(
  request: TraceRequest,
  finder: MarkerFinder,
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const [first, ...further] = request.photographs;
  const start = seeOne(request, first, finder);
  if (!start.ok) return named(first, start, further.length > 0);
  const seen: [SeenBody, ...SeenBody[]] = [start.value];
  for (const photograph of further) {
    const next = seeOne(request, photograph, finder);
    if (!next.ok) return named(photograph, next, true);
    seen.push(next.value);
  }
  const bare = seen.length > 1 ? seen.find(({ sheet }) => sheet === null) : undefined;
  return bare ? refuse(noSheet(bare.photograph)) : accept(seen);
}

function seeOne(request: TraceRequest, photograph: Photograph, finder: MarkerFinder): Checked<SeenBody> {
  if (request.scan) return seeAsPhotographed(request, photograph);
  const reading = readAnySheet(photograph.picture, finder);
  if (reading.ok) return seeOnSheet(request, photograph, reading.value);
  if (reading.faults.every((fault) => fault.code === 'sheet.notFound'))
    return seeAsPhotographed(request, photograph);
  return reading;
}

function named(
  { name }: Photograph,
  refused: Extract<Checked<unknown>, { ok: false }>,
  isOneOfSeveral: boolean,
): Checked<never> {
  if (!isOneOfSeveral) return refused;
  return refuse(
    ...refused.faults.map((fault) => ({
      ...fault,
      at: fault.at === 'photograph' ? name : `${name}: ${fault.at}`,
    })),
  );
}

function noSheet({ name }: Photograph) {
  return {
    code: 'trace.no-sheet-among-several',
    at: name,
    found: 'no calibration sheet can be read in it',
    need: 'the sheet in every one of several photographs: it is what puts them together',
    remedy: 'leave this photograph out, or trace it alone with a known length',
  };
}
