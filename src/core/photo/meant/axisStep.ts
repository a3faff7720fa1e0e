import { Bug, cos } from '../../base/index.ts';
import { backwardSolve, forwardSolve, lowerFactor } from '../../numeric/index.ts';
import { runLength } from './runLength.ts';

/** How far one mirrored spot lies outside the other half, and how that answers to the axis moving and turning. */
export interface AxisPull {
  readonly gapMm: number;
  readonly perAcross: number;
  readonly perTurn: number;
  /** Share of the way from the lower to the upper end, along the edge and in height. */
  readonly share: number;
  readonly high: number;
}

/** Two numbers for across and turn, or the three of a symmetric matrix over them. */
type Pair = readonly [across: number, turn: number];
type Symmetric = readonly [across: number, together: number, turn: number];

/** What a round of the search settles on: how far to move the axis, and what of the gaps a bend of the body explains. */
export interface AxisStep {
  readonly acrossMm: number;
  readonly turnRad: number;
  readonly bentMm: readonly number[];
}

/** What a bend of the body would do to the gap of each pull, without what a shift or a turn of the axis would do. */
type Bend = readonly number[];

/** Sideways waves of a bent body by its height, from a whole half wave on: a shift and a turn are the axis's own. */
const BENDS = [2, 3, 4, 5];
/** Weight of a wish for no bend, as a share of all places. */
const STRAIGHT_SHARE = 0.002;

/** The bends that a body may have. */
export function bendsOf(pulls: readonly AxisPull[]): readonly Bend[] {
  const even = normalOf(
    pulls,
    pulls.map(() => 1),
  );
  return BENDS.map((waves) => {
    const wave = pulls.map(({ perAcross, high }) => perAcross * cos(Math.PI * waves * high));
    const [across, turn] = solved(even, pullOf(pulls, wave));
    return wave.map((height, i) => height - across * pulls[i].perAcross - turn * pulls[i].perTurn);
  });
}

/**
 * The step of the axis that lays the halves best on each other, bent sideways as they are; places that stand `cutMm`
 * and more off from that, going by the bend of the round before, count nothing. Bends are free of what a shift or a turn
 * of the axis would do over all places, so that wear which hides some of them does not turn bend into axis.
 */
export function axisStep(
  pulls: readonly AxisPull[],
  bends: readonly Bend[],
  bentMm: readonly number[],
  cutMm: number,
): AxisStep {
  const weights = pulls.map(({ gapMm }, i) => tukey((gapMm - bentMm[i]) / cutMm).weight);
  const columns = [pulls.map((p) => p.perAcross), pulls.map((p) => p.perTurn), ...bends];
  const matrix = columns.map((a, p) =>
    Float64Array.from(columns, (b, q) => {
      let sum = p === q && p > 1 ? STRAIGHT_SHARE * pulls.length : 0;
      for (let i = 0; i < weights.length; i++) sum += weights[i] * a[i] * b[i];
      return sum;
    }),
  );
  const right = columns.map((a) => a.reduce((sum, value, i) => sum + weights[i] * value * pulls[i].gapMm, 0));
  const factor = lowerFactor(matrix);
  if (factor === undefined) throw new Bug('axis and bend of a body cannot be told apart');
  const [across, turn, ...sizes] = backwardSolve(factor, forwardSolve(factor, Float64Array.from(right)));
  return {
    acrossMm: -across,
    turnRad: -turn,
    bentMm: pulls.map((_, i) => bends.reduce((sum, bend, k) => sum + bend[i] * sizes[k], 0)),
  };
}

/** Variances of across and turn and their covariance: mm², mm rad, rad². */
export interface AxisSpread {
  readonly across: number;
  readonly together: number;
  readonly turn: number;
}

/** Long waves in which the halves may differ: none shorter than half the half outline. */
const WAVES = 5;
/** A spread told from the few waves that a body shows is itself unsure: Student's factor for three of them. */
const FEW_WAVES = 1.8;
/** mm. Gaps are never taken for better than this. */
const LEAST_REST_MM = 0.001;

/**
 * How well settled pulls hold the axis: what their scatter leaves open, neighbours that err together counted once, and
 * what a slow difference of the halves, as large as the gaps show it, can have moved the axis by.
 */
export function axisSpread(pulls: readonly AxisPull[], cutMm: number): AxisSpread {
  const weights = pulls.map(({ gapMm }) => tukey(gapMm / cutMm).weight);
  const normal = normalOf(pulls, weights);
  const waves = Array.from({ length: WAVES }, (_, k) => pulls.map(({ share }) => cos(Math.PI * k * share)));
  // What each wave would pull the axis by, and what of it would be left to see.
  const leaks = waves.map((wave) => {
    const move = solved(
      normal,
      pullOf(
        pulls,
        wave.map((height, i) => height * weights[i]),
      ),
    );
    return {
      move,
      left: wave.map((height, i) => height - move[0] * pulls[i].perAcross - move[1] * pulls[i].perTurn),
    };
  });
  const { slow, rest } = partsOf(
    pulls,
    weights,
    leaks.map(({ left }) => left),
  );
  const seen = leaks.reduce((sum, { left }) => sum + meanSquare(left, weights), 0);
  const scatter = scatterOf(rest, cutMm);
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const waveSquare = Math.max(0, (slow - (WAVES * scatter.weightVariance) / whole) / seen) * FEW_WAVES ** 2;
  const inverse = inverseOf(normalOf(pulls, scatter.slopes));
  const [across, together, turn] = inverse.map((value) => value * scatter.slopeVariance);
  return leaks.reduce<AxisSpread>(
    (sum, { move }) => ({
      across: sum.across + waveSquare * move[0] * move[0],
      together: sum.together + waveSquare * move[0] * move[1],
      turn: sum.turn + waveSquare * move[1] * move[1],
    }),
    { across, together, turn },
  );
}

/** The gaps in waves and what is left: mean square of the waves' part, and the rests in order. */
function partsOf(
  pulls: readonly AxisPull[],
  weights: readonly number[],
  waves: readonly (readonly number[])[],
): { readonly slow: number; readonly rest: readonly number[] } {
  let rest = pulls.map(({ gapMm }) => gapMm);
  const kept: (readonly number[])[] = [];
  for (const wave of waves) {
    // Made square to the waves before it (Gram and Schmidt), so that they can be taken off one by one.
    const own = kept.reduce<readonly number[]>((left, other) => without(left, other, weights), wave);
    if (meanSquare(own, weights) <= LEAST_OWN * meanSquare(wave, weights)) continue;
    kept.push(own);
    rest = without(rest, own, weights);
  }
  const slow = pulls.map(({ gapMm }, i) => gapMm - rest[i]);
  return { slow: meanSquare(slow, weights), rest };
}

/** Share of its square below which a wave is nothing but the axis and the waves before it. */
const LEAST_OWN = 0.0001;

function without(values: readonly number[], wave: readonly number[], weights: readonly number[]): number[] {
  let [both, own] = [0, 0];
  for (let i = 0; i < values.length; i++) {
    both += weights[i] * values[i] * wave[i];
    own += weights[i] * wave[i] * wave[i];
  }
  return values.map((value, i) => value - (both / own) * wave[i]);
}

function meanSquare(values: readonly number[], weights: readonly number[]): number {
  let [sum, whole] = [0, 0];
  for (let i = 0; i < values.length; i++) {
    sum += weights[i] * values[i] * values[i];
    whole += weights[i];
  }
  return sum / whole;
}

/** Variances that turn weights, and the slopes of Tukey's pull, into information. */
function scatterOf(rest: readonly number[], cutMm: number) {
  const shares = rest.map((gap) => tukey(gap / cutMm));
  const pulled = rest.map((gap, i) => shares[i].weight * gap);
  const square = pulled.reduce((sum, pull) => sum + pull * pull, 0) * runLength(pulled);
  const weights = shares.reduce((sum, { weight }) => sum + weight, 0);
  const slopes = shares.map(({ slope }) => slope);
  const least = LEAST_REST_MM * LEAST_REST_MM;
  const steep = Math.max(
    slopes.reduce((sum, slope) => sum + slope, 0),
    LEAST_SLOPES * weights,
  );
  return {
    slopes,
    weightVariance: Math.max(least, square / weights),
    slopeVariance: Math.max(least, square / steep),
  };
}

/** Share of the weights that the slopes count for at least, however many gaps lie near the cut. */
const LEAST_SLOPES = 0.25;

/** Tukey's biweight and the slope of what it pulls. */
function tukey(size: number): { readonly weight: number; readonly slope: number } {
  if (Math.abs(size) >= 1) return { weight: 0, slope: 0 };
  const rest = 1 - size * size;
  return { weight: rest * rest, slope: rest * (1 - 5 * size * size) };
}

function normalOf(pulls: readonly AxisPull[], weights: readonly number[]): Symmetric {
  let [across, together, turn] = [0, 0, 0];
  pulls.forEach(({ perAcross, perTurn }, i) => {
    across += weights[i] * perAcross * perAcross;
    together += weights[i] * perAcross * perTurn;
    turn += weights[i] * perTurn * perTurn;
  });
  return [across, together, turn];
}

function pullOf(pulls: readonly AxisPull[], heights: readonly number[]): Pair {
  let [across, turn] = [0, 0];
  pulls.forEach(({ perAcross, perTurn }, i) => {
    across += perAcross * heights[i];
    turn += perTurn * heights[i];
  });
  return [across, turn];
}

function inverseOf([across, together, turn]: Symmetric): Symmetric {
  const determinant = across * turn - together * together;
  return [turn / determinant, -together / determinant, across / determinant];
}

function solved(matrix: Symmetric, right: Pair): Pair {
  const [across, together, turn] = inverseOf(matrix);
  return [across * right[0] + together * right[1], together * right[0] + turn * right[1]];
}
