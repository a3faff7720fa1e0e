import { accept, type Checked, type Finding, type Keeper, refuse } from '../../base/index.ts';
import {
  edgeInScene,
  heightFromViews,
  placesInTwoViews,
  planeOfCard,
  type ScenePlane,
  type SheetsReading,
  type Shot,
  type SolvedScene,
  solveShots,
  viewMap,
} from '../../photo/index.ts';
import { heightMisfit } from './heightMisfit.ts';
import { type SeenBody, sceneWay } from './seenBody.ts';
import { atPlane, seeOnSheet } from './seeOnSheet.ts';
import { sheetNumberInScene } from './sheetNumber.ts';
import { partOf, type TraceProgress } from './traceProgress.ts';
import type { Photograph, TraceRequest } from './traceRequest.ts';

/** A photograph and the sheets and height cards that were read in it. */
export interface ReadPhotograph {
  readonly photograph: Photograph;
  readonly reading: SheetsReading;
}

/** mm, k = 2. What a height taken with a ruler is good to (common practice). */
const HEIGHT_PLUS_MINUS_MM = 0.5;
/** Share of the body length: where the near edge of a whole instrument stands, before its height is known. */
const USUAL_HEIGHT_SHARE = 0.105;
const USUAL_LENGTH_MM = 355;
/** mm. A first guess of the height that is farther off than this shows the body too large or small to be traced well. */
const TRACE_AGAIN_MM = 12;

/**
 * The body in each photograph, all of them on one scene: cameras, sheets and cards solved together, and the height of
 * the edge from the maker, from a height card, or from two photographs. Faults: those of the cameras and the tracing;
 * `trace.edge-height` where nothing tells the height.
 */
export function seeOnSheets(
  request: TraceRequest,
  read: readonly [ReadPhotograph, ...ReadPhotograph[]],
  progress: TraceProgress,
  keeper: Keeper,
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const scene = solveShots(read.map(shotOf), { sheetBarMm: request.sheetBarMm });
  if (!scene.ok) return scene;
  const planes = knownPlanes(request, scene.value);
  if (!planes && read.length === 1) return refuse(noHeight());
  const length = request.known.find(({ name }) => name === 'bodyLength')?.mm ?? USUAL_LENGTH_MM;
  const seen = planes
    ? seeAt(request, read, scene.value, { planes, isGuessed: false }, progress, keeper)
    : seeAtOwnHeight(request, read, scene.value, USUAL_HEIGHT_SHARE * length, progress, keeper);
  if (!seen.ok) return seen;
  const [first, ...others] = seen.value;
  const sceneFindings = [...scene.value.findings, ...otherHeights(request, seen.value, scene.value)];
  return accept([{ ...first, sceneFindings }, ...others]);
}

/** A height that was given is held against the cards and, of several photographs, against what they tell together. */
function otherHeights(
  { edgeHeightMm, edgeHeightPlusMinusMm, face }: TraceRequest,
  seen: readonly SeenBody[],
  scene: SolvedScene,
): readonly Finding[] {
  if (edgeHeightMm === undefined) return [];
  const given = { heightMm: edgeHeightMm, plusMinusMm: edgeHeightPlusMinusMm ?? HEIGHT_PLUS_MINUS_MM };
  const card = surestCard(scene);
  const views = seen.length > 1 ? heightOf(seen, scene, face) : null;
  return [
    ...(card ? heightMisfit(given, card, `height card ${card.number} tells`) : []),
    ...(views?.ok ? heightMisfit(given, views.value[0] as ScenePlane, 'the photographs together tell') : []),
  ];
}

function surestCard(scene: SolvedScene): SolvedScene['cards'][number] | null {
  return scene.cards.reduce<SolvedScene['cards'][number] | null>(
    (best, one) => (best === null || one.plusMinusMm < best.plusMinusMm ? one : best),
    null,
  );
}

/** Numbers tell sheets of one photograph apart; papers are told apart by hundreds. */
function shotOf({ photograph, reading }: ReadPhotograph): Shot {
  return {
    picture: photograph.picture,
    sheets: reading.sheets.map(({ sheet, pairs }) => ({ number: sheetNumberInScene(sheet), pairs })),
    cards: reading.cards.map(({ card, pairs }) => ({ number: card.number, pairs })),
  };
}

/** The plane of the edge for each shot, as measured or from the first height card; null where neither is there. */
function knownPlanes({ edgeHeightMm, edgeHeightPlusMinusMm }: TraceRequest, scene: SolvedScene) {
  if (edgeHeightMm !== undefined) {
    const plusMinusMm = edgeHeightPlusMinusMm ?? HEIGHT_PLUS_MINUS_MM;
    return scene.shots.map((): ScenePlane => ({ heightMm: edgeHeightMm, plusMinusMm }));
  }
  const card = surestCard(scene);
  return card && scene.shots.map((_, shot) => planeOfCard(scene, shot, card.number));
}

/** The plane of the edge for each shot, and whether its height is only a first guess. */
interface Heights {
  readonly planes: readonly ScenePlane[];
  readonly isGuessed: boolean;
}

function seeAt(
  request: TraceRequest,
  read: readonly [ReadPhotograph, ...ReadPhotograph[]],
  scene: SolvedScene,
  { planes, isGuessed }: Heights,
  progress: TraceProgress,
  keeper: Keeper,
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const seen: SeenBody[] = [];
  for (const [shot, { photograph, reading }] of read.entries()) {
    const part = partOf(progress, shot / read.length, (shot + 1) / read.length);
    const sight = { reading, scene, shot, plane: planes[shot] as ScenePlane, isGuessed };
    const one = seeOnSheet(request, photograph, sight, part, keeper);
    if (!one.ok) return named(photograph, one, read.length > 1);
    seen.push(one.value);
  }
  return accept(seen as unknown as readonly [SeenBody, ...SeenBody[]]);
}

/** Share of the work that is done when the first height is told. */
const FIRST_AT = 0.6;

/** Traced at a first height, the edges of two photographs tell the true one; traced again where that is far off. */
function seeAtOwnHeight(
  request: TraceRequest,
  read: readonly [ReadPhotograph, ...ReadPhotograph[]],
  scene: SolvedScene,
  guessMm: number,
  progress: TraceProgress,
  keeper: Keeper,
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const first = seeAt(request, read, scene, atHeight(scene, guessMm), partOf(progress, 0, FIRST_AT), keeper);
  if (!first.ok) return first;
  const found = heightOf(first.value, scene, request.face);
  if (!found.ok) return found;
  const { heightMm } = found.value[0] as ScenePlane;
  if (Math.abs(heightMm - guessMm) <= TRACE_AGAIN_MM) return movedTo(first.value, read, scene, found.value);
  const again = partOf(progress, FIRST_AT, 1);
  const second = seeAt(request, read, scene, atHeight(scene, heightMm), again, keeper);
  if (!second.ok) return second;
  const refined = heightOf(second.value, scene, request.face);
  return refined.ok ? movedTo(second.value, read, scene, refined.value) : refined;
}

function movedTo(
  seen: readonly SeenBody[],
  read: readonly ReadPhotograph[],
  scene: SolvedScene,
  planes: readonly ScenePlane[],
): Checked<readonly [SeenBody, ...SeenBody[]]> {
  const moved = seen.map((one, shot) =>
    atPlane(one, {
      reading: (read[shot] as ReadPhotograph).reading,
      scene,
      shot,
      plane: planes[shot] as ScenePlane,
      isGuessed: false,
    }),
  );
  const faults = moved.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults);
  return accept(
    moved.flatMap((one) => (one.ok ? [one.value] : [])) as unknown as readonly [SeenBody, ...SeenBody[]],
  );
}

function atHeight(scene: SolvedScene, heightMm: number): Heights {
  const planes = scene.shots.map(() => ({ heightMm, plusMinusMm: HEIGHT_PLUS_MINUS_MM }));
  return { planes, isGuessed: true };
}

/** The plane of the edge for each shot, from the pair of photographs that tells it best. */
function heightOf(
  seen: readonly SeenBody[],
  scene: SolvedScene,
  face: 'top' | 'back',
): Checked<readonly ScenePlane[]> {
  const viewed = seen.map((one) => ({
    view: one.view,
    mmPerPixel: one.mmPerPixel,
    edge: edgeInScene(
      one.firstTrace ?? one.trace,
      sceneWay(one, viewMap(one.view).toScene),
      one.mmPerPixel,
      face,
    ).edge,
  }));
  const pairs = seen.flatMap((_, a) => seen.slice(a + 1).map((__, b) => [a, a + 1 + b] as const));
  const told = pairs.map(([a, b]) =>
    heightFromViews(scene, [a, b], placesInTwoViews(viewed[a] as Viewed, viewed[b] as Viewed)),
  );
  const good = told.flatMap((one) => (one.ok ? [one.value] : []));
  const best = good.reduce<(typeof good)[number] | null>(
    (least, one) => (least === null || one.plane.plusMinusMm < least.plane.plusMinusMm ? one : least),
    null,
  );
  if (best === null) return refuse(...told.flatMap((one) => (one.ok ? [] : one.faults)).slice(0, 1));
  const [a, b] = pairs[told.findIndex((one) => one.ok && one.value === best)] as readonly [number, number];
  const { heightMm, plusMinusMm } = best.plane;
  return accept(
    seen.map((_, shot) =>
      shot === a ? best.plane : shot === b ? best.planeInSecond : { heightMm, plusMinusMm },
    ),
  );
}

type Viewed = Parameters<typeof placesInTwoViews>[0];

/** A fault of one of several photographs bears its name. */
export function named(
  { name }: Photograph,
  refused: Extract<Checked<unknown>, { ok: false }>,
  isOneOfSeveral: boolean,
): Extract<Checked<never>, { ok: false }> {
  if (!isOneOfSeveral) return refused;
  return refuse(
    ...refused.faults.map((fault) => ({
      ...fault,
      at: fault.at === 'photograph' ? name : `${name}: ${fault.at}`,
    })),
  ) as Extract<Checked<never>, { ok: false }>;
}

function noHeight() {
  return {
    code: 'trace.edge-height',
    at: '--edge-height',
    found: 'a calibration sheet in the photograph, but no height of the plate’s edge above it',
    need: 'that height: an edge 30 mm up reads about 2 % too large',
    remedy:
      'measure from the sheet up to the middle of the edge of the plate that faces the camera; or stand a height card level with it; or add a second photograph, tilted by 10° to 20°',
  };
}
