import { accept, type Checked, type Fault, refuse, SETTLED } from '../../base/index.ts';
import { addScaled, dot, type LinearRow, solveQuadraticProgram, zeroMatrix } from '../../numeric/index.ts';
import type { HalfOutline } from '../halfOutline.ts';
import { selfCrossings } from '../intersections.ts';
import { outlineChain } from '../outlineChain.ts';
import { inMm } from './draftWords.ts';
import { type FitResidual, residualsOf } from './fitResiduals.ts';
import { type FitStart, fitStart, missingStretch, type OutlinePoint } from './fitStart.ts';
import { halfFromRuns, layShape } from './layShape.ts';
import type { OutlineHabit } from './outlineHabit.ts';
import { shapeBounds, TRACE_BOUNDS } from './shapeBounds.ts';
import { FIT_AT, FIT_NUMBERS } from './shapePoint.ts';

export interface HalfFitOptions {
  /** The body length where it is known; y of the points then counts from the lower end. Else both are found. */
  readonly bodyLengthMm?: number;
  /**
   * Whether a rough outline will do, to look again from: one that crosses itself is then fitted anew, held more firmly to the
   * habit. A corner that points do not show is a guess in it.
   */
  readonly isRough?: boolean;
}

/** A half outline fitted to points, and how far they lie from it. */
export interface FittedHalf {
  /** Its lower end stands at (0, 0). */
  readonly half: HalfOutline;
  readonly bodyLengthMm: number;
  /** Where the lower end lies in the given points' y. */
  readonly lowerEndMm: number;
  /** Over all points with weight, those left aside as outliers too. */
  readonly rmsMm: number;
  readonly maxMm: number;
  /** Share of the weight that was left aside as outliers. */
  readonly setAside: number;
  readonly iterations: number;
}

const MOST_ITERATIONS = 160;
/** Spreads that a number moves at most in one step. */
const LONGEST_STEP = 1;
/** mm. A step that moves no point of the outline farther leaves it as it is. */
const RESTING_MM = 0.001;
/** mm. At the last step a descent that only creeps by so little stands well enough: no edge is known as well. */
const CREEPING_MM = 0.01;
/** mm². What one spread from the start costs: holds what points do not show, too weak to bend what they do. */
const PULL_TO_START = 0.01;
/** The same for a rough outline, one after the other: arms of a corner that shows neither its end nor the last of them may cross. */
const FIRMER_PULLS = [0.1, 1] as const;
/** Where a residual stops to count: wide at first, then narrower, in scales of the residuals. */
const WIDEST_CUT = 14;
/** The usual cut of Tukey's weights: 95 % efficient on normal noise. */
const NARROWEST_CUT = 4.685;
/** Spread of a normal distribution over the median of its sizes. */
const NORMAL_TO_MEDIAN = 1.4826;
/** First damping of a step that would raise the loss, and how fast it grows and eases. */
const LEAST_DAMPING = 0.1;
const EASING = 4;
/** mm. Residuals are never taken for better than this, or arcs that a real curve leaves a little would lose points. */
const LEAST_SCALE_MM = 0.1;

/**
 * The half outline of thirteen tangent arcs and two corner ends that lies nearest to `points`, corners kept as
 * corners; body frame, mm. Outliers lose their weight, so do short stretches that the arcs cannot follow.
 *
 * Guarantees: level at both ends, tangent in each stretch, does not cross itself; with `bodyLengthMm` the length is exact.
 * Faults: `fit.too-few-points`, `fit.unsettled`, `fit.crosses`.
 * Method: Gauss-Newton on distances to the arcs, Tukey's weights tightened step by step (J. W. Tukey's
 * biweight), bounds on the shape kept by a quadratic program.
 */
export function fitHalfOutline(
  points: readonly OutlinePoint[],
  habit: OutlineHabit,
  options: HalfFitOptions = {},
): Checked<FittedHalf> {
  const seen = points.filter(({ weight }) => weight > 0);
  const lowest = seen.reduce((least, { y }) => Math.min(least, y), Infinity);
  const highest = seen.reduce((most, { y }) => Math.max(most, y), -Infinity);
  const lowerEndY = options.bodyLengthMm === undefined ? lowest : 0;
  const lengthMm = options.bodyLengthMm ?? highest - lowest;
  const missing = seen.length === 0 ? 'the body' : missingStretch(seen, lengthMm, lowerEndY);
  if (missing) return refuse(tooFew(missing));
  const start = fitStart(seen, habit, { lowerEndY, lengthMm });
  const fitHeld = (pull: number): Checked<FittedHalf> => {
    const fitted = descend(seen, { ...start, pull }, options.bodyLengthMm !== undefined);
    return fitted.settled ? finish(seen, fitted) : refuse(unsettled(fitted.residuals));
  };
  const first = fitHeld(PULL_TO_START);
  if (!options.isRough || first.ok || first.faults[0].code !== CROSSES) return first;
  for (const pull of FIRMER_PULLS) {
    const next = fitHeld(pull);
    if (next.ok) return next;
  }
  return first;
}

/** Where a descent begins, and how firmly it is held to that. */
interface HeldStart extends FitStart {
  readonly pull: number;
}

/** Where a descent stands: the shape, its residuals, what each point still counts, and the loss to be lowered. */
interface Stand {
  readonly u: Float64Array;
  readonly residuals: readonly FitResidual[];
  readonly weights: readonly number[];
  readonly loss: number;
}

interface Descent extends Stand {
  readonly iterations: number;
  readonly settled: boolean;
}

/**
 * Two stages: while the cut narrows, whole steps; then, with cut and scale held, only steps that lower the
 * loss, each damped as much as the last one needed.
 */
function descend(points: readonly OutlinePoint[], start: HeldStart, lengthKnown: boolean): Descent {
  const bounds = shapeBounds(FIT_NUMBERS, start.u[FIT_AT.lengthMm], TRACE_BOUNDS);
  let stand = standAt(points, start, start.u, WIDEST_CUT * scaleOf(residualsOf(points, start.u)));
  let damping = 0;
  let heldMm: number | undefined;
  let lastMm = Number.POSITIVE_INFINITY;
  for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration += 1) {
    const step = stepFrom(stand, start, bounds, lengthKnown, damping);
    if (!step) return { ...stand, iterations: iteration, settled: false };
    const share = Math.min(1, LONGEST_STEP / largest(step));
    const u = stand.u.map((value, i) => value + share * step[i] * start.spread[i]);
    if (heldMm === undefined) {
      const cut = Math.max(NARROWEST_CUT, WIDEST_CUT - iteration);
      const cutMm = cut * scaleOf(stand.residuals);
      stand = standAt(points, start, u, cutMm);
      if (cut === NARROWEST_CUT) heldMm = cutMm;
      continue;
    }
    const next = standAt(points, start, u, heldMm);
    const movedMm = farthestMove(stand.residuals, step, start.spread);
    if (next.loss < stand.loss) stand = next;
    if (share === 1 && movedMm < RESTING_MM) return { ...stand, iterations: iteration, settled: true };
    lastMm = share === 1 ? movedMm : Number.POSITIVE_INFINITY;
    damping = next.loss <= stand.loss ? damping / EASING : Math.max(damping, LEAST_DAMPING) * EASING;
  }
  return { ...stand, iterations: MOST_ITERATIONS, settled: lastMm < CREEPING_MM };
}

function standAt(points: readonly OutlinePoint[], start: HeldStart, u: Float64Array, cutMm: number): Stand {
  const residuals = residualsOf(points, u);
  let loss = 0;
  const weights = residuals.map(({ gapMm }, i) => {
    const rest = 1 - Math.min(1, (gapMm / cutMm) ** 2);
    loss += (points[i].weight * cutMm * cutMm * (1 - rest * rest * rest)) / 3;
    return points[i].weight * rest * rest;
  });
  u.forEach((value, i) => {
    loss += start.pull * ((value - start.u[i]) / start.spread[i]) ** 2;
  });
  return { u, residuals, weights, loss };
}

function scaleOf(residuals: readonly FitResidual[]): number {
  const sizes = residuals.map(({ gapMm }) => Math.abs(gapMm)).sort((a, b) => a - b);
  return Math.max(LEAST_SCALE_MM, NORMAL_TO_MEDIAN * sizes[Math.floor(sizes.length / 2)]);
}

const largest = (step: Float64Array): number =>
  step.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** How far a whole step moves the outline at its points, at most. */
function farthestMove(residuals: readonly FitResidual[], step: Float64Array, spread: Float64Array): number {
  const change = step.map((value, i) => value * spread[i]);
  return residuals.reduce(
    (most, { rows }) => rows.reduce((more, { row }) => Math.max(more, Math.abs(dot(row, change))), most),
    0,
  );
}

/** The best step in spreads for the residuals as they lie, bounds kept. */
function stepFrom(
  { u, residuals, weights }: Stand,
  start: HeldStart,
  bounds: readonly LinearRow[],
  lengthKnown: boolean,
  damping: number,
): Float64Array | undefined {
  const { hessian, gradient } = normalEquations(residuals, weights, start.spread);
  for (let i = 0; i < FIT_NUMBERS; i += 1) {
    hessian[i][i] += start.pull + damping;
    gradient[i] += (start.pull * (u[i] - start.u[i])) / start.spread[i];
  }
  const held = lengthKnown ? [FIT_AT.lowerEndY, FIT_AT.lengthMm] : [];
  const outcome = solveQuadraticProgram({
    hessian,
    gradient,
    equalities: held.map((index) => ({ row: unit(index), bound: 0 })),
    inequalities: bounds.map(({ row, bound }) => ({
      row: row.map((value, i) => value * start.spread[i]),
      // A start outside a bound is brought back to it, not refused.
      bound: bound - dot(row, u),
    })),
  });
  return outcome.solved ? outcome.x : undefined;
}

function unit(index: number): Float64Array {
  const row = new Float64Array(FIT_NUMBERS);
  row[index] = 1;
  return row;
}

function normalEquations(
  residuals: readonly FitResidual[],
  weights: readonly number[],
  spread: Float64Array,
): { hessian: Float64Array[]; gradient: Float64Array } {
  const hessian = zeroMatrix(FIT_NUMBERS, FIT_NUMBERS);
  const gradient = new Float64Array(FIT_NUMBERS);
  for (const [i, { rows }] of residuals.entries()) {
    for (const { value, row } of rows) {
      const scaled = row.map((one, k) => one * spread[k]);
      addScaled(gradient, scaled, weights[i] * value);
      for (let k = 0; k < FIT_NUMBERS; k += 1)
        if (scaled[k] !== 0) addScaled(hessian[k], scaled, weights[i] * scaled[k]);
    }
  }
  return { hessian, gradient };
}

function finish(
  points: readonly OutlinePoint[],
  { u, residuals, weights, iterations }: Descent,
): Checked<FittedHalf> {
  const lengthMm = u[FIT_AT.lengthMm];
  const half = halfFromRuns(u, lengthMm, layShape(u, lengthMm, u[FIT_AT.lowerEndWidth]).cStart);
  const crossing = selfCrossings(outlineChain(half))[0];
  if (crossing) return refuse(crosses(crossing.point.y));
  const whole = points.reduce((sum, { weight }) => sum + weight, 0);
  const square = residuals.reduce((sum, { gapMm }, i) => sum + points[i].weight * gapMm * gapMm, 0);
  const keptWeight = points.reduce((sum, { weight }, i) => sum + (weights[i] > SETTLED ? weight : 0), 0);
  return accept({
    half,
    bodyLengthMm: lengthMm,
    lowerEndMm: u[FIT_AT.lowerEndY],
    rmsMm: Math.sqrt(square / whole),
    maxMm: residuals.reduce((most, { gapMm }) => Math.max(most, Math.abs(gapMm)), 0),
    setAside: 1 - keptWeight / whole,
    iterations,
  });
}

function tooFew(missing: string): Fault {
  return {
    code: 'fit.too-few-points',
    at: 'outline',
    found: `hardly any points on ${missing}`,
    need: 'an edge seen at both bouts and at the waist',
    remedy: 'take the picture so that the whole body is in it, or mark the missing edge by hand',
  };
}

function unsettled(residuals: readonly FitResidual[]): Fault {
  const worst = residuals.reduce((a, b) => (Math.abs(b.gapMm) > Math.abs(a.gapMm) ? b : a));
  return {
    code: 'fit.unsettled',
    at: 'outline',
    found: `points that tangent arcs do not settle on, ${inMm(Math.abs(worst.gapMm))} off near x ${inMm(worst.x)}, y ${inMm(worst.y)}`,
    need: 'the edge of a body with two bouts, a waist and four corners',
    remedy: 'correct the edge there by hand, or leave that stretch out',
  };
}

const CROSSES = 'fit.crosses';

function crosses(yMm: number): Fault {
  return {
    code: CROSSES,
    at: 'outline',
    found: `an outline that crosses itself ${inMm(yMm)} above the lower end`,
    need: 'an outline without loops',
    remedy: 'correct the edge near the corners by hand',
  };
}
