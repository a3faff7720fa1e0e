import {
  AT_ANGLE,
  AT_KEYSTONE,
  AT_LN_SCALE,
  AT_SKEW,
  AT_X,
  AT_Y,
  type BodyFit,
  type Seat,
} from './bodySeat.ts';
import {
  emptyTemplate,
  layTemplate,
  OUTCOMES,
  outcomeStrain,
  SHAPE_NUMBERS,
  TEMPLATE_LENGTH_MM,
} from './bodyTemplate.ts';
import type { FitBench } from './fitTemplateBench.ts';
import { placeStations, STATION_STRIDE } from './templateStations.ts';

const SLOPE_STEP = 0.02;

/** Slopes of places and outcomes by each shape number, by forward differences of the closed-form chain. */
export function measureSlopes(fit: BodyFit, bench: FitBench): void {
  const { placed, slopes, outcomeSlopes } = bench;
  const { count } = placed.stations;
  const shape = Float64Array.from(fit.subarray(0, SHAPE_NUMBERS));
  const laid = emptyTemplate();
  const moved = new Float64Array(count * STATION_STRIDE);
  for (let j = 0; j < SHAPE_NUMBERS; j++) {
    const before = shape[j] as number;
    shape[j] = before + SLOPE_STEP;
    layTemplate(shape, laid);
    placeStations(laid, placed.stations, moved);
    shape[j] = before;
    for (let i = 0; i < count; i++) {
      const at = i * STATION_STRIDE;
      const to = (j * count + i) * 2;
      slopes[to] = ((moved[at] as number) - (placed.half[at] as number)) / SLOPE_STEP;
      slopes[to + 1] = ((moved[at + 1] as number) - (placed.half[at + 1] as number)) / SLOPE_STEP;
    }
    for (let k = 0; k < OUTCOMES; k++)
      outcomeSlopes[j * OUTCOMES + k] = (outcomeStrain(laid, k) - outcomeStrain(placed.laid, k)) / SLOPE_STEP;
  }
}

/** The change along the photo normal (mm) of place `i` by every number of the fit. */
export function slopeRow(seat: Seat, bench: FitBench, i: number, row: Float64Array): void {
  const { placed, slopes } = bench;
  const { count } = placed.stations;
  const station = i % count;
  const mirror = i < count ? 1 : -1;
  const nx = placed.photo[i * STATION_STRIDE + 2] as number;
  const ny = placed.photo[i * STATION_STRIDE + 3] as number;
  const alongX = nx * seat.cosine + ny * seat.sine;
  const alongY = nx * seat.sine - ny * seat.cosine;
  const x = mirror * (placed.half[station * STATION_STRIDE] as number);
  const up = (placed.half[station * STATION_STRIDE + 1] as number) - TEMPLATE_LENGTH_MM / 2;
  const stretch = 1 + 2 * seat.keystone * x;
  for (let j = 0; j < SHAPE_NUMBERS; j++) {
    const at = (j * count + station) * 2;
    const dx = mirror * (slopes[at] as number);
    const dy = slopes[at + 1] as number;
    row[j] = alongX * (stretch * dx + seat.skew * dy) + alongY * dy;
  }
  const across = x * (1 + seat.keystone * x) + seat.skew * up;
  row[AT_X] = nx / seat.pxPerMm;
  row[AT_Y] = ny / seat.pxPerMm;
  row[AT_LN_SCALE] = alongX * across + alongY * up;
  row[AT_ANGLE] =
    nx * (-across * seat.sine + up * seat.cosine) + ny * (across * seat.cosine + up * seat.sine);
  row[AT_SKEW] = alongX * up;
  row[AT_KEYSTONE] = alongX * x * x;
}
