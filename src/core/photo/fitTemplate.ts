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
import {
  emptyTemplate,
  layTemplate,
  OUTCOMES,
  outcomeStrain,
  SHAPE_NUMBERS,
  TEMPLATE_LENGTH_MM,
} from './bodyTemplate.ts';
import { type ColourKind, learnColours } from './colourModel.ts';
import { chooseEdge, type Evidence, emptyEvidence, gatherEvidence, SAMPLES } from './edgeEvidence.ts';
import {
  addHold,
  addRow,
  clearEquations,
  emptyEquations,
  type NormalEquations,
  solveEquations,
} from './normalEquations.ts';
import type { PictureLevel } from './pictureLevel.ts';
import {
  closedOutline,
  emptyPlacedTemplate,
  isCrossed,
  type PlacedTemplate,
  placeTemplate,
} from './templateBoth.ts';
import { placeStations, STATION_STRIDE, type TemplateStations } from './templateStations.ts';

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

/** What is known beforehand, in px of the level that is fitted. */
export interface FitKnowledge {
  readonly lengthPx?: { readonly value: number; readonly sigma: number } | undefined;
  /** Places the maker put on the edge. */
  readonly onEdge: readonly { readonly x: number; readonly y: number }[];
  /** Places that surely lie on the body or surely beside it. */
  readonly inside: readonly { readonly x: number; readonly y: number }[];
  readonly outside: readonly { readonly x: number; readonly y: number }[];
}

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

const CROSSED_WEIGHT = 0.02;
const SKEW_SPREAD = 0.01;
const KEYSTONE_SPREAD_PER_MM = 0.0001;
const FRAME_WEIGHT = 25;
const SLOPE_STEP = 0.02;
const LONGEST_SHAPE_STEP = 0.8;
const HAND_WEIGHT = 40;
/** How often a step is held back harder, threefold each time, before it is cut. */
const MOST_HOLDS = 10;

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
    const seat = lookAlongNormals(level, fit, setting, pass, bench);
    weighPlaces(bench, index >= setting.robustFrom);
    if (!step(fit, seat, pass.habit * setting.stiffness, known, bench)) return null;
  }
  return fit;
}

/** Places the template, learns the colours, and fills evidence, chosen edge, offsets (mm) and raw weights. */
export function lookAlongNormals(
  level: PictureLevel,
  fit: BodyFit,
  setting: FitSetting,
  pass: FitPass,
  bench: FitBench,
): Seat {
  const { placed, evidence } = bench;
  const seat = placeTemplate(fit, placed);
  const band = { insideMm: pass.bandMm, outsideMm: pass.bandMm };
  learnColours(
    level.lab,
    level.cells(setting.colour),
    closedOutline(placed),
    seat,
    band,
    level.masked,
    level.scratch,
    level.posterior,
  );
  gatherEvidence(
    placed.photo,
    {
      map: level.edges(Math.max(0.7, pass.blurMm * seat.pxPerMm)),
      posterior: level.posterior,
      masked: level.masked,
      reachPx: pass.reachMm * seat.pxPerMm,
      pxPerMm: seat.pxPerMm,
      lineBelief: setting.lineBelief,
    },
    evidence,
  );
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

/** Takes one step; false, with `fit` unchanged, where it has no finite solution. */
function step(fit: BodyFit, seat: Seat, habit: number, known: FitKnowledge, bench: FitBench): boolean {
  const { equations } = bench;
  measureSlopes(fit, bench);
  clearEquations(equations);
  addPlaces(seat, bench);
  addHabits(fit, habit * habit, bench);
  addFrame(fit, seat, known, bench);
  addHandPlaces(seat, known, bench);
  return takeStep(fit, seat, equations);
}

/**
 * Solves and adds the step, held back as a whole until no number of it is too long for the straight-line view:
 * cutting numbers short one by one would break combinations that only together make a small change.
 */
function takeStep(fit: BodyFit, seat: Seat, equations: NormalEquations): boolean {
  const longest = longestSteps(seat);
  const matrix = Float64Array.from(equations.matrix);
  const right = Float64Array.from(equations.right);
  let holdBack = 0;
  for (let turn = 0; turn < MOST_HOLDS; turn++) {
    equations.matrix.set(matrix);
    equations.right.set(right);
    if (holdBack > 0)
      for (let j = 0; j < FIT_NUMBERS; j++) addHold(equations, j, 0, holdBack / (longest[j] as number) ** 2);
    if (!solveEquations(equations) || !equations.right.every(Number.isFinite)) return false;
    if (equations.right.every((value, j) => Math.abs(value) <= (longest[j] as number))) break;
    holdBack = holdBack === 0 ? 2 : 3 * holdBack;
  }
  for (let j = 0; j < FIT_NUMBERS; j++)
    fit[j] = (fit[j] as number) + clip(equations.right[j] as number, longest[j] as number);
  return true;
}

function longestSteps(seat: Seat): Float64Array {
  const longest = new Float64Array(FIT_NUMBERS).fill(LONGEST_SHAPE_STEP);
  longest[AT_X] = 15 * seat.pxPerMm;
  longest[AT_Y] = 15 * seat.pxPerMm;
  longest[AT_LN_SCALE] = 0.08;
  longest[AT_ANGLE] = 0.1;
  longest[AT_SKEW] = SKEW_SPREAD;
  longest[AT_KEYSTONE] = KEYSTONE_SPREAD_PER_MM;
  return longest;
}

function clip(value: number, most: number): number {
  return Math.min(most, Math.max(-most, value));
}

/** Slopes of places and outcomes by each shape number, by forward differences of the closed-form chain. */
function measureSlopes(fit: BodyFit, bench: FitBench): void {
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
function slopeRow(seat: Seat, bench: FitBench, i: number, row: Float64Array): void {
  const { placed, slopes } = bench;
  const { count } = placed.stations;
  const station = i % count;
  const mirror = i < count ? 1 : -1;
  const nx = placed.photo[i * STATION_STRIDE + 2] as number;
  const ny = placed.photo[i * STATION_STRIDE + 3] as number;
  const alongX = nx * seat.cos + ny * seat.sin;
  const alongY = nx * seat.sin - ny * seat.cos;
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
  row[AT_ANGLE] = nx * (-across * seat.sin + up * seat.cos) + ny * (across * seat.cos + up * seat.sin);
  row[AT_SKEW] = alongX * up;
  row[AT_KEYSTONE] = alongX * x * x;
}

function addPlaces(seat: Seat, bench: FitBench): void {
  const row = new Float64Array(FIT_NUMBERS);
  for (let i = 0; i < bench.weight.length; i++) {
    const weight = bench.weight[i] as number;
    if (weight <= 0) continue;
    slopeRow(seat, bench, i, row);
    addRow(bench.equations, row, bench.offsetMm[i] as number, weight);
  }
}

function addHabits(fit: BodyFit, weight: number, bench: FitBench): void {
  for (let j = 0; j < SHAPE_NUMBERS; j++) addHold(bench.equations, j, -(fit[j] as number), weight);
  const row = new Float64Array(FIT_NUMBERS);
  for (let k = 0; k < OUTCOMES; k++) {
    for (let j = 0; j < SHAPE_NUMBERS; j++) row[j] = bench.outcomeSlopes[j * OUTCOMES + k] as number;
    addRow(bench.equations, row, -outcomeStrain(bench.placed.laid, k), weight);
  }
}

/** The frame stays near a square-on view; a weak hold keeps it where nothing is seen; a known length binds the scale. */
function addFrame(fit: BodyFit, seat: Seat, known: FitKnowledge, bench: FitBench): void {
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
    const target = Math.log(value / TEMPLATE_LENGTH_MM) - (fit[AT_LN_SCALE] as number);
    addHold(equations, AT_LN_SCALE, target, FRAME_WEIGHT / (sigma / value) ** 2);
  }
}

/** A place put on the edge by hand pulls the nearest station along its normal. */
function addHandPlaces(seat: Seat, known: FitKnowledge, bench: FitBench): void {
  const row = new Float64Array(FIT_NUMBERS);
  const { photo } = bench.placed;
  for (const hand of known.onEdge) {
    let nearest = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < bench.weight.length; i++) {
      const away = Math.hypot(
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
