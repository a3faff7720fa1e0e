import type { BodyFit, Seat } from './bodySeat.ts';
import { type ColourKind, learnColours } from './colourModel.ts';
import { chooseEdge, gatherEvidence, SAMPLES } from './edgeEvidence.ts';
import type { FitKnowledge } from './fitRows.ts';
import { stepFit } from './fitStep.ts';
import type { FitBench } from './fitTemplateBench.ts';
import { isHandMarked, obeyHand } from './handEvidence.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { closedOutline, isCrossed, placeTemplate } from './templateBoth.ts';
import { STATION_STRIDE } from './templateStations.ts';

export type { FitBench } from './fitTemplateBench.ts';

/** What a fit believes: lines without colour change, which colours, how stiff the shape, from which pass on outliers are dropped. */
export interface FitSetting {
  readonly lineBelief: number;
  readonly colour: ColourKind;
  readonly stiffness: number;
  readonly robustFrom: number;
}

/** One pass: how far from the model an edge is looked for, the blur, the weight of habit, the learned band. */
export interface FitPass {
  readonly reachMm: number;
  readonly blurMm: number;
  readonly habit: number;
  readonly bandMm: number;
}

const CROSSED_WEIGHT = 0.02;

/**
 * Runs the passes from `start`; returns a new fit, or null where the equations of a pass have no finite solution.
 * Every pass looks, chooses the coherent edge, and takes one least-squares step.
 */
export function fitTemplate(
  level: PictureLevel,
  start: BodyFit,
  setting: FitSetting,
  passes: readonly FitPass[],
  known: FitKnowledge,
  bench: FitBench,
): BodyFit | null {
  const fit = Float64Array.from(start);
  for (const [index, pass] of passes.entries()) {
    const seat = lookAlongNormals(level, fit, setting, pass, known, bench);
    weighPlaces(bench, index >= setting.robustFrom);
    if (!stepFit(fit, seat, pass.habit * setting.stiffness, known, bench)) return null;
  }
  return fit;
}

/** Places the template, learns the colours, and fills evidence, chosen edge, offsets (mm) and raw weights. */
export function lookAlongNormals(
  level: PictureLevel,
  fit: BodyFit,
  setting: FitSetting,
  pass: FitPass,
  known: FitKnowledge,
  bench: FitBench,
): Seat {
  const { placed, evidence } = bench;
  const seat = placeTemplate(fit, placed);
  const band = { insideMm: pass.bandMm, outsideMm: pass.bandMm };
  learnColours(level.colours(setting.colour), closedOutline(placed), seat, band);
  gatherEvidence(
    placed.photo,
    {
      map: level.edges(Math.max(0.7, pass.blurMm * seat.pxPerMm)),
      posterior: level.colours(setting.colour).posterior,
      masked: level.masked,
      reachPx: pass.reachMm * seat.pxPerMm,
      pxPerMm: seat.pxPerMm,
      lineBelief: setting.lineBelief,
    },
    evidence,
  );
  if (isHandMarked(known)) obeyHand(placed.photo, known, pass.reachMm * seat.pxPerMm, seat.pxPerMm, evidence);
  const { count } = placed.stations;
  chooseEdge(evidence, 0, count, bench.chosen);
  chooseEdge(evidence, count, 2 * count, bench.chosen);
  const half = (SAMPLES - 1) / 2;
  for (let i = 0; i < 2 * count; i++) {
    const at = bench.chosen[i] as number;
    bench.offsetMm[i] = ((at - half) / half) * pass.reachMm;
    bench.weight[i] = evidence.visible[i] ? (evidence.strength[i * SAMPLES + at] as number) : 0;
  }
  return seat;
}

/** Crossed stretches count for next to nothing; from the robust passes on, far-off edges fade out. */
function weighPlaces(bench: FitBench, robust: boolean): void {
  const { placed, weight, offsetMm } = bench;
  const { count } = placed.stations;
  const sizes: number[] = [];
  for (let i = 0; i < 2 * count; i++) {
    const at = (i % count) * STATION_STRIDE;
    if (isCrossed(placed.half[at] as number, placed.half[at + 1] as number))
      weight[i] = Math.min(weight[i] as number, CROSSED_WEIGHT);
    else if ((weight[i] as number) > 0) sizes.push(Math.abs(offsetMm[i] as number));
  }
  if (!robust || sizes.length === 0) return;
  sizes.sort((a, b) => a - b);
  const scale = 2 * (1.48 * (sizes[sizes.length >> 1] as number) + 0.3);
  for (let i = 0; i < 2 * count; i++) {
    const off = (offsetMm[i] as number) / scale;
    weight[i] = (weight[i] as number) / (1 + off * off) ** 2;
  }
}
