import type { PictureLevel } from '../picture/pictureLevel.ts';
import { AT_ANGLE, AT_LN_SCALE, AT_X, AT_Y, type BodyFit, FIT_NUMBERS, rescaleFit } from './bodySeat.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import { lookEverywhere } from './edgeMap.ts';
import type { FitKnowledge } from './fitRows.ts';
import { type FitScore, scoreFit } from './fitScore.ts';
import { type FitPass, type FitSetting, fitTemplate } from './fitTemplate.ts';
import { fitBench } from './fitTemplateBench.ts';
import { type Pose, searchPoses } from './poseSearch.ts';
import { closedOutline } from './templateBoth.ts';
import { stationsOfTemplate } from './templateStations.ts';

/** One fit with how well it is borne out. */
export interface Candidate {
  readonly fit: BodyFit;
  readonly score: FitScore;
  /** Which pose it started from, 0 the likeliest. */
  readonly pose: number;
}

/** All candidates of the fit level, best first; empty when there was not even a pose. */
export interface FoundBody {
  readonly candidates: readonly Candidate[];
  readonly poses: readonly Pose[];
  /** True when two opposite settings agreed so well that the others were not needed. */
  readonly quick: boolean;
}

const REACH_MM = [20, 16, 13, 11, 9, 7, 6, 5, 4, 3];
const BLUR = [6, 5, 4, 3, 3, 2, 2, 1.5, 1.2, 1];
const HABIT = [3, 2, 1.5, 1, 0.7, 0.5, 0.4, 0.35, 0.3, 0.25];

/** The coarse-to-fine schedule: ten looks, ever nearer, ever sharper, ever freer. */
export const PASSES: readonly FitPass[] = REACH_MM.map((reachMm, index) => ({
  reachMm,
  blurMm: 0.35 * (BLUR[index] as number),
  habit: HABIT[index] as number,
  bandMm: index < 3 ? 14 : 7,
}));

const plain = (lineBelief: number, colour: 'full' | 'chroma' = 'full'): FitSetting => ({
  lineBelief,
  colour,
  stiffness: 1,
  robustFrom: 4,
});
const stiff = (lineBelief: number): FitSetting => ({
  lineBelief,
  colour: 'full',
  stiffness: 3,
  robustFrom: 1,
});

/** The first two are the quick pair: when they agree on a well-supported outline, the others are not run. */
const SETTINGS: readonly FitSetting[] = [
  plain(0.15),
  plain(0.7),
  plain(0.4),
  stiff(0.15),
  stiff(0.4),
  plain(0.4, 'chroma'),
  plain(0.6, 'chroma'),
];
const POLISH: readonly FitSetting[] = [plain(0.3), plain(0.6)];
const POLISH_FROM = 5;
const OTHER_LENGTHS = [0.92, 0.96, 1.04];
const AGREE_WITHIN = 0.01;
/** Right poses score .3 and more after the first two settings; below this nothing is gained by five more. */
const HOPELESS_SCORE = 0.1;
const HINT_COST = 0.5;
const SURE_SUPPORT = 0.97;

/** One fit under one setting: the candidate, or none where its equations could not be solved. */
type Run = (start: BodyFit, setting: FitSetting, from: number, pose: number) => readonly Candidate[];

/**
 * The body's template laid into the picture: candidates from several poses, settings and starting lengths under
 * one neutral measure. `poseLevel` is about 180 px long, `fitLevel` about a quarter of a million pixels.
 */
export function findBody(poseLevel: PictureLevel, fitLevel: PictureLevel, known: FitKnowledge): FoundBody {
  const poses = searchPoses(lookEverywhere(poseLevel.edges(0.7)), lengthRange(poseLevel, fitLevel, known));
  const bench = fitBench(stationsOfTemplate(3.6));
  const run: Run = (start, setting, from, pose) => {
    const fit = fitTemplate(fitLevel, start, setting, PASSES.slice(from), known, bench);
    if (fit === null) return [];
    const score = withHints(scoreFit(fitLevel, fit, bench), closedOutline(bench.placed), known);
    return [{ fit, score, pose }];
  };
  const starts = poses.map((pose) => startOf(pose, fitLevel.factor / poseLevel.factor));
  const firsts = starts.map((start, pose) => [
    ...run(start, SETTINGS[0] as FitSetting, 0, pose),
    ...run(start, SETTINGS[1] as FitSetting, 0, pose),
  ]);
  const all = firsts.flat();
  const order = firsts
    .map((pair, pose) => ({ pose, best: Math.max(...pair.map((one) => one.score.score)) }))
    .sort((a, b) => b.best - a.best);
  const leader = order[0];
  if (leader === undefined || all.length === 0) return { candidates: [], poses, quick: false };
  const hopeless = leader.best < HOPELESS_SCORE;
  const quick = agree(firsts[leader.pose] as readonly Candidate[]);
  if (!quick && !hopeless) {
    for (const { pose } of order.slice(0, 2))
      for (const setting of SETTINGS.slice(2)) all.push(...run(starts[pose] as BodyFit, setting, 0, pose));
    all.push(...otherLengths(sorted(all)[0] as Candidate, run));
    for (const one of sorted(all).slice(0, 2))
      for (const setting of POLISH) all.push(...run(one.fit, setting, POLISH_FROM, one.pose));
  }
  return { candidates: sorted(all), poses, quick };
}

/** A fit that leaves out a place marked as inside, or covers one marked as outside, can hardly win. */
function withHints(score: FitScore, outline: Float64Array, known: FitKnowledge): FitScore {
  const wrong =
    known.inside.filter((place) => !encloses(outline, place)).length +
    known.outside.filter((place) => encloses(outline, place)).length;
  return wrong === 0 ? score : { ...score, score: score.score - HINT_COST * wrong };
}

function encloses(outline: Float64Array, place: { readonly x: number; readonly y: number }): boolean {
  let inside = false;
  const corners = outline.length / 2;
  for (let i = 0, j = corners - 1; i < corners; j = i++) {
    const yi = outline[2 * i + 1] as number;
    const yj = outline[2 * j + 1] as number;
    if (yi > place.y === yj > place.y) continue;
    const xi = outline[2 * i] as number;
    const crossing = xi + ((place.y - yi) / (yj - yi)) * ((outline[2 * j] as number) - xi);
    if (place.x < crossing) inside = !inside;
  }
  return inside;
}

function sorted(all: readonly Candidate[]): Candidate[] {
  return [...all].sort((a, b) => b.score.score - a.score.score);
}

function lengthRange(poseLevel: PictureLevel, fitLevel: PictureLevel, known: FitKnowledge) {
  if (known.lengthPx) {
    const middle = (known.lengthPx.value * poseLevel.factor) / fitLevel.factor;
    const spread = Math.max(0.06, (2 * known.lengthPx.sigma) / known.lengthPx.value);
    return { fromPx: middle * (1 - spread), toPx: middle * (1 + spread) };
  }
  const side = Math.max(poseLevel.lab.widthPx, poseLevel.lab.heightPx);
  return { fromPx: 0.22 * side, toPx: 1.05 * side };
}

function startOf(pose: Pose, factor: number): BodyFit {
  const fit = new Float64Array(FIT_NUMBERS);
  fit[AT_X] = pose.x;
  fit[AT_Y] = pose.y;
  fit[AT_LN_SCALE] = Math.log(pose.lengthPx / TEMPLATE_LENGTH_MM);
  fit[AT_ANGLE] = pose.angleRad;
  return rescaleFit(fit, factor);
}

function agree(pair: readonly Candidate[]): boolean {
  const [a, b] = pair;
  if (a === undefined || b === undefined) return false;
  const near = (['lower', 'upper', 'waist'] as const).every(
    (name) => Math.abs(a.score.ratios[name] / b.score.ratios[name] - 1) < AGREE_WITHIN,
  );
  const sure = Math.max(a.score.support, b.score.support) > SURE_SUPPORT;
  return near && sure && positionGapMm(a.fit, b.fit) < 0.01 * TEMPLATE_LENGTH_MM;
}

/** How far two fits lie apart in middle and ends, in template mm. */
export function positionGapMm(a: BodyFit, b: BodyFit): number {
  const scale = Math.exp(a[AT_LN_SCALE] as number);
  return Math.max(
    ...[-0.5, 0, 0.5].map((end) => {
      const p = alongAxis(a, end);
      const q = alongAxis(b, end);
      return Math.hypot(p.x - q.x, p.y - q.y) / scale;
    }),
  );
}

/** The photo place on the centre line at `share` of the length from the body's middle, + towards the neck. */
export function alongAxis(fit: BodyFit, share: number): { readonly x: number; readonly y: number } {
  const length = Math.exp(fit[AT_LN_SCALE] as number) * TEMPLATE_LENGTH_MM * share;
  const angle = fit[AT_ANGLE] as number;
  return {
    x: (fit[AT_X] as number) + length * Math.sin(angle),
    y: (fit[AT_Y] as number) - length * Math.cos(angle),
  };
}

/** The leader started again with its length changed and one end held: finds the right basin when one end is hardly seen. */
function otherLengths(leader: Candidate, run: Run): Candidate[] {
  return OTHER_LENGTHS.flatMap((factor) =>
    [-0.5, 0.5].flatMap((held) => {
      const fit = Float64Array.from(leader.fit);
      fit[AT_LN_SCALE] = (fit[AT_LN_SCALE] as number) + Math.log(factor);
      const before = alongAxis(leader.fit, held);
      const after = alongAxis(fit, held);
      fit[AT_X] = (fit[AT_X] as number) + before.x - after.x;
      fit[AT_Y] = (fit[AT_Y] as number) + before.y - after.y;
      return run(fit, SETTINGS[2] as FitSetting, 3, leader.pose);
    }),
  );
}
