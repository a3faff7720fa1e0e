import { Bug } from '../base/index.ts';
import { addScaled, backwardSolve, dot, forwardSolve, lowerFactor, type Matrix } from './denseSolve.ts';

/** `row · x = bound` among the equalities, `row · x ≥ bound` among the inequalities. */
export interface LinearRow {
  readonly row: Float64Array;
  readonly bound: number;
}

export interface QuadraticProgram {
  /** Symmetric and positive definite. */
  readonly hessian: Matrix;
  readonly gradient: Float64Array;
  readonly equalities: readonly LinearRow[];
  readonly inequalities: readonly LinearRow[];
}

/**
 * `pressure` of a row is the rate at which the least value grows with its bound; inequalities without
 * pressure do not bind.
 */
export type ProgramOutcome =
  | {
      readonly solved: true;
      readonly x: Float64Array;
      readonly equalityPressure: readonly number[];
      readonly inequalityPressure: readonly number[];
    }
  | { readonly solved: false; readonly because: 'contradiction' | 'too many steps' };

/** Length of the part of a unit row outside the span of others below which it says nothing new. */
const SAME_DIRECTION = 0.000_000_001;
/** Excess, in units of a row of length 1, below which a row counts as met. */
const MET = 0.000_000_000_01;
const MOST_STEPS = 500;

interface Held {
  readonly id: number;
  readonly normal: Float64Array;
  pressure: number;
  /** The unit vector of what it adds to the rows held before it, and how it is made up of theirs and its own. */
  readonly direction: Float64Array;
  readonly triangle: readonly number[];
}

/** All of a program but its equalities, made ready to be solved with one set of them after the other. */
export interface ProgramFrame {
  readonly factor: Matrix;
  readonly shift: Float64Array;
  readonly inequalities: readonly Row[];
}

interface Row {
  readonly normal: Float64Array;
  readonly bound: number;
  readonly length: number;
}

/**
 * The `x` with the least `½ xᵀHx + gᵀx` that keeps every row, or word that no x keeps them all.
 * Deterministic: of equally violated rows the first is taken.
 *
 * Method: D. Goldfarb, A. Idnani, A numerically stable dual method for solving strictly convex quadratic
 * programs, 1983; carried out in coordinates where H is the identity, with the held rows made orthogonal
 * in the order in which they are held, and afresh from the first that is let go (no updates to go stale).
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
  const held: Held[] = [];
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
function inWhite(factor: Matrix, shift: Float64Array, { row, bound }: LinearRow): Row {
  const normal = forwardSolve(factor, row);
  const length = Math.sqrt(dot(normal, normal));
  const whiteBound = bound + dot(normal, shift);
  if (length === 0) return { normal, bound: whiteBound, length: 1 };
  for (let i = 0; i < normal.length; i += 1) normal[i] /= length;
  return { normal, bound: whiteBound / length, length };
}

function holdEqualities(w: Float64Array, held: Held[], equalities: readonly Row[]): boolean {
  for (const [id, { normal, bound }] of equalities.entries()) {
    const parts = split(normal, held);
    const { outside, inside } = parts;
    const short = bound - dot(normal, w);
    const room = dot(outside, outside);
    if (room < SAME_DIRECTION ** 2) {
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

function holdInequalities(
  w: Float64Array,
  held: Held[],
  inequalities: readonly Row[],
  firstId: number,
): 'met' | 'contradiction' | 'too many steps' {
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const worst = mostViolated(w, held, inequalities, firstId);
    if (worst < 0) return 'met';
    if (!press(w, held, inequalities[worst], firstId + worst, firstId)) return 'contradiction';
  }
  return 'too many steps';
}

function mostViolated(
  w: Float64Array,
  held: readonly Held[],
  inequalities: readonly Row[],
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

/** Moves until the row is met, letting go of held inequalities that no longer press; false if that cannot be. */
function press(w: Float64Array, held: Held[], row: Row, id: number, firstId: number): boolean {
  let pressure = 0;
  for (;;) {
    const parts = split(row.normal, held);
    const { outside, inside } = parts;
    const room = dot(outside, outside);
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
    letGo(held, blocking);
  }
}

/** A row split by the held ones: into what they can make up, one factor a row, and the rest. */
interface Parts {
  readonly outside: Float64Array;
  readonly inside: readonly number[];
  /** What it takes of each of their directions. */
  readonly factors: readonly number[];
}

function split(normal: Float64Array, held: readonly Held[]): Parts {
  const { rest, factors } = takeAway(normal, held, held.length);
  const inside = [...factors];
  for (let i = held.length - 1; i >= 0; i -= 1) {
    const { triangle } = held[i];
    inside[i] /= triangle[i];
    for (let k = 0; k < i; k += 1) inside[k] -= triangle[k] * inside[i];
  }
  return { outside: rest, inside, factors };
}

/** A row to be held after those that it was split by. */
function heldRow(
  id: number,
  normal: Float64Array,
  pressure: number,
  { outside, factors }: Pick<Parts, 'outside' | 'factors'>,
): Held {
  const length = Math.sqrt(dot(outside, outside));
  return {
    id,
    normal,
    pressure,
    direction: outside.map((value) => value / length),
    triangle: [...factors, length],
  };
}

/** Lets go of one; those held after it are made orthogonal without it. */
function letGo(held: Held[], at: number): void {
  held.splice(at, 1);
  for (let i = at; i < held.length; i += 1) {
    const { id, normal, pressure } = held[i];
    const { rest, factors } = takeAway(normal, held, i);
    held[i] = heldRow(id, normal, pressure, { outside: rest, factors });
  }
}

/** Takes the parts along the directions of the first so many held away from `row`, twice over, so that rounding leaves none. */
function takeAway(
  row: Float64Array,
  held: readonly Held[],
  count: number,
): { rest: Float64Array; factors: number[] } {
  const rest = row.slice();
  const factors = new Array<number>(count).fill(0);
  for (let round = 0; round < 2; round += 1)
    for (let i = 0; i < count; i += 1) {
      const { direction } = held[i];
      const part = dot(direction, rest);
      addScaled(rest, direction, -part);
      factors[i] += part;
    }
  return { rest, factors };
}
