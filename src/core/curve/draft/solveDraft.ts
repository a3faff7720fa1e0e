import { DRAFT_MM, SETTLED } from '../../base/index.ts';
import { dot, type LinearRow, type ProgramFrame, programFrame, solveInFrame } from '../../numeric/index.ts';
import { DRAFT_AT, DRAFT_NUMBERS, type DraftProblem, type Equation, equationsOf } from './draftProblem.ts';
import { DRAFT_BOUNDS, type ShapeBound, shapeBounds } from './shapeBounds.ts';

/**
 * Where a draft came to rest. `strains` are departures from the usual in spreads, `pinPull` what each pin
 * costs, `bound` the words of the bounds that hold. `residualMm` is the largest gap left in any equation.
 */
export interface DraftSolution {
  readonly u: Float64Array;
  readonly strains: Float64Array;
  readonly residualMm: number;
  readonly iterations: number;
  readonly settled: boolean;
  readonly pinPull: readonly number[];
  readonly bound: readonly string[];
}

const MOST_ITERATIONS = 60;
/** Spreads. No number moves farther in one step, so that the arcs stay near what the equations were taken for. */
const LONGEST_STEP = 2;
/** Spreads. A step below this leaves the shape as it is. */
const RESTING_STEP = 0.000_001;
/** Shares of the gaps that a step tries to close, the whole first; less where the bounds leave no room. */
const SHARES = [1, 0.5, 0.25, 0.1, 0.03];

/**
 * The shape that meets all equations and pins and departs least from the usual one; where they cannot be met,
 * the nearest found, with `settled` false. Deterministic: starts from the usual shape, no random starts.
 *
 * Method: sequential quadratic programming with the objective's own (constant) second derivative, exact
 * gradients of the equations and bounds kept throughout.
 */
export function solveDraft(problem: DraftProblem, from?: Float64Array): DraftSolution {
  const bounds = [
    ...shapeBounds(DRAFT_NUMBERS, problem.targets.bodyLengthMm, DRAFT_BOUNDS),
    ...cornerBounds(problem),
  ];
  const program = programFrame({
    hessian: problem.hessian,
    gradient: new Float64Array(DRAFT_NUMBERS),
    inequalities: bounds.map((bound) => inSpreads(bound, problem)),
  });
  let v = from ? Float64Array.from(from) : new Float64Array(DRAFT_NUMBERS);
  let pinPull: readonly number[] = problem.pins.map(() => 0);
  let bound: readonly string[] = [];
  let gaps = gapsOf(problem, v);
  for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration += 1) {
    const step = nextStep(problem, v, gaps.equations, program, bounds);
    if (!step) return rest(problem, v, gaps, iteration, false, pinPull, bound);
    v = v.map((value, i) => value + step.move[i]);
    pinPull = step.pinPull;
    bound = step.bound;
    gaps = gapsOf(problem, v);
    if (step.longest < RESTING_STEP && gaps.residualMm < DRAFT_MM / 100)
      return rest(problem, v, gaps, iteration, true, pinPull, bound);
  }
  return rest(problem, v, gaps, MOST_ITERATIONS, false, pinPull, bound);
}

/** Half widths that a corner may take of its bout's, unless the maker measured it wider. */
const WIDEST_CORNER = 0.995;

function cornerBounds(problem: DraftProblem): ShapeBound[] {
  const { lowerBoutMm, upperBoutMm } = problem.targets;
  const keepIn = (index: number, boutMm: number, says: string): ShapeBound[] => {
    if (problem.pins.some((pin) => pin.index === index)) return [];
    const row = new Float64Array(DRAFT_NUMBERS);
    row[index] = -1;
    return [{ row, bound: (-WIDEST_CORNER * boutMm) / 2, says }];
  };
  return [
    ...keepIn(DRAFT_AT.lowerCornerX, lowerBoutMm, 'lower corners as wide as their bout'),
    ...keepIn(DRAFT_AT.upperCornerX, upperBoutMm, 'upper corners as wide as their bout'),
  ];
}

interface Step {
  readonly move: Float64Array;
  readonly longest: number;
  readonly pinPull: readonly number[];
  readonly bound: readonly string[];
}

function nextStep(
  problem: DraftProblem,
  v: Float64Array,
  equations: readonly Equation[],
  program: ProgramFrame,
  bounds: readonly ShapeBound[],
): Step | undefined {
  for (const share of SHARES) {
    const outcome = solveInFrame(
      program,
      equations.map(({ gapMm, row }) => ({ row, bound: dot(row, v) - share * gapMm })),
    );
    if (!outcome.solved) continue;
    const whole = outcome.x.map((value, i) => value - v[i]);
    const longest = whole.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const shortened = Math.min(1, LONGEST_STEP / longest);
    return {
      move: whole.map((value) => value * shortened),
      longest: share < 1 ? Infinity : longest,
      pinPull: outcome.equalityPressure.slice(equations.length - problem.pins.length),
      bound: bounds.filter((_, i) => outcome.inequalityPressure[i] > SETTLED).map(({ says }) => says),
    };
  }
  return undefined;
}

interface Gaps {
  readonly equations: readonly Equation[];
  readonly residualMm: number;
}

/** All equations in spreads, the pins last. */
function gapsOf(problem: DraftProblem, v: Float64Array): Gaps {
  const u = numbersAt(problem, v);
  const equations = equationsOf(problem, u).map(({ gapMm, row }) => ({
    gapMm,
    row: row.map((value, i) => value * problem.spread[i]),
  }));
  const pins = problem.pins.map(({ index, value }) => {
    const row = new Float64Array(DRAFT_NUMBERS);
    row[index] = problem.spread[index];
    return { gapMm: u[index] - value, row };
  });
  const all = [...equations, ...pins];
  return { equations: all, residualMm: all.reduce((most, one) => Math.max(most, Math.abs(one.gapMm)), 0) };
}

const numbersAt = (problem: DraftProblem, v: Float64Array): Float64Array =>
  problem.usual.map((usual, i) => usual + problem.spread[i] * v[i]);

function inSpreads({ row, bound }: LinearRow, problem: DraftProblem): LinearRow {
  return {
    row: row.map((value, i) => value * problem.spread[i]),
    bound: bound - dot(row, problem.usual),
  };
}

function rest(
  problem: DraftProblem,
  v: Float64Array,
  { residualMm }: Gaps,
  iterations: number,
  settled: boolean,
  pinPull: readonly number[],
  bound: readonly string[],
): DraftSolution {
  return { u: numbersAt(problem, v), strains: v, residualMm, iterations, settled, pinPull, bound };
}
