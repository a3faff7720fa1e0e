import { accept, type Checked, type Finding, type Point, point, refuse } from '../../base/index.ts';
import {
  type CalibrationSheet,
  type CameraView,
  cameraView,
  type NamedStretch,
  type NearEdge,
  nearPlateEdge,
  type Picture,
  projection,
  type Rectified,
  rectify,
  type SheetReading,
  sceneBounds,
  sceneToRectified,
  sheetSquaresInScene,
  solveCamera,
  toPhoto,
  toScene,
  traceBody,
} from '../../photo/index.ts';
import { movedHints } from './movedHints.ts';
import type { SeenBody } from './seenBody.ts';
import type { Photograph, TraceRequest } from './traceRequest.ts';

/** mm of the scene kept round the sheet: a body may stand out over it. */
const ROUND_THE_SHEET_MM = 30;
/** mm. Finer pixels than this tell nothing about an edge. */
const FINEST_PIXEL_MM = 0.1;
/** mm, k = 2. What a height taken with a ruler is good to (common practice). */
const HEIGHT_PLUS_MINUS_MM = 0.5;
/** Share. How near a known body length brings the traced one before it is corrected. */
const LENGTH_SPREAD = 0.02;

/**
 * The body on its calibration sheet: camera, square-on picture at the edge's height, outline, and the near plate told
 * from the far one. Faults: those of camera and tracing; `trace.edge-height` without a height.
 */
export function seeOnSheet(
  request: TraceRequest,
  photograph: Photograph,
  reading: SheetReading,
): Checked<SeenBody> {
  const { picture, hints } = photograph;
  if (request.edgeHeightMm === undefined) return refuse(noHeight());
  const solved = solveCamera(reading, picture, { sheetBarMm: request.sheetBarMm });
  if (!solved.ok) return solved;
  const plane = { heightMm: request.edgeHeightMm, plusMinusMm: HEIGHT_PLUS_MINUS_MM };
  const seen = cameraView(solved.value, reading.sheet, plane);
  if (!seen.ok) return seen;
  const { view } = seen.value;
  const mmPerPixel = Math.max(FINEST_PIXEL_MM, nativePixelMm(view, reading.sheet));
  const rectified = rectify(picture, view, {
    mmPerPixel,
    box: boxRound(picture, view, reading.sheet),
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
    ...(hints && {
      hints: movedHints(hints, (at) => sceneToRectified(rectified, toScene(view, at))),
    }),
  });
  if (!trace.ok) return trace;
  const near = nearPlateEdge(rectified.picture, trace.value.edge, overlook(rectified, view), 1 / mmPerPixel);
  return accept({
    photograph,
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

function nativePixelMm(view: CameraView, sheet: CalibrationSheet): number {
  const middle = point<'scene'>(sheet.widthMm / 2, sheet.heightMm / 2);
  const step = point<'scene'>(middle.x + 10, middle.y);
  const [a, b] = [toPhoto(view, middle), toPhoto(view, step)];
  return 10 / Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
}

function boxRound(picture: Picture, view: CameraView, sheet: CalibrationSheet) {
  const shown = sceneBounds(picture, view);
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

function noHeight() {
  return {
    code: 'trace.edge-height',
    at: '--edge-height',
    found: 'a calibration sheet in the photograph, but no height of the plate’s edge above it',
    need: 'that height in millimetres: an edge 30 mm up reads about 2 % too large',
    remedy: 'measure from the sheet up to the edge of the plate that faces the camera',
  };
}
