import { type Keeper, log } from '../../base/index.ts';
import { alongAxis, lieApart, positionGapMm } from './axisPlaces.ts';
import { bodyReader, type Candidate, type KnownLevel, type Reader } from './bodyReading.ts';
import { AT_ANGLE, AT_LN_SCALE, AT_X, AT_Y, type BodyFit, FIT_NUMBERS, rescaleFit } from './bodySeat.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import { lookEverywhere } from './edgeMap.ts';
import type { FitSetting } from './fitTemplate.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { type LengthRange, type Pose, searchPoses } from './poseSearch.ts';

/** All readings of one body, best first. */
export interface FoundBody {
  readonly candidates: readonly [Candidate, ...Candidate[]];
  /** True when two opposite settings agreed so well that the others were not needed. */
  readonly quick: boolean;
}

/** What is told of a search as it goes on: the share done, 0 to 1. */
export type Progress = (share: number) => void;

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

/** The quick pair believes colours most and lines most: when they agree on a well-supported outline, the others are not run. */
const QUICK_PAIR: readonly FitSetting[] = [plain(0.15), plain(0.7)];
const MORE_SETTINGS: readonly FitSetting[] = [
  plain(0.4),
  stiff(0.15),
  stiff(0.4),
  plain(0.4, 'chroma'),
  plain(0.6, 'chroma'),
];
const POLISH: readonly FitSetting[] = [plain(0.3), plain(0.6)];
const POLISH_FROM = 5;
const OTHER_LENGTHS = [0.92, 0.96, 1.04];
const OTHER_LENGTHS_SETTING = plain(0.4);
const OTHER_LENGTHS_FROM = 3;
const AGREE_WITHIN = 0.01;
const SURE_SUPPORT = 0.97;
/** Right poses score .3 and more after the first two settings; below this nothing is gained by five more. */
const HOPELESS_SCORE = 0.1;
/** How far below the best a pose may score after the coarse passes and still win: they are too coarse to judge closely. */
const SIFTED_SCORE = 0.4;
/** Most poses whose fine passes are run, and most bodies looked for. */
const MOST_SIFTED = 4;
const MOST_BODIES = 4;
/** From this score on a second place is a second body, not a chance likeness. */
const BODY_SCORE = 0.75;

/** A pose with its first readings under the quick pair. */
interface Start {
  readonly at: BodyFit;
  readonly readings: readonly Candidate[];
}

/**
 * The bodies in the picture, the likeliest first: readings from several poses, settings and starting lengths under one
 * neutral measure. `pose` is about 180 px long, `coarse` a tenth and `fine` a quarter of a million pixels; fits are in px of `fine`.
 * Empty when there was not even a pose, or no equations could be solved. The first body is read under all settings
 * unless the quick pair agrees; `which` names another by its place in the list of bodies from left to right.
 */
export function findBodies(
  pose: PictureLevel,
  coarse: KnownLevel,
  fine: KnownLevel,
  lengths: LengthRange,
  progress: Progress,
  keeper: Keeper,
): readonly FoundBody[] {
  const poses = keeper(pose, 'poses', lengths, () =>
    searchPoses(lookEverywhere(pose.edges(POSE_BLUR_PX)), lengths),
  );
  progress(0.2);
  const reader = bodyReader(coarse, fine);
  const starts = sift(poses, pose.factor, coarse, fine, reader);
  progress(0.5);
  const bodies: FoundBody[] = [];
  for (const own of bodiesAmong(starts)) {
    const [best] = own;
    if (best === undefined) continue;
    const isFirst = bodies.length === 0;
    if (!isFirst && bestScore(best) < BODY_SCORE) continue;
    bodies.push(readThrough(own, reader));
    progress(0.5 + (0.5 * bodies.length) / MOST_BODIES);
  }
  return bodies.sort((a, b) => b.candidates[0].score.score - a.candidates[0].score.score);
}

const POSE_BLUR_PX = 0.7;

/** The coarse passes tell which poses deserve the fine ones. */
function sift(
  poses: readonly Pose[],
  poseFactor: number,
  coarse: KnownLevel,
  fine: KnownLevel,
  reader: Reader,
): readonly Start[] {
  const rough = poses.map((pose, index) => {
    const start = startOf(pose, coarse.level.factor / poseFactor);
    const readings = QUICK_PAIR.flatMap((setting) =>
      reader.roughly(start, setting, index).map((reading) => ({ setting, reading })),
    );
    const best = Math.max(...readings.map(({ reading }) => reading.score.score));
    return { index, start, readings, best };
  });
  const top = Math.max(...rough.map(({ best }) => best));
  return rough
    .filter(({ readings, best }) => readings.length > 0 && best >= top - SIFTED_SCORE)
    .sort((a, b) => b.best - a.best)
    .slice(0, MOST_SIFTED)
    .map(({ start, readings }) => ({
      at: rescaleFit(start, fine.level.factor / coarse.level.factor),
      readings: sorted(readings.flatMap(({ reading, setting }) => reader.on(reading, setting))),
    }))
    .filter(({ readings }) => readings.length > 0)
    .sort((a, b) => bestScore(b) - bestScore(a));
}

function bestScore({ readings }: Start): number {
  return readings[0]?.score.score ?? Number.NEGATIVE_INFINITY;
}

/** The starts by the body that they lie on, best first. */
function bodiesAmong(starts: readonly Start[]): readonly (readonly Start[])[] {
  const bodies: Start[][] = [];
  for (const start of starts) {
    const fit = (start.readings[0] as Candidate).fit;
    const own = bodies.find(([first]) => !lieApart(fit, ((first as Start).readings[0] as Candidate).fit));
    if (own) own.push(start);
    else if (bodies.length < MOST_BODIES) bodies.push([start]);
  }
  return bodies;
}

/** All settings on one body, unless the quick pair agrees on it. */
function readThrough(starts: readonly Start[], reader: Reader): FoundBody {
  const first = starts[0] as Start;
  const all = starts.flatMap(({ readings }) => readings);
  const quick = agree(first.readings);
  if (!quick && bestScore(first) >= HOPELESS_SCORE) {
    for (const { at, readings } of starts.slice(0, 2))
      for (const setting of MORE_SETTINGS)
        all.push(...reader.read(at, setting, 0, (readings[0] as Candidate).pose));
    all.push(...otherLengths(sorted(all)[0] as Candidate, reader));
    for (const one of sorted(all).slice(0, 2))
      for (const setting of POLISH) all.push(...reader.read(one.fit, setting, POLISH_FROM, one.pose));
  }
  return { candidates: sorted(all) as unknown as FoundBody['candidates'], quick };
}

function sorted(all: readonly Candidate[]): Candidate[] {
  return [...all].sort((a, b) => b.score.score - a.score.score);
}

function startOf(pose: Pose, factor: number): BodyFit {
  const fit = new Float64Array(FIT_NUMBERS);
  fit[AT_X] = pose.x;
  fit[AT_Y] = pose.y;
  fit[AT_LN_SCALE] = log(pose.lengthPx / TEMPLATE_LENGTH_MM);
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

/** The leader started again with its length changed and one end held: finds the right basin when one end is hardly seen. */
function otherLengths(leader: Candidate, reader: Reader): Candidate[] {
  return OTHER_LENGTHS.flatMap((factor) =>
    [-0.5, 0.5].flatMap((held) => {
      const fit = Float64Array.from(leader.fit);
      fit[AT_LN_SCALE] += log(factor);
      const before = alongAxis(leader.fit, held);
      const after = alongAxis(fit, held);
      fit[AT_X] += before.x - after.x;
      fit[AT_Y] += before.y - after.y;
      return reader.read(fit, OTHER_LENGTHS_SETTING, OTHER_LENGTHS_FROM, leader.pose);
    }),
  );
}
