import { type BodyFit, rescaleFit } from './bodySeat.ts';
import { SAMPLES } from './edgeEvidence.ts';
import type { FitKnowledge } from './fitRows.ts';
import { type FitPass, type FitSetting, fitTemplate, lookAlongNormals } from './fitTemplate.ts';
import { type FitBench, fitBench } from './fitTemplateBench.ts';
import type { PictureLevel } from './pictureLevel.ts';
import { isCrossed } from './templateBoth.ts';
import { STATION_STRIDE, stationsOfTemplate } from './templateStations.ts';

/** The finished template in the finish level, and along its normals the edge as it really runs. */
export interface LocalEdge {
  readonly fit: BodyFit;
  readonly bench: FitBench;
  /** mm along the outward normal from the template to the edge, every place of both halves. */
  readonly offsetMm: Float64Array;
  /** Strength of the chosen edge, 0 to 1. */
  readonly strength: Float32Array;
}

const FINISH: FitSetting = { lineBelief: 0.4, colour: 'full', stiffness: 1, robustFrom: 0 };
const FINISH_PASSES: readonly FitPass[] = [
  { reachMm: 4, blurMm: 0.35, habit: 0.3, bandMm: 7 },
  { reachMm: 3, blurMm: 0.35, habit: 0.2, bandMm: 7 },
  { reachMm: 2.5, blurMm: 0.35, habit: 0.2, bandMm: 7 },
];
const LOCAL_PASS: FitPass = { reachMm: 4, blurMm: 0.3, habit: 0, bandMm: 7 };

/** mm. Spacing of the delivered edge points; closer by the corner tips, which are too small for it. */
const EDGE_STEP_MM = 1;
const TIP_STEP_MM = 0.5;
const TIP_REACH_MM = 12;

/**
 * Three fine passes of the template, then the coherent edge along dense normals: what the arcs do not hold is kept.
 * Null where the fine passes could not be solved.
 */
export function followEdge(
  level: PictureLevel,
  start: BodyFit,
  startFactor: number,
  known: FitKnowledge,
): LocalEdge | null {
  const coarse = rescaleFit(start, level.factor / startFactor);
  const fit = fitTemplate(level, coarse, FINISH, FINISH_PASSES, known, fitBench(stationsOfTemplate(3.6)));
  if (fit === null) return null;
  const bench = fitBench(stationsOfTemplate(EDGE_STEP_MM, TIP_STEP_MM, TIP_REACH_MM));
  lookAlongNormals(level, fit, FINISH, LOCAL_PASS, known, bench);
  const { evidence } = bench;
  const strength = new Float32Array(evidence.count);
  for (let i = 0; i < evidence.count; i++)
    strength[i] = evidence.visible[i]
      ? (evidence.strength[i * SAMPLES + (bench.chosen[i] as number)] as number)
      : 0;
  return { fit, bench, offsetMm: Float64Array.from(bench.offsetMm), strength };
}

/** Whether station `i` of either half is crossed by neck, board, button or tail gear. */
export function crossedAt(edge: LocalEdge, i: number): boolean {
  const { half, stations } = edge.bench.placed;
  const at = (i % stations.count) * STATION_STRIDE;
  return isCrossed(half[at] as number, half[at + 1] as number);
}
