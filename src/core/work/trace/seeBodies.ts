import { accept, type Checked, type Keeper, refuse } from '../../base/index.ts';
import type { MarkerFinder, SheetsReading } from '../../photo/index.ts';
import { seeAsPhotographed } from './seeAsPhotographed.ts';
import type { SeenBody } from './seenBody.ts';
import { named, type ReadPhotograph, seeOnSheets } from './seeOnSheets.ts';
import { sheetsIn } from './sheetsIn.ts';
import { partOf, type TraceProgress } from './traceProgress.ts';
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
  progress: TraceProgress,
  keeper: Keeper,
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const { photographs } = request;
  const isOneOfSeveral = photographs.length > 1;
  const traced = partOf(progress, READ_AT, 1);
  const read: { photograph: Photograph; reading: SheetsReading | null }[] = [];
  for (const photograph of photographs) {
    progress('looking for the calibration sheet', (READ_AT * read.length) / photographs.length);
    const reading = request.scan ? accept(null) : sheetsIn(photograph.picture, finder, keeper);
    if (!reading.ok) return named(photograph, reading, isOneOfSeveral);
    read.push({ photograph, reading: reading.value });
  }
  const bare = read.find(({ reading }) => reading === null);
  if (bare === undefined)
    return seeOnSheets(
      request,
      read as unknown as readonly [ReadPhotograph, ...ReadPhotograph[]],
      traced,
      keeper,
    );
  if (isOneOfSeveral) return refuse(noSheet(bare.photograph));
  const seen = seeAsPhotographed(request, bare.photograph, traced, keeper);
  return seen.ok ? accept([seen.value]) : seen;
}

/** Share of the work that is done when the sheets are read. */
const READ_AT = 0.2;

function noSheet({ name }: Photograph) {
  return {
    code: 'trace.no-sheet-among-several',
    at: name,
    found: 'no calibration sheet can be read in it',
    need: 'the sheet in every one of several photographs: it is what puts them together',
    remedy: 'leave this photograph out, or trace it alone with a known length',
  };
}
