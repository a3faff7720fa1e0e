import { emptyEquations, type NormalEquations } from '../../numeric/index.ts';
import { FIT_NUMBERS } from './bodySeat.ts';
import { OUTCOMES, SHAPE_NUMBERS } from './bodyTemplate.ts';
import { type Evidence, emptyEvidence } from './edgeEvidence.ts';
import { emptyPlacedTemplate, type PlacedTemplate } from './templateBoth.ts';
import type { TemplateStations } from './templateStations.ts';

/** Scratch and result of the last pass, made once a station plan and shared by all fits of a level. */
export interface FitBench {
  readonly placed: PlacedTemplate;
  readonly evidence: Evidence;
  readonly chosen: Int16Array;
  readonly offsetMm: Float64Array;
  readonly weight: Float64Array;
  readonly slopes: Float64Array;
  readonly outcomeSlopes: Float64Array;
  readonly equations: NormalEquations;
}

/** Empty scratch for one station plan. */
export function fitBench(stations: TemplateStations): FitBench {
  const count = 2 * stations.count;
  return {
    placed: emptyPlacedTemplate(stations),
    evidence: emptyEvidence(count),
    chosen: new Int16Array(count),
    offsetMm: new Float64Array(count),
    weight: new Float64Array(count),
    slopes: new Float64Array(SHAPE_NUMBERS * 2 * stations.count),
    outcomeSlopes: new Float64Array(SHAPE_NUMBERS * OUTCOMES),
    equations: emptyEquations(FIT_NUMBERS),
  };
}
