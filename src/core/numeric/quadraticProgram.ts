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
 * afresh at each step (small problems, no updates to go stale).
 */
export function solveQuadraticProgram(program: QuadraticProgram): ProgramOutcome {
  const factor = lowerFactor(program.hessian);
  if (!factor) throw new Bug('the quadratic form is not positive definite');
  const shift = forwardSolve(factor, program.gradient);
  const inWhite = ({ row, bound }: LinearRow): Row => {
    const normal = forwardSolve(factor, row);
    const length = Math.sqrt(dot(normal, normal));
    const whiteBound = bound + dot(normal, shift);
    if (length === 0) return { normal, bound: whiteBound, length: 1 };
    return { normal: normal.map((value) => value / length), bound: whiteBound / length, length };
  };
  const equalities = program.equalities.map(inWhite);
  const inequalities = program.inequalities.map(inWhite);

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

function holdEqualities(w: Float64Array, held: Held[], equalities: readonly Row[]): boolean {
  for (const [id, { normal, bound }] of equalities.entries()) {
    const { outside, inside } = split(normal, held);
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
    held.push({ id, normal, pressure: step });
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
    const { outside, inside } = split(row.normal, held);
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
      held.push({ id, normal: row.normal, pressure });
      return true;
    }
    held.splice(blocking, 1);
  }
}

/** `normal` split into what the held rows can make up (`inside`, one factor a row) and the rest. */
function split(normal: Float64Array, held: readonly Held[]): { outside: Float64Array; inside: number[] } {
  const directions: Float64Array[] = [];
  const triangle: number[][] = [];
  for (const { normal: row } of held) {
    const { rest, factors } = takeAway(row, directions);
    const length = Math.sqrt(dot(rest, rest));
    directions.push(rest.map((value) => value / length));
    triangle.push([...factors, length]);
  }
  const { rest, factors } = takeAway(normal, directions);
  const inside = [...factors];
  for (let i = held.length - 1; i >= 0; i -= 1) {
    inside[i] /= triangle[i][i];
    for (let k = 0; k < i; k += 1) inside[k] -= triangle[i][k] * inside[i];
  }
  return { outside: rest, inside };
}

/** Takes the parts along the unit `directions` away from `row`, twice over, so that rounding leaves none. */
function takeAway(
  row: Float64Array,
  directions: readonly Float64Array[],
): { rest: Float64Array; factors: number[] } {
  const rest = Float64Array.from(row);
  const factors = new Array<number>(directions.length).fill(0);
  for (let round = 0; round < 2; round += 1) {
    directions.forEach((direction, i) => {
      const part = dot(direction, rest);
      addScaled(rest, direction, -part);
      factors[i] += part;
    });
  }
  return { rest, factors };
}
