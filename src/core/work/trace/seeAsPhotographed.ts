import {
  accept,
  type Checked,
  distanceBetween,
  type Finding,
  type Keeper,
  refuse,
} from '../../base/index.ts';
import {
  type BodyTrace,
  NO_SHEET_TRUST,
  scaleFromKnown,
  traceBody,
  tracePurfling,
} from '../../photo/index.ts';
import type { SeenBody } from './seenBody.ts';
import type { TraceProgress } from './traceProgress.ts';
import type { Photograph, TraceRequest } from './traceRequest.ts';

/** Share, k = 2. How far the first scale may be off where nothing but a length checks it. */
const SCALE_SPREAD = 0.02;

/**
 * The body in a photograph without a sheet, scale and stretch still open; or in a scan or a picture of a life-size
 * print, whose scale is given. Faults: those of the tracing, `known.none`. Finding of its own: `trace.no-sheet`.
 */
export function seeAsPhotographed(
  request: TraceRequest,
  photograph: Photograph,
  progress: TraceProgress,
  keeper: Keeper,
): Checked<SeenBody> {
  const { scan } = request;
  if (!scan) {
    const usable = scaleFromKnown(request.known, request.known, NO_SHEET_TRUST);
    if (!usable.ok && usable.faults.some(({ code }) => code === 'known.none'))
      return refuse(...usable.faults);
  }
  const trace = traceBody(photograph.picture, {
    face: request.face,
    ...(scan && { mmPerPixel: scan.mmPerPixel }),
    ...(request.body !== undefined && { body: request.body }),
    ...(photograph.hints && { hints: photograph.hints }),
    progress,
    keeper,
  });
  if (!trace.ok) return trace;
  const mmPerPixel = scan?.mmPerPixel ?? firstScale(request, trace.value);
  const view = { kind: 'scale', mmPerPixel, plusMinus: scan?.plusMinus ?? SCALE_SPREAD } as const;
  return accept({
    photograph,
    trace: trace.value,
    tracedView: view,
    view,
    rectified: null,
    onSheet: false,
    mmPerPixel,
    purfling: keeper(trace.value, 'purfling', mmPerPixel, () =>
      tracePurfling(photograph.picture, trace.value.edge, 1 / mmPerPixel),
    ),
    findings: [...trace.value.findings, ...noSheetFindings(request)],
    viewFindings: [],
  });
}

function firstScale({ known }: TraceRequest, { pose }: BodyTrace): number {
  const { lowerEnd, upperEnd } = pose;
  const length = known.find((one) => one.name === 'bodyLength')?.mm;
  return (length ?? USUAL_LENGTH_MM) / distanceBetween(lowerEnd, upperEnd);
}

/** What was said of a sheet that cannot be read in the photograph. */
function noSheetFindings({ edgeHeightMm, sheetBarMm }: TraceRequest): readonly Finding[] {
  if (edgeHeightMm === undefined && sheetBarMm === undefined) return [];
  return [
    {
      weight: 'caution',
      code: 'trace.no-sheet',
      at: edgeHeightMm === undefined ? '--sheet-bar' : '--edge-height',
      found: 'no calibration sheet can be read in the photograph, so this was not used',
      need: 'our printed sheet in view, sharp and evenly lit',
      remedy: 'photograph again with the sheet, or rest on the known lengths alone',
    },
  ];
}

/** mm. A first scale where no length is known; the known lengths then correct it, or the trace is refused. */
const USUAL_LENGTH_MM = 355;
