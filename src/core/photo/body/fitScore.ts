import { exp, hypot } from '../../base/index.ts';
import { AT_LN_SCALE, type BodyFit } from './bodySeat.ts';
import { OUTCOME, SHAPE_NUMBERS } from './bodyTemplate.ts';
import { SAMPLES } from './edgeEvidence.ts';
import type { FitKnowledge } from './fitRows.ts';
import { type FitBench, type FitSetting, lookAlongNormals } from './fitTemplate.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { isCrossed } from './templateBoth.ts';
import { STATION_STRIDE } from './templateStations.ts';

/** The six zones that must each be seen: three heights, two sides ('plus' is the half with x ≥ 0). */
export const ZONES = ['lower plus', 'C plus', 'upper plus', 'lower minus', 'C minus', 'upper minus'] as const;

/** How well one fit is borne out by the picture, by one neutral measure for all settings. */
export interface FitScore {
  readonly score: number;
  /** Share of the visible, uncrossed places with an edge within 2 mm. */
  readonly support: number;
  readonly zones: readonly number[];
  /** Largest shape number, in spreads; the undetermined shoulder-to-flank headings left out. */
  readonly strain: number;
  /** Share of the uncrossed places that lie in the picture and unmasked. */
  readonly inPicture: number;
  readonly ratios: { readonly lower: number; readonly upper: number; readonly waist: number };
}

const NEUTRAL: FitSetting = { lineBelief: 0.35, colour: 'full', stiffness: 1, robustFrom: 0 };
const NEUTRAL_PASS = { reachMm: 8, blurMm: 0.5, habit: 1, bandMm: 7 };
const SEEN_STRENGTH = 0.25;
const SEEN_WITHIN_MM = 2;
const STRAIN_COST = 0.05;
/** The headings between shoulder and flank, which an outline does not decide. */
const UNDETERMINED = new Set([14, 23]);

export function scoreFit(level: PictureLevel, fit: BodyFit, known: FitKnowledge, bench: FitBench): FitScore {
  lookAlongNormals(level, fit, NEUTRAL, NEUTRAL_PASS, known, bench);
  const pxPerMm = exp(fit[AT_LN_SCALE]);
  const { placed, evidence } = bench;
  const { count } = placed.stations;
  const seen = new Float64Array(6);
  const asked = new Float64Array(6);
  let either = 0;
  let eitherAsked = 0;
  let strength = 0;
  let uncrossed = 0;
  let handed = 0;
  for (let i = 0; i < count; i++) {
    if (isCrossed(placed.half[i * STATION_STRIDE] as number, placed.half[i * STATION_STRIDE + 1] as number))
      continue;
    let any = false;
    let could = false;
    for (const side of [0, 1]) {
      const at = side * count + i;
      uncrossed++;
      if (!evidence.visible[at] || isNearHand(known, placed.photo, at, pxPerMm)) {
        handed += evidence.visible[at];
        continue;
      }
      could = true;
      const zone = 3 * side + heightOf(placed.stations.section[i] as string);
      asked[zone] = (asked[zone] as number) + 1;
      const edge = evidence.strength[at * SAMPLES + (bench.chosen[at] as number)] as number;
      strength += edge;
      if (edge <= SEEN_STRENGTH || Math.abs(bench.offsetMm[at] as number) > SEEN_WITHIN_MM) continue;
      seen[zone] = (seen[zone] as number) + 1;
      any = true;
    }
    if (could) eitherAsked++;
    if (any) either++;
  }
  const visible = asked.reduce((sum, value) => sum + value, 0);
  const support = visible === 0 ? 0 : seen.reduce((sum, value) => sum + value, 0) / visible;
  const zones = Array.from(seen, (value, zone) =>
    asked[zone] ? value / (asked[zone] as number) : handed > 0 ? 1 : 0,
  );
  const strain = strainOf(fit);
  const score =
    0.5 * support +
    0.2 * (eitherAsked === 0 ? 0 : either / eitherAsked) +
    0.3 * Math.min(...zones) +
    0.15 * (visible === 0 ? 0 : strength / visible) -
    STRAIN_COST * strain;
  return {
    score,
    support,
    zones,
    strain,
    inPicture: (visible + handed) / uncrossed,
    ratios: ratiosOf(bench),
  };
}

/** mm. As far to either side of a place that the hand set on the edge, the picture need not bear the outline out. */
export const HAND_TELLS_MM = 25;

/** Whether the hand set an edge near place `i` of `places` (x, y, nx, ny in px each). */
function isNearHand({ onEdge }: FitKnowledge, places: Float64Array, i: number, pxPerMm: number): boolean {
  const reachPx = HAND_TELLS_MM * pxPerMm;
  const at = i * STATION_STRIDE;
  return onEdge.some(({ x, y }) => hypot(x - places[at], y - places[at + 1]) < reachPx);
}

function heightOf(section: string): number {
  if (section === 'lowerBout') return 0;
  return section === 'upperBout' ? 2 : 1;
}

function strainOf(fit: BodyFit): number {
  let most = 0;
  for (let j = 0; j < SHAPE_NUMBERS; j++)
    if (!UNDETERMINED.has(j)) most = Math.max(most, Math.abs(fit[j] as number));
  return most;
}

function ratiosOf(bench: FitBench): FitScore['ratios'] {
  const { outcomes } = bench.placed.laid;
  return {
    lower: outcomes[OUTCOME.lowerBout] as number,
    upper: outcomes[OUTCOME.upperBout] as number,
    waist: outcomes[OUTCOME.waist] as number,
  };
}
