import { accept, type Checked, type Keeper, type Point, point } from '../../base/index.ts';
import {
  boundsInScene,
  type CameraView,
  cameraView,
  type EdgePoint,
  type NamedStretch,
  type NearEdge,
  nearPlateEdge,
  paperInScene,
  projection,
  type Rectified,
  type ScenePlane,
  type SheetsReading,
  type SolvedScene,
  sceneToRectified,
  squareOn,
  squaresInScene,
  toScene,
  traceBody,
  tracePurfling,
} from '../../photo/index.ts';
import { lookedAgain } from './lookedAgain.ts';
import { movedHints } from './movedHints.ts';
import type { SeenBody } from './seenBody.ts';
import { sheetNumberInScene } from './sheetNumber.ts';
import type { TraceProgress } from './traceProgress.ts';
import type { Photograph, TraceRequest } from './traceRequest.ts';
import { untoldPlateFindings } from './untoldPlate.ts';

/** mm of the scene kept round the sheets: a body may stand out over them. */
const ROUND_THE_SHEETS_MM = 30;
/** Share. How near a known body length brings the traced one before it is corrected. */
const LENGTH_SPREAD = 0.02;

/** One photograph in a solved scene, and the plane of the edge that is traced in it. */
export interface SheetSight {
  readonly reading: SheetsReading;
  readonly scene: SolvedScene;
  /** Which of the scene's shots this photograph is. */
  readonly shot: number;
  readonly plane: ScenePlane;
  /** Whether the height is a first guess, which two photographs are to correct: then only what the trace shows counts. */
  readonly isGuessed: boolean;
}

/**
 * The body among its calibration sheets: square-on picture at the edge's height, outline, and the near plate told
 * from the far one. Faults: `view.height`, those of tracing.
 */
export function seeOnSheet(
  request: TraceRequest,
  photograph: Photograph,
  sight: SheetSight,
  progress: TraceProgress,
  keeper: Keeper,
): Checked<SeenBody> {
  const { picture, hints } = photograph;
  const seen = viewOf(sight);
  if (!seen.ok) return seen;
  const { view } = seen.value;
  const area = sheetsArea(view, sight);
  const rectified = keeper(picture, 'square on', [view, area], () =>
    squareOn(picture, view, area, ROUND_THE_SHEETS_MM),
  );
  const { mmPerPixel } = rectified;
  const length = request.known.find((one) => one.name === 'bodyLength')?.mm;
  const trace = traceBody(rectified.picture, {
    face: request.face,
    mmPerPixel,
    platesAreTold: true,
    progress,
    keeper,
    ...(request.body !== undefined && { body: request.body }),
    masked: maskedSquares(view, sight).map((square) =>
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
  const overlookPx = overlook(rectified, view);
  const pxPerMm = 1 / mmPerPixel;
  const { edge, unseen } = trace.value;
  const first = keeper(edge, 'purfling', view, () =>
    tracePurfling(rectified.picture, edge, pxPerMm, { overlookPx }),
  );
  const look = (expected?: readonly EdgePoint[]): SeenBody => {
    const near = nearPlateEdge(rectified.picture, edge, overlookPx, pxPerMm, {
      edgeHeightMm: view.planeHeightMm,
      ...(expected === undefined ? { purfling: first } : { expected }),
    });
    return {
      photograph,
      trace: { ...trace.value, edge: near.edge, unseen: stillUnseen(unseen, near) },
      tracedView: view,
      view,
      rectified,
      onSheet: true,
      mmPerPixel,
      purfling: near.purfling ?? first,
      findings: [...trace.value.findings, ...untoldPlateFindings(edge, near.edge)],
      viewFindings: seen.value.findings,
    };
  };
  const showsRibs = edge.some(({ point: at, normal }) => overlookPx(at, normal) > SHOWS_RIBS_MM * pxPerMm);
  const isLookedAgain = showsRibs && !sight.isGuessed;
  const found = keeper(edge, 'near plate', [view, isLookedAgain && [request.meant]], () =>
    isLookedAgain ? lookedAgain(look, edge, request, rectified, keeper) : look(),
  );
  return accept({ ...found, photograph, viewFindings: seen.value.findings });
}

/** mm. Where nowhere more of the ribs can show than this, the edge as traced is the near plate's. */
const SHOWS_RIBS_MM = 0.3;

/** The same body with its edge taken to stand in another plane, near the one in which it was traced. */
export function atPlane(seen: SeenBody, sight: SheetSight): Checked<SeenBody> {
  const moved = viewOf(sight);
  return moved.ok ? accept({ ...seen, view: moved.value.view, viewFindings: moved.value.findings }) : moved;
}

function viewOf({ reading, scene, shot, plane }: SheetSight) {
  const middle = reading.sheets[0].sheet.middle;
  const solved = scene.shots[shot] as SolvedScene['shots'][number];
  return cameraView(solved, { middle }, plane);
}

/** The bounds of all sheets that this photograph shows, on the plane of the view. */
function sheetsArea(view: CameraView, { reading, scene }: SheetSight) {
  return boundsInScene(
    reading.sheets.flatMap(({ sheet }) => {
      const placed = scene.sheets.find(({ number }) => number === sheetNumberInScene(sheet));
      if (!placed) return [];
      const inScene = paperInScene(view, placed);
      const { widthMm, heightMm } = sheet;
      return [
        [0, 0],
        [widthMm, 0],
        [widthMm, heightMm],
        [0, heightMm],
      ].map(([x, y]) => inScene(point(x as number, y as number)));
    }),
  );
}

function maskedSquares(view: CameraView, { reading, scene }: SheetSight) {
  const sheets = reading.sheets.flatMap(({ sheet }) => {
    const placed = scene.sheets.find(({ number }) => number === sheetNumberInScene(sheet));
    return placed ? squaresInScene(sheet, paperInScene(view, placed)) : [];
  });
  const cards = reading.cards.flatMap(({ card }) => {
    const placed = scene.cards.find(({ number }) => number === card.number);
    return placed ? squaresInScene(card, paperInScene(view, placed)) : [];
  });
  return [...sheets, ...cards];
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
 * shows nearer to the point under the camera, by the height over the camera's own. Negative: hidden by so much.
 */
function overlook(rectified: Rectified, view: CameraView) {
  const { stand } = projection(view.camera);
  const under = sceneToRectified(rectified, point<'scene'>(stand.x, stand.y));
  const share = view.planeHeightMm / stand.z;
  return (place: Point<'photo'>, normal: Point<'photo'>): number =>
    share * (normal.x * (under.x - place.x) + normal.y * (under.y - place.y));
}
