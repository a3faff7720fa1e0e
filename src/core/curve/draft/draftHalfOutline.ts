import {
  accept,
  type Checked,
  cos,
  DRAFT_MM,
  type Fault,
  type Finding,
  refuse,
  sin,
  WELD_MM,
} from '../../base/index.ts';
import type { HalfOutline } from '../halfOutline.ts';
import { selfCrossings } from '../intersections.ts';
import { boundsOf } from '../measure.ts';
import { outlineChain } from '../outlineChain.ts';
import { AT } from './arcRun.ts';
import { checkSizes } from './checkSizes.ts';
import {
  DRAFT_AT,
  type DraftProblem,
  draftProblem,
  PINNED_BY,
  PINNED_NAMES,
  type PinnedName,
} from './draftProblem.ts';
import { finding, inMm, MEASURED_AS, NUMBER_WORDS } from './draftWords.ts';
import { halfFromRuns } from './layShape.ts';
import type { OutlineHabit } from './outlineHabit.ts';
import type { OutlineTargets } from './outlineTargets.ts';
import { type DraftSolution, solveDraft } from './solveDraft.ts';

/** A half outline that meets its targets, and how far it had to go from what is usual. */
export interface DraftedHalf {
  readonly half: HalfOutline;
  /** The largest departure from the family's habit, in spreads. */
  readonly strain: number;
  /** What departs most, in words. */
  readonly strainedAt: string;
  readonly iterations: number;
  /** The largest gap left in any equation. */
  readonly residualMm: number;
  readonly findings: readonly Finding[];
}

/** Spreads. Up to here a draft passes without a word when stations or corners were given. */
const GOOD_STRAIN = 2.5;
/** Spreads. Real instruments drafted from their four sizes alone stay below this. */
const GOOD_STRAIN_OF_SIZES = 1.5;
/** Spreads. Above this only what the maker measured can ask for it. */
const MOST_STRAIN = 5;
/** Where shoulder passes into flank can hardly be seen, since both have nearly one radius: not counted. */
const NOT_COUNTED: ReadonlySet<number> = new Set([AT.lowerHeadings + 1, AT.upperHeadings + 1]);

/**
 * The half outline of a body from its sizes: thirteen tangent arcs and two corner ends, body frame, mm.
 *
 * Guarantees: the length is exact; each width is the true widest (narrowest) place of its stretch, and every
 * given station and corner is met, to DRAFT_MM; tangent inside each stretch; the outline does not cross
 * itself. What is not given follows the habit as nearly as the given values allow.
 * Faults: `draft.not-a-length`, `draft.length`, `draft.proportion`, `draft.waist-too-wide`,
 * `draft.upper-bout-wider`, `draft.corners-too-wide`, `draft.order` before drawing; `draft.cannot-meet`,
 * `draft.strained`, `draft.crosses`, `draft.not-extreme` after.
 * Method: docs/methods/drafting.md.
 */
export function draftHalfOutline(targets: OutlineTargets, habit: OutlineHabit): Checked<DraftedHalf> {
  const sizes = checkSizes(targets, habit);
  if (sizes.faults.length > 0) return refuse(...sizes.faults);
  const problem = draftProblem(targets, habit);
  const solution = settle(targets, habit, problem);
  if (!solution.settled || solution.residualMm > DRAFT_MM)
    return refuse(cannotMeet(targets, habit, problem, solution));
  const { strain, index } = worstStrain(solution);
  if (strain > MOST_STRAIN && !causedByPins(targets, habit))
    return refuse(tooStrained(targets, strain, index));
  const half = halfFromRuns(solution.u, targets.bodyLengthMm, startOfWaist(problem, solution.u));
  const shapeFaults = checkShape(half, targets);
  if (shapeFaults.length > 0) return refuse(...shapeFaults);
  return accept({
    half,
    strain,
    strainedAt: NUMBER_WORDS[index].says,
    iterations: solution.iterations,
    residualMm: solution.residualMm,
    findings: [...sizes.findings, ...strainFindings(problem, solution, strain, index)],
  });
}

/** Solves; where that does not settle, goes to the pinned values by halves from the shape without them. */
function settle(targets: OutlineTargets, habit: OutlineHabit, problem: DraftProblem): DraftSolution {
  const first = solveDraft(problem);
  if (first.settled || problem.pins.length === 0) return first;
  const free = solveDraft(draftProblem(sizesOnly(targets), habit));
  if (!free.settled) return first;
  const pins = problem.pins.map(({ index, value }) => ({ index, value: (free.u[index] + value) / 2 }));
  const halfWay = solveDraft({ ...problem, pins }, free.strains);
  return halfWay.settled ? solveDraft(problem, halfWay.strains) : first;
}

function sizesOnly(targets: OutlineTargets): OutlineTargets {
  const { bodyLengthMm, upperBoutMm, waistMm, lowerBoutMm, lowerCornerEndMm, upperCornerEndMm } = targets;
  return { bodyLengthMm, upperBoutMm, waistMm, lowerBoutMm, lowerCornerEndMm, upperCornerEndMm };
}

function without(targets: OutlineTargets, name: PinnedName): OutlineTargets {
  return { ...targets, [name]: undefined };
}

function worstStrain(solution: DraftSolution): { strain: number; index: number } {
  let index = 0;
  let strain = -1;
  solution.strains.forEach((value, i) => {
    if (NOT_COUNTED.has(i) || Math.abs(value) <= strain) return;
    strain = Math.abs(value);
    index = i;
  });
  return { strain, index };
}

/** Whether the four sizes by themselves are at ease, so that what strains is what else was measured. */
function causedByPins(targets: OutlineTargets, habit: OutlineHabit): boolean {
  const given = PINNED_NAMES.some((name) => targets[name] !== undefined);
  if (!given) return false;
  const free = solveDraft(draftProblem(sizesOnly(targets), habit));
  return free.settled && worstStrain(free).strain <= MOST_STRAIN;
}

function cannotMeet(
  targets: OutlineTargets,
  habit: OutlineHabit,
  problem: DraftProblem,
  solution: DraftSolution,
): Fault {
  const given = PINNED_NAMES.filter((name) => targets[name] !== undefined);
  const pull = (i: number): number =>
    Math.abs(solution.pinPull[i] ?? 0) * problem.spread[PINNED_BY[given[i]].index];
  const order = given.map((_, i) => i).sort((a, b) => pull(b) - pull(a) || a - b);
  for (const i of order) {
    const name = given[i];
    const freed = solveDraft(draftProblem(without(targets, name), habit));
    if (!freed.settled) continue;
    const { index, share } = PINNED_BY[name];
    return {
      code: 'draft.cannot-meet',
      at: MEASURED_AS[name],
      found: `${inMm(targets[name] ?? 0)}, which cannot be joined to the other values by tangent arcs`,
      need: `near ${inMm(freed.u[index] / share)}, where it comes to lie if it is left out`,
      remedy: 'measure it again or leave it out',
    };
  }
  return {
    code: 'draft.cannot-meet',
    at: given.length > 0 ? MEASURED_AS[given[order[0]]] : 'waist',
    found: `values that leave a gap of ${inMm(solution.residualMm)} in the outline`,
    need: 'lengths that tangent arcs can join',
    remedy: 'measure the body length and the three widths again',
  };
}

function tooStrained(targets: OutlineTargets, strain: number, index: number): Fault {
  const { at, says } = NUMBER_WORDS[index];
  return {
    code: 'draft.strained',
    at,
    found: `an outline whose ${says} strays ${timesUsual(strain)}`,
    need: `no more than ${MOST_STRAIN} times, from widths alone (lower bout ${inMm(targets.lowerBoutMm)}, waist ${inMm(targets.waistMm)}, upper bout ${inMm(targets.upperBoutMm)})`,
    remedy: 'measure the widths again, or add the heights and widths of the corners if the body is really so',
  };
}

function strainFindings(
  problem: DraftProblem,
  solution: DraftSolution,
  strain: number,
  index: number,
): Finding[] {
  const good = problem.pins.length > 0 ? GOOD_STRAIN : GOOD_STRAIN_OF_SIZES;
  const { at, says } = NUMBER_WORDS[index];
  const found: Finding[] = solution.bound.map((bound) =>
    finding('caution', {
      code: 'draft.at-bound',
      at: 'outline',
      found: `drawn to the limit: ${bound}`,
      need: 'some play left',
      remedy: 'look at the outline there; measure heights and widths of the corners to settle it',
    }),
  );
  if (strain <= good) return found;
  const wording = strain > MOST_STRAIN ? 'keep it only if you measured it so' : 'look at the outline there';
  found.push(
    finding(strain > GOOD_STRAIN ? 'caution' : 'remark', {
      code: 'draft.strained',
      at,
      found: `${says} strays ${timesUsual(strain)}`,
      need: `usually within ${good} times`,
      remedy: `${wording}; measure again what you doubt`,
    }),
  );
  return found;
}

const timesUsual = (strain: number): string =>
  `${strain.toFixed(1)} times as far from the usual as instruments mostly do`;

function startOfWaist(problem: DraftProblem, u: Float64Array): { x: number; y: number } {
  const lean = u[AT.lowerEndHeading];
  const end = problem.cornerEndsMm.lower;
  return {
    x: u[DRAFT_AT.lowerCornerX] + end * cos(lean),
    y: u[DRAFT_AT.lowerCornerY] + end * sin(lean),
  };
}

/** The drawn outline measured afresh: simple, on one side of the centre line, widest and narrowest where promised. */
function checkShape(half: HalfOutline, targets: OutlineTargets): Fault[] {
  // The hollow before a corner is left out: where the maker measured the corners wider, they may be.
  const lower = boundsOf({ ...half.lowerBout, vertices: half.lowerBout.vertices.slice(0, -1) });
  const waist = boundsOf(half.cBout);
  const upper = boundsOf({ ...half.upperBout, vertices: half.upperBout.vertices.slice(1) });
  const faults: Fault[] = [];
  const extreme = (name: 'lowerBoutMm' | 'waistMm' | 'upperBoutMm', halfWidthMm: number): void => {
    if (Math.abs(2 * halfWidthMm - targets[name]) <= WELD_MM) return;
    faults.push({
      code: 'draft.not-extreme',
      at: MEASURED_AS[name],
      found: `${inMm(2 * halfWidthMm)} elsewhere, beyond the given ${inMm(targets[name])}`,
      need: 'the widest or narrowest place of its stretch',
      remedy: 'measure the width and its height again',
    });
  };
  extreme('lowerBoutMm', lower.max.x);
  extreme('waistMm', waist.min.x);
  extreme('upperBoutMm', upper.max.x);
  const crossings = selfCrossings(outlineChain(half));
  if (crossings.length > 0)
    faults.push({
      code: 'draft.crosses',
      at: 'outline',
      found: `an outline that crosses itself ${inMm(crossings[0].point.y)} above the lower end`,
      need: 'an outline without loops',
      remedy: 'measure the corners and the waist again',
    });
  return faults;
}
