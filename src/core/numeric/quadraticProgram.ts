import { Bug } from '../base/index.ts';
import { addScaled, backwardSolve, dot, forwardSolve, lowerFactor, type Matrix } from './denseSolve.ts';
import { type HeldRow, heldRow, letGoOfRow, splitRow } from './heldRows.ts';

/** `row · x = bound` among the equalities, `row · x ≥ bound` among the inequalities; `row` has a number for each of the n unknowns. */
export interface LinearRow {
  readonly row: Float64Array;
  readonly bound: number;
}

/** Least `½ xᵀHx + gᵀx` over n unknowns; any units, as long as every term of the sum has the same. */
export interface QuadraticProgram {
  /** H, n rows of n: symmetric and positive definite. */
  readonly hessian: Matrix;
  /** g, n numbers. */
  readonly gradient: Float64Array;
  readonly equalities: readonly LinearRow[];
  readonly inequalities: readonly LinearRow[];
}

/**
 * `pressure` of a row (its Lagrange multiplier, in units of the least value over its bound's) is the rate at which the least
 * value grows with its bound; inequalities without pressure do not bind. Each list goes with the rows as they were given.
 */
export type ProgramOutcome =
  | {
      readonly solved: true;
      /** n numbers. */
      readonly x: Float64Array;
      readonly equalityPressure: readonly number[];
      readonly inequalityPressure: readonly number[];
    }
  | { readonly solved: false; readonly because: 'contradiction' | 'too many steps' };

/** No unit: length of the part of a unit row outside the span of others below which it says nothing new. */
const SAME_DIRECTION = 0.000_000_001;
/** Excess, in units of a row of length 1, below which a row counts as met. */
const MET = 0.000_000_000_01;
const MOST_STEPS = 500;

/**
 * All of a program but its equalities, made ready to be solved with one set of them after the other. With H = LLᵀ it is told
 * in w = Lᵀx + L⁻¹g, where what is sought is the place nearest to 0 that keeps every row: the metric is the plain one.
 */
export interface ProgramFrame {
  /** L: n rows of n, its upper half 0. */
  readonly factor: Matrix;
  /** L⁻¹g, n numbers. */
  readonly shift: Float64Array;
  readonly inequalities: readonly WhiteRow[];
}

/** `normal · w = bound`, or ≥; `normal` has length 1, and `length` is what L⁻¹ made of the row as given. */
interface WhiteRow {
  readonly normal: Float64Array;
  readonly bound: number;
  readonly length: number;
}

/**
 * The `x` with the least `½ xᵀHx + gᵀx` that keeps every row, or word that no x keeps them all.
 * Deterministic: of equally violated rows the first is taken.
 *
 * Method: dual active set, by D. Goldfarb, A. Idnani, A numerically stable dual method for solving strictly convex
 * quadratic programs, Mathematical Programming 27, 1983. It starts from the least value without any inequality and takes the
 * most violated one after the other, so the value only grows and no feasible place is needed to begin with. Ours in this:
 * the coordinates of {@link ProgramFrame}, and held rows split afresh (`heldRows.ts`) where the paper corrects factors.
 */
export function solveQuadraticProgram(program: QuadraticProgram): ProgramOutcome {
  return solveInFrame(programFrame(program), program.equalities);
}

/** What {@link solveInFrame} needs of a program. */
export function programFrame({
  hessian,
  gradient,
  inequalities,
}: Omit<QuadraticProgram, 'equalities'>): ProgramFrame {
  const factor = lowerFactor(hessian);
  if (!factor) throw new Bug('the quadratic form is not positive definite');
  const shift = forwardSolve(factor, gradient);
  return { factor, shift, inequalities: inequalities.map((row) => inWhite(factor, shift, row)) };
}

/** {@link solveQuadraticProgram} with these equalities. */
export function solveInFrame(
  { factor, shift, inequalities }: ProgramFrame,
  equalRows: readonly LinearRow[],
): ProgramOutcome {
  const equalities = equalRows.map((row) => inWhite(factor, shift, row));
  const w = new Float64Array(shift.length);
  const held: HeldRow[] = [];
  if (!holdEqualities(w, held, equalities)) return { solved: false, because: 'contradiction' };
  const end = holdInequalities(w, held, inequalities, equalities.length);
  if (end !== 'met') return { solved: false, because: end };

  const pressures = new Array<number>(equalities.length + inequalities.length).fill(0);
  const rows = [...equalities, ...inequalities];
  for (const one of held) pressures[one.id] = one.pressure / rows[one.id].length;
  const back = w.map((value, i) => value - shift[i]);
  return {
    solved: true,
    x: backwardSolve(factor, back),
    equalityPressure: pressures.slice(0, equalities.length),
    inequalityPressure: pressures.slice(equalities.length),
  };
}

/** A row in the coordinates where H is the identity, of length 1. */
function inWhite(factor: Matrix, shift: Float64Array, { row, bound }: LinearRow): WhiteRow {
  const normal = forwardSolve(factor, row);
  const length = Math.sqrt(dot(normal, normal));
  const whiteBound = bound + dot(normal, shift);
  if (length === 0) return { normal, bound: whiteBound, length: 1 };
  for (let i = 0; i < normal.length; i += 1) normal[i] /= length;
  return { normal, bound: whiteBound / length, length };
}

/** Moves `w` onto each equality in turn and holds it; false where one contradicts those before it. */
function holdEqualities(w: Float64Array, held: HeldRow[], equalities: readonly WhiteRow[]): boolean {
  for (const [id, { normal, bound }] of equalities.entries()) {
    const parts = splitRow(normal, held);
    const { outside, inside } = parts;
    const short = bound - dot(normal, w);
    const room = dot(outside, outside);
    if (room < SAME_DIRECTION ** 2) {
      // It says what others say already: to be left out, or against them.
      if (Math.abs(short) > SAME_DIRECTION) return false;
      continue;
    }
    const step = short / room;
    addScaled(w, outside, step);
    held.forEach((one, i) => {
      one.pressure -= step * inside[i];
    });
    held.push(heldRow(id, normal, step, parts));
  }
  return true;
}

/** Presses the most violated inequality until none is; rows of one id are never held twice. */
function holdInequalities(
  w: Float64Array,
  held: HeldRow[],
  inequalities: readonly WhiteRow[],
  firstId: number,
): 'met' | 'contradiction' | 'too many steps' {
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const worst = mostViolated(w, held, inequalities, firstId);
    if (worst < 0) return 'met';
    if (!press(w, held, inequalities[worst], firstId + worst, firstId)) return 'contradiction';
  }
  return 'too many steps';
}

/** Which inequality is shortest of its bound, or -1 when all are met. */
function mostViolated(
  w: Float64Array,
  held: readonly HeldRow[],
  inequalities: readonly WhiteRow[],
  firstId: number,
): number {
  let worst = -1;
  let most = MET;
  inequalities.forEach(({ normal, bound }, i) => {
    const short = bound - dot(normal, w);
    if (short > most && !held.some((one) => one.id === firstId + i)) {
      most = short;
      worst = i;
    }
  });
  return worst;
}

/**
 * Moves until the row is met, letting go of held inequalities that no longer press; false if that cannot be. Every round goes
 * along the part of the row that no held row stops, as far as the row's bound or until a held inequality would have to pull.
 */
function press(w: Float64Array, held: HeldRow[], row: WhiteRow, id: number, firstId: number): boolean {
  let pressure = 0;
  for (;;) {
    const parts = splitRow(row.normal, held);
    const { outside, inside } = parts;
    const room = dot(outside, outside);
    // Without room the place stays where it is, and only pressures pass from the held rows to this one.
    const full = room < SAME_DIRECTION ** 2 ? Infinity : (row.bound - dot(row.normal, w)) / room;
    let blocking = -1;
    let step = full;
    held.forEach((one, i) => {
      if (one.id < firstId || inside[i] <= 0 || one.pressure / inside[i] >= step) return;
      blocking = i;
      step = one.pressure / inside[i];
    });
    if (step === Infinity) return false;
    if (full !== Infinity) addScaled(w, outside, step);
    held.forEach((one, i) => {
      one.pressure -= step * inside[i];
    });
    pressure += step;
    if (blocking < 0) {
      held.push(heldRow(id, row.normal, pressure, parts));
      return true;
    }
    letGoOfRow(held, blocking);
  }
}
