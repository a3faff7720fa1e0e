import { exp } from '../../base/index.ts';
import { AT_LN_SCALE, type BodyFit, rescaleFit } from './bodySeat.ts';
import type { FitKnowledge } from './fitRows.ts';
import { type FitScore, scoreFit } from './fitScore.ts';
import { type FitPass, type FitSetting, fitTemplate } from './fitTemplate.ts';
import { fitBench } from './fitTemplateBench.ts';
import { withHints } from './hintCost.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { closedOutline } from './templateBoth.ts';
import { stationsOfTemplate } from './templateStations.ts';

/** One fit with how well it is borne out. */
export interface Candidate {
  readonly fit: BodyFit;
  readonly score: FitScore;
  /** Which pose it started from, 0 the likeliest. */
  readonly pose: number;
}

/** A size of the picture with what is known beforehand in its pixels. */
export interface KnownLevel {
  readonly level: PictureLevel;
  readonly known: FitKnowledge;
}

const REACH_MM = [20, 16, 13, 11, 9, 7, 6, 5, 4, 3];
const BLUR = [6, 5, 4, 3, 3, 2, 2, 1.5, 1.2, 1];
const HABIT = [3, 2, 1.5, 1, 0.7, 0.5, 0.4, 0.35, 0.3, 0.25];

/** The coarse-to-fine schedule: ten looks, ever nearer, ever sharper, ever freer. */
const PASSES: readonly FitPass[] = REACH_MM.map((reachMm, index) => ({
  reachMm,
  blurMm: 0.35 * BLUR[index],
  habit: HABIT[index],
  bandMm: index < 3 ? 14 : 7,
}));

/** Passes up to this one need only coarse pixels: their blur and reach are many millimetres wide. */
const FINE_FROM = 5;

/** Reads the picture under one setting; none where the equations could not be solved. */
export interface Reader {
  /** The coarse passes only; start, fit and score in px of the coarse level. */
  readonly roughly: (start: BodyFit, setting: FitSetting, pose: number) => readonly Candidate[];
  /** The fine passes after {@link roughly}. */
  readonly on: (rough: Candidate, setting: FitSetting) => readonly Candidate[];
  /** From pass `from` on, from a start in px of the fine level. */
  readonly read: (start: BodyFit, setting: FitSetting, from: number, pose: number) => readonly Candidate[];
}

/** A reader on two sizes of one picture; results of `on` and `read` are in px of the fine one. */
export function bodyReader(coarse: KnownLevel, fine: KnownLevel): Reader {
  const bench = fitBench(stationsOfTemplate(3.6));
  const factor = fine.level.factor / coarse.level.factor;
  const passes = (
    { level, known }: KnownLevel,
    start: BodyFit,
    setting: FitSetting,
    from: number,
    to: number,
  ): BodyFit | null => {
    const shifted = { ...setting, robustFrom: setting.robustFrom - from };
    return fitTemplate(level, start, shifted, PASSES.slice(from, to), known, bench);
  };
  const scored = ({ level, known }: KnownLevel, fit: BodyFit | null, pose: number): readonly Candidate[] => {
    if (fit === null) return [];
    const score = scoreFit(level, fit, known, bench);
    return [
      { fit, score: withHints(score, closedOutline(bench.placed), exp(fit[AT_LN_SCALE]), known), pose },
    ];
  };
  const finish = (start: BodyFit, setting: FitSetting, from: number, pose: number) =>
    scored(fine, passes(fine, start, setting, from, PASSES.length), pose);
  return {
    roughly: (start, setting, pose) => scored(coarse, passes(coarse, start, setting, 0, FINE_FROM), pose),
    on: (rough, setting) => finish(rescaleFit(rough.fit, factor), setting, FINE_FROM, rough.pose),
    read: (start, setting, from, pose) => {
      if (from >= FINE_FROM) return finish(start, setting, from, pose);
      const rough = passes(coarse, rescaleFit(start, 1 / factor), setting, from, FINE_FROM);
      return rough === null ? [] : finish(rescaleFit(rough, factor), setting, FINE_FROM, pose);
    },
  };
}
