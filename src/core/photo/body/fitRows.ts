import { hypot, log } from '../../base/index.ts';
import { addHold, addRow } from '../../numeric/index.ts';
import {
  AT_ANGLE,
  AT_KEYSTONE,
  AT_LN_SCALE,
  AT_SKEW,
  AT_X,
  AT_Y,
  type BodyFit,
  FIT_NUMBERS,
  type Seat,
} from './bodySeat.ts';
import { OUTCOMES, outcomeStrain, SHAPE_NUMBERS, TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import { slopeRow } from './fitSlopes.ts';
import type { FitBench } from './fitTemplateBench.ts';
import { STATION_STRIDE } from './templateStations.ts';

/** What is known beforehand, in px of the level that is fitted. */
export interface FitKnowledge {
  readonly lengthPx?: { readonly value: number; readonly sigma: number } | undefined;
  /** Places the maker put on the edge. */
  readonly onEdge: readonly { readonly x: number; readonly y: number }[];
  /** Places that surely lie on the body or surely beside it. */
  readonly inside: readonly { readonly x: number; readonly y: number }[];
  readonly outside: readonly { readonly x: number; readonly y: number }[];
}

/** How far a skew and a keystone usually go in a picture taken squarely. */
export const SKEW_SPREAD = 0.01;
export const KEYSTONE_SPREAD_PER_MM = 0.0001;
const FRAME_WEIGHT = 25;
const HAND_WEIGHT = 40;

/** Every place pulls the template along its normal onto the chosen edge. */
export function addPlaces(seat: Seat, bench: FitBench): void {
  const row = new Float64Array(FIT_NUMBERS);
  for (let i = 0; i < bench.weight.length; i++) {
    const weight = bench.weight[i] as number;
    if (weight <= 0) continue;
    slopeRow(seat, bench, i, row);
    addRow(bench.equations, row, bench.offsetMm[i] as number, weight);
  }
}

/** Every number and every outcome is drawn to its usual value. */
export function addHabits(fit: BodyFit, weight: number, bench: FitBench): void {
  for (let j = 0; j < SHAPE_NUMBERS; j++) addHold(bench.equations, j, -(fit[j] as number), weight);
  const row = new Float64Array(FIT_NUMBERS);
  for (let k = 0; k < OUTCOMES; k++) {
    for (let j = 0; j < SHAPE_NUMBERS; j++) row[j] = bench.outcomeSlopes[j * OUTCOMES + k] as number;
    addRow(bench.equations, row, -outcomeStrain(bench.placed.laid, k), weight);
  }
}

/** The frame stays near a square-on view; a weak hold keeps it where nothing is seen; a known length binds the scale. */
export function addFrame(fit: BodyFit, seat: Seat, known: FitKnowledge, bench: FitBench): void {
  const { equations } = bench;
  const still = 0.01;
  addHold(equations, AT_X, 0, still / seat.pxPerMm ** 2);
  addHold(equations, AT_Y, 0, still / seat.pxPerMm ** 2);
  addHold(equations, AT_LN_SCALE, 0, still * TEMPLATE_LENGTH_MM ** 2);
  addHold(equations, AT_ANGLE, 0, still * TEMPLATE_LENGTH_MM ** 2);
  addHold(equations, AT_SKEW, -(fit[AT_SKEW] as number), FRAME_WEIGHT / SKEW_SPREAD ** 2);
  addHold(equations, AT_KEYSTONE, -(fit[AT_KEYSTONE] as number), FRAME_WEIGHT / KEYSTONE_SPREAD_PER_MM ** 2);
  if (known.lengthPx) {
    const { value, sigma } = known.lengthPx;
    const target = log(value / TEMPLATE_LENGTH_MM) - (fit[AT_LN_SCALE] as number);
    addHold(equations, AT_LN_SCALE, target, FRAME_WEIGHT / (sigma / value) ** 2);
  }
}

/** A place put on the edge by hand pulls the nearest station along its normal. */
export function addHandPlaces(seat: Seat, known: FitKnowledge, bench: FitBench): void {
  const row = new Float64Array(FIT_NUMBERS);
  const { photo } = bench.placed;
  for (const hand of known.onEdge) {
    let nearest = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < bench.weight.length; i++) {
      const away = hypot(
        hand.x - (photo[i * STATION_STRIDE] as number),
        hand.y - (photo[i * STATION_STRIDE + 1] as number),
      );
      if (away < least) {
        least = away;
        nearest = i;
      }
    }
    const at = nearest * STATION_STRIDE;
    const off =
      (hand.x - (photo[at] as number)) * (photo[at + 2] as number) +
      (hand.y - (photo[at + 1] as number)) * (photo[at + 3] as number);
    slopeRow(seat, bench, nearest, row);
    addRow(bench.equations, row, off / seat.pxPerMm, HAND_WEIGHT);
  }
}
