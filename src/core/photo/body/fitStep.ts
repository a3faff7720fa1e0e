import { addHold, clearEquations, type NormalEquations, solveEquations } from '../../numeric/index.ts';
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
  addFrame,
  addHabits,
  addHandPlaces,
  addPlaces,
  type FitKnowledge,
  KEYSTONE_SPREAD_PER_MM,
  SKEW_SPREAD,
} from './fitRows.ts';
import { measureSlopes } from './fitSlopes.ts';
import type { FitBench } from './fitTemplateBench.ts';

const LONGEST_SHAPE_STEP = 0.8;
/** How often a step is held back harder, threefold each time, before it is cut. */
const MOST_HOLDS = 10;

/** Takes one step; false, with `fit` unchanged, where it has no finite solution. */
export function stepFit(
  fit: BodyFit,
  seat: Seat,
  habit: number,
  known: FitKnowledge,
  bench: FitBench,
): boolean {
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
