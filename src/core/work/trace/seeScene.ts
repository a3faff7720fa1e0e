import { accept, type Checked, type Finding, type Point, point, refuse } from '../../base/index.ts';
import {
  type BodyTrace,
  type CalibrationSheet,
  type CameraView,
  cameraView,
  type MarkerFinder,
  type NamedStretch,
  type NearEdge,
  NO_SHEET_TRUST,
  nearPlateEdge,
  projection,
  type Rectified,
  readAnySheet,
  rectifiedToScene,
  rectify,
  scaleFromKnown,
  sceneBounds,
  sceneToRectified,
  sheetSquaresInScene,
  solveCamera,
  toPhoto,
  traceBody,
  type View,
} from '../../photo/index.ts';
import type { TraceRequest } from './traceRequest.ts';

/** The body as it was traced, with the way from where it was traced to the scene. */
export interface SeenBody {
  readonly trace: BodyTrace;
  readonly view: View;
  /** The square-on picture that was traced; none where the photograph itself was. */
  readonly rectified: Rectified | null;
  readonly sheet: CalibrationSheet | null;
  readonly mmPerPixel: number;
  readonly findings: readonly Finding[];
}

/** mm of the scene kept round the sheet: a body may stand out over it. */
const ROUND_THE_SHEET_MM = 30;
/** mm. Finer pixels than this tell nothing about an edge. */
const FINEST_PIXEL_MM = 0.1;
/** mm, k = 2. What a height taken with a ruler is good to (common practice). */
const HEIGHT_PLUS_MINUS_MM = 0.5;
/** Share. How near a known body length brings the traced one before it is corrected. */
const LENGTH_SPREAD = 0.02;

/**
 * The body in a photograph: through the calibration sheet where there is one, else in the photograph as it is, with
 * the scale still open. Faults: those of the sheet, the camera and the tracing; `trace.edge-height` when there is a
 * sheet and no height; `known.none` when there is neither sheet nor length. Finding of its own: `trace.no-sheet`.
 */
export function seeBody(request: TraceRequest, finder: MarkerFinder): Checked<SeenBody> {
  const reading = readAnySheet(request.picture, finder);
  if (reading.ok) return throughSheet(request, reading.value);
  if (reading.faults.every((fault) => fault.code === 'sheet.notFound')) return asPhotographed(request);
  return reading;
}

function throughSheet(
  request: TraceRequest,
  reading: Extract<ReturnType<typeof readAnySheet>, { ok: true }>['value'],
): Checked<SeenBody> {
  if (request.edgeHeightMm === undefined) return refuse(noHeight());
  const solved = solveCamera(reading, request.picture, { sheetBarMm: request.sheetBarMm });
  if (!solved.ok) return solved;
  const plane = { heightMm: request.edgeHeightMm, plusMinusMm: HEIGHT_PLUS_MINUS_MM };
  const seen = cameraView(solved.value, reading.sheet, plane);
  if (!seen.ok) return seen;
  const { view } = seen.value;
  const mmPerPixel = Math.max(FINEST_PIXEL_MM, nativePixelMm(view, reading.sheet));
  const rectified = rectify(request.picture, view, {
    mmPerPixel,
    box: boxRound(request, view, reading.sheet),
  });
  const length = request.known.find((one) => one.name === 'bodyLength')?.mm;
  const trace = traceBody(rectified.picture, {
    face: request.face,
    masked: sheetSquaresInScene(reading.sheet, view).map((square) =>
      square.map((corner) => sceneToRectified(rectified, corner)),
    ),
    ...(length !== undefined && {
      lengthPx: { value: length / mmPerPixel, sigma: (LENGTH_SPREAD * length) / mmPerPixel },
    }),
    ...(request.hints && { hints: request.hints }),
  });
  if (!trace.ok) return trace;
  const near = nearPlateEdge(rectified.picture, trace.value.edge, overlook(rectified, view), 1 / mmPerPixel);
  return accept({
    trace: { ...trace.value, edge: near.edge, unseen: stillUnseen(trace.value.unseen, near) },
    view,
    rectified,
    sheet: reading.sheet,
    mmPerPixel,
    findings: [
      ...solved.value.findings,
      ...seen.value.findings,
      ...trace.value.findings,
      ...untoldFindings(near),
    ],
  });
}

/** Stretches in which some place is still not seen after the plates were told apart. */
function stillUnseen(unseen: readonly NamedStretch[], { edge }: NearEdge): readonly NamedStretch[] {
  return unseen.filter(({ side, fromAlong, toAlong }) =>
    edge.some(
      (place) =>
        place.side === side && place.along >= fromAlong && place.along <= toAlong && place.state !== 'seen',
    ),
  );
}

/**
 * How far the far plate can show beyond the near one, px along the outward normal: what lies straight below an edge
 * shows nearer to the point under the camera, by the height over the camera's own.
 */
function overlook(rectified: Rectified, view: CameraView) {
  const { stand } = projection(view.camera);
  const under = sceneToRectified(rectified, point<'scene'>(stand.x, stand.y));
  const share = view.planeHeightMm / stand.z;
  return (place: Point<'photo'>, normal: Point<'photo'>): number =>
    Math.max(0, share * (normal.x * (under.x - place.x) + normal.y * (under.y - place.y)));
}

function untoldFindings({ untold }: NearEdge): readonly Finding[] {
  if (untold < LEAST_UNTOLD) return [];
  return [
    {
      weight: 'caution',
      code: 'trace.which-plate',
      at: 'C bouts',
      found: `in ${untold} places the camera looks down on the ribs, and the plates cannot be told apart there`,
      need: 'an edge of the near plate that stands out from the ribs',
      remedy: 'photograph again with the lens straight above the waist, from farther away',
    },
  ];
}

/** Fewer untold places than this are a speck or a shadow. */
const LEAST_UNTOLD = 6;

function asPhotographed(request: TraceRequest): Checked<SeenBody> {
  const usable = scaleFromKnown(request.known, request.known, NO_SHEET_TRUST);
  if (!usable.ok && usable.faults.some(({ code }) => code === 'known.none')) return usable;
  const trace = traceBody(request.picture, {
    face: request.face,
    ...(request.hints && { hints: request.hints }),
  });
  if (!trace.ok) return trace;
  const { lowerEnd, upperEnd } = trace.value.pose;
  const lengthPx = Math.hypot(upperEnd.x - lowerEnd.x, upperEnd.y - lowerEnd.y);
  const length = request.known.find((one) => one.name === 'bodyLength')?.mm;
  const mmPerPixel = (length ?? USUAL_LENGTH_MM) / lengthPx;
  return accept({
    trace: trace.value,
    view: { kind: 'scale', mmPerPixel, plusMinus: LENGTH_SPREAD },
    rectified: null,
    sheet: null,
    mmPerPixel,
    findings: [...trace.value.findings, ...noSheetFindings(request)],
  });
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

function nativePixelMm(view: CameraView, sheet: CalibrationSheet): number {
  const middle = point<'scene'>(sheet.widthMm / 2, sheet.heightMm / 2);
  const step = point<'scene'>(middle.x + 10, middle.y);
  const [a, b] = [toPhoto(view, middle), toPhoto(view, step)];
  return 10 / Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
}

function boxRound(request: TraceRequest, view: CameraView, sheet: CalibrationSheet) {
  const shown = sceneBounds(request.picture, view);
  const low = point<'scene'>(
    Math.max(shown.min.x, -ROUND_THE_SHEET_MM),
    Math.max(shown.min.y, -ROUND_THE_SHEET_MM),
  );
  const high = point<'scene'>(
    Math.min(shown.max.x, sheet.widthMm + ROUND_THE_SHEET_MM),
    Math.min(shown.max.y, sheet.heightMm + ROUND_THE_SHEET_MM),
  );
  return { min: low, max: high };
}

/** From the picture that was traced to the scene, through a view that may have been corrected since. */
export function sceneWay(seen: SeenBody, map: (photo: Point<'photo'>) => Point<'scene'>) {
  const { rectified, view } = seen;
  if (rectified === null) return map;
  return (at: Point<'photo'>): Point<'scene'> => map(toPhoto(view, rectifiedToScene(rectified, at)));
}

function noHeight() {
  return {
    code: 'trace.edge-height',
    at: '--edge-height',
    found: 'a calibration sheet in the photograph, but no height of the plate’s edge above it',
    need: 'that height in millimetres: an edge 30 mm up reads about 2 % too large',
    remedy: 'measure from the sheet up to the edge of the plate that faces the camera',
  };
}
