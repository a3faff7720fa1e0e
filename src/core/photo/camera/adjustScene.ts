import { log, type Point } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import {
  type Adjusted,
  type Adjustment,
  adjust,
  covarianceAt,
  evidenceAt,
  type Sighting,
} from './adjustment.ts';
import { finalSpreads, robustScales, withoutStrays } from './residualSpread.ts';
import {
  bowBeliefs,
  cardBeliefs,
  type LensHint,
  lensBeliefs,
  PAPER_LIFT_MM,
  type SheetPrint,
  sheetBeliefs,
  UNKNOWN_FOCAL_SHARE,
  UNKNOWN_FOCAL_SIGMA,
} from './sceneBeliefs.ts';
import {
  cameraAt,
  lensAt,
  lensSlot,
  type SceneState,
  type SceneUnknowns,
  stridesOf,
} from './sceneUnknowns.ts';
import type { ShotsOptions } from './shot.ts';
import { standOf } from './solvedScene.ts';
import { focalFromHomographies } from './startCamera.ts';
import { type LensStart, type PlainSighting, plainSightings, startScene } from './startScene.ts';

/** Everything that goes into one solution of a scene. */
export interface SceneTask {
  readonly unknowns: SceneUnknowns;
  readonly sightings: readonly Sighting[];
  readonly prints: readonly SheetPrint[];
  readonly areOnePrinting: boolean;
  /** One for each lens; `likelyFocalPx` is set here. */
  readonly pictures: readonly Omit<LensHint, 'likelyFocalPx'>[];
  readonly options: ShotsOptions;
}

export interface SceneSolution {
  readonly state: SceneState;
  readonly covariance: readonly Float64Array[];
  /** Without the points that strayed. */
  readonly sightings: readonly Sighting[];
  /** Per shot, the part of its misses that neighbouring points share, mm of one coordinate. */
  readonly togetherMm: readonly number[];
  readonly cost: number;
  readonly settled: boolean;
}

/** Rounds of dropping strays; each may free the next. */
const STRAY_ROUNDS = 3;
/** Steps that tell a good first focal length from a poor one. */
const TRIAL_STEPS = 20;
/** px. The spread that points are held to have while first focal lengths are tried: wide, so that all find the valley. */
const TRIAL_SIGMA_PX = 0.25;

/** Share of a trial's spread below which, on the whole, its residuals show that no other first lens is needed. */
const CLEAR = 1;

/**
 * Whether a trial has come to rest with points where they are seen and a lens that is no odd one: then the others would
 * only come to it too. Square-on views fit well with focal lengths far from the true one.
 */
function isClear({ settled, cost, state }: Adjusted, { sightings, unknowns, pictures }: SceneTask): boolean {
  const count = sightings.reduce((sum, { pairs }) => sum + 2 * pairs.length, 0);
  const isUsual = pictures.every(({ diagonalPx, notedFocalPx }, lens) => {
    const { focalPx } = lensAt(state, lensSlot(unknowns, lens));
    const away = log(focalPx / (notedFocalPx ?? UNKNOWN_FOCAL_SHARE * diagonalPx));
    return Math.abs(away) < UNKNOWN_FOCAL_SIGMA;
  });
  return settled && isUsual && cost < (CLEAR * count) / 2;
}

function trialScale(sightings: readonly Sighting[], shot: number): number {
  const sigmas = sightings
    .filter((one) => one.shot === shot)
    .flatMap(({ pairs }) => pairs.map(({ sigmaPx }) => sigmaPx));
  return sigmas.length === 0 ? 1 : TRIAL_SIGMA_PX / medianOf(sigmas);
}

/** The scene that explains its shots best; null where none does, or the sheets that no shot shows with the others. */
export function adjustScene(task: SceneTask): SceneSolution | null | { readonly apart: readonly number[] } {
  const plain = plainSightings(task.sightings, task.prints);
  let best: Adjusted | null = null;
  for (const lenses of lensStarts(task, plain)) {
    const start = startScene(task.unknowns, plain, task.prints, lenses);
    if ('apart' in start) return start;
    const scales = task.unknowns.lensOfShot.map((_, shot) => trialScale(task.sightings, shot));
    const adjusted = adjust(adjustmentOf(task, start, task.sightings, scales), start, TRIAL_STEPS);
    if (adjusted && (!best || adjusted.cost < best.cost)) best = adjusted;
    if (best && isClear(best, task)) break;
  }
  return best && Number.isFinite(best.cost) ? refined(task, best.state) : null;
}

function refined(task: SceneTask, first: SceneState): SceneSolution | null {
  const { unknowns } = task;
  let state = first;
  let sightings = task.sightings;
  for (let round = 0; round < STRAY_ROUNDS; round++) {
    const scales = robustScales(unknowns, state, sightings);
    const kept = withoutStrays(unknowns, state, task.sightings, scales);
    const isSame = kept.every(({ pairs }, place) => pairs.length === sightings[place].pairs.length);
    if (isSame && round > 0) break;
    sightings = kept;
    const next = adjust(adjustmentOf(task, state, sightings, scales), state);
    if (!next) return null;
    state = next.state;
  }
  const lifted = liftSigmaOf(task, state, sightings);
  const bowed = lifted.sigmaMm > liftSigma(task) ? adjust(lifted.adjustment, state) : null;
  state = bowed?.state ?? state;
  const last = lastAdjustment(task, state, sightings, lifted.sigmaMm);
  const done = adjust(last, state);
  const covariance = done && covarianceAt(last, done.state);
  if (!done || !covariance) return null;
  const { togetherMm } = lifted;
  return { state: done.state, covariance, sightings, togetherMm, cost: done.cost, settled: done.settled };
}

/**
 * How well a task explains the points that another solution kept, with the spreads found there, as a logarithm; null where
 * it does not settle on them.
 */
export function evidenceOn(
  points: SceneTask & Pick<SceneSolution, 'state'>,
  task: SceneTask,
  from: SceneState,
): number | null {
  const scales = finalSpreads(points.unknowns, points.state, points.sightings, points.sightings).map(
    ({ scale }) => scale,
  );
  const adjustment = adjustmentOf(task, from, points.sightings, scales);
  const adjusted = adjust(adjustment, from);
  return adjusted && evidenceAt(adjustment, adjusted);
}

/**
 * How much further a sheet may lift at its rim than one that looks flat, for what its stretches lie off together once
 * the camera has taken up what it can: lifts of 1 to 3 mm leave a twentieth to a two-hundredth of themselves.
 */
const LIFT_OF_TOGETHER = 40;

/** What the sheets' stretches lie off together in each shot, mm, and the lift that this lets one believe in. */
function liftSigmaOf(task: SceneTask, state: SceneState, sightings: readonly Sighting[]) {
  const togetherMm = finalSpreads(task.unknowns, state, sightings, task.sightings).map(
    ({ togetherPx }, shot) => {
      const camera = cameraAt(task.unknowns, state, shot);
      return (togetherPx * standOf(camera)) / camera.focalPx;
    },
  );
  const sigmaMm = Math.max(liftSigma(task), LIFT_OF_TOGETHER * Math.max(...togetherMm));
  return { togetherMm, sigmaMm, adjustment: lastAdjustment(task, state, sightings, sigmaMm) };
}

function lastAdjustment(
  task: SceneTask,
  state: SceneState,
  sightings: readonly Sighting[],
  liftSigmaMm: number,
): Adjustment {
  const scales = finalSpreads(task.unknowns, state, sightings, task.sightings).map(({ scale }) => scale);
  return adjustmentOf(task, state, sightings, scales, liftSigmaMm);
}

/** mm. One standard deviation of what a sheet that looks flat lifts at its rim. */
function liftSigma({ options }: SceneTask): number {
  return Math.max(options.flatPlusMinusMm ?? PAPER_LIFT_MM, LEAST_LIFT_MM) / 2;
}

/** mm. No sheet is flatter. */
const LEAST_LIFT_MM = 0.002;

function adjustmentOf(
  task: SceneTask,
  at: SceneState,
  sightings: readonly Sighting[],
  scales: readonly number[],
  liftSigmaMm = liftSigma(task),
): Adjustment {
  const { unknowns, prints, areOnePrinting, pictures, options } = task;
  const open = options.beliefs === 'open';
  const withThirdTerm = options.withThirdTerm === true;
  const beliefs = [
    ...pictures.flatMap((picture, lens) => {
      const { focalPx } = lensAt(at, lensSlot(unknowns, lens));
      return lensBeliefs(unknowns, lens, { ...picture, likelyFocalPx: focalPx }, { open, withThirdTerm });
    }),
    ...sheetBeliefs(unknowns, prints, { open, areOnePrinting }),
    ...bowBeliefs(unknowns, liftSigmaMm, open),
    ...cardBeliefs(unknowns, options.cardHeightsMm ?? new Map()),
  ];
  const common = Math.sqrt(scales.reduce((sum, one) => sum + one * one, 0) / scales.length);
  return {
    unknowns,
    sightings,
    beliefs,
    withStands: !open,
    scales: open ? scales.map(() => common) : scales,
    strides: stridesOf(unknowns),
  };
}

/** Shares of the diagonal that are tried as a focal length when the camera noted none. */
const FOCAL_SHARES = [0.6, 1, 2];
/** Shares of the diagonal beyond which a focal length is none. */
const LONGEST_FOCAL = 20;

/** First lenses to try, the likeliest first. */
function lensStarts(
  { unknowns, pictures }: SceneTask,
  plain: readonly PlainSighting[],
): readonly (readonly LensStart[])[] {
  const seen = pictures.map(({ centre, diagonalPx }, lens) => {
    const views = plain
      .filter(({ item, shot }) => item.kind === 'sheet' && unknowns.lensOfShot[shot] === lens)
      .map(({ homography }) => ({ h: homography, centre: centre as Point<'photo'> }));
    const focalPx = focalFromHomographies(views);
    return focalPx !== null && focalPx < LONGEST_FOCAL * diagonalPx ? focalPx : null;
  });
  const start = (focals: readonly (number | null)[]): readonly LensStart[][] =>
    focals.some((focal) => focal === null)
      ? []
      : [pictures.map(({ centre }, lens) => ({ focalPx: focals[lens] as number, centre }))];
  const starts = [
    ...start(pictures.map(({ notedFocalPx }, lens) => notedFocalPx ?? seen[lens])),
    ...(pictures.every(({ notedFocalPx }) => notedFocalPx !== undefined)
      ? []
      : FOCAL_SHARES.flatMap((share) =>
          start(pictures.map(({ notedFocalPx, diagonalPx }) => notedFocalPx ?? share * diagonalPx)),
        )),
  ];
  return starts;
}
