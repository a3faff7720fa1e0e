import { log } from '../../base/index.ts';
import type { LinearRow } from '../../numeric/index.ts';
import { AT } from './arcRun.ts';

/** A bound on a shape, `row · u ≥ bound` in the shape's own numbers, with the words for it. */
export interface ShapeBound extends LinearRow {
  readonly says: string;
}

/** How far a shape may go: a draft keeps well inside what a trace of a real instrument may show. */
export interface BoundRules {
  /** Shoulder over flank, least. */
  readonly shoulderToFlank: number;
  /** Least radius of the hollow before a corner and of the small arcs of the waist, shares of the length. */
  readonly reverse: number;
  readonly cSmall: number;
}

export const DRAFT_BOUNDS: BoundRules = { shoulderToFlank: 0.85, reverse: 0.04, cSmall: 0.03 };
/** Real instruments went down to 0.75 for the shoulder; the small arcs are left room for wear and reading. */
export const TRACE_BOUNDS: BoundRules = { shoulderToFlank: 0.7, reverse: 0.03, cSmall: 0.02 };

const LEAST_SWEEP_DEG = 5;
const LEAST_REVERSE_DEG = 20;
const LONGEST_END = 1.6; // radius of an end arc, share of the body length

/**
 * All bounds of a shape on a body of `lengthMm`; every one is linear, since radii stand as logarithms and
 * sweeps are differences of headings. They keep loops and false extremes out: the widest and narrowest places
 * always stay inside their arcs.
 */
export function shapeBounds(size: number, lengthMm: number, rules: BoundRules): ShapeBound[] {
  const bounds: ShapeBound[] = [];
  const keep = (
    says: string,
    terms: readonly (readonly [index: number, factor: number])[],
    bound: number,
  ) => {
    const row = new Float64Array(size);
    for (const [index, factor] of terms) row[index] += factor;
    bounds.push({ says, row, bound });
  };
  keepBout(keep, 'lower bout', AT.lowerRadii, AT.lowerHeadings, lengthMm, rules);
  keepBout(keep, 'upper bout', AT.upperRadii, AT.upperHeadings, lengthMm, rules);
  keepWaist(keep, lengthMm, rules);
  return bounds;
}

type Keep = (says: string, terms: readonly (readonly [number, number])[], bound: number) => void;

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

function keepBout(
  keep: Keep,
  bout: string,
  radius: number,
  heading: number,
  lengthMm: number,
  rules: BoundRules,
): void {
  const sweep = rad(LEAST_SWEEP_DEG);
  keep(`short end arc of the ${bout}`, [[heading, 1]], sweep);
  const arcs = ['shoulder', 'flank', 'upper flank'];
  arcs.forEach((arc, i) => {
    const ends = [
      [heading + i + 1, 1],
      [heading + i, -1],
    ] as const;
    keep(`short ${arc} of the ${bout}`, ends, sweep);
  });
  const hollow = [
    [heading + 3, 1],
    [heading + 4, -1],
  ] as const;
  keep(`shallow hollow before the corner of the ${bout}`, hollow, rad(LEAST_REVERSE_DEG));
  keep(`widest place of the ${bout} at the end of its flank`, [[heading + 1, -1]], rad(-85));
  keep(`widest place of the ${bout} at the end of its flank`, [[heading + 2, 1]], rad(92));
  keep(`flank of the ${bout} that leans in steeply`, [[heading + 3, -1]], rad(-150));
  keep(`corner of the ${bout} that points outwards`, [[heading + 4, 1]], rad(25));
  keep(`corner of the ${bout} that points along the centre line`, [[heading + 4, -1]], rad(-88));
  const ratio = (says: string, bigger: number, smaller: number, least: number): void =>
    keep(
      says,
      [
        [radius + bigger, 1],
        [radius + smaller, -1],
      ],
      log(least),
    );
  ratio(`end of the ${bout} rounder than its shoulder`, 0, 1, 1);
  ratio(`shoulder of the ${bout} tighter than its flank`, 1, 2, rules.shoulderToFlank);
  keep(`flat end of the ${bout}`, [[radius, -1]], -log(LONGEST_END * lengthMm));
  keep(`tight hollow before the corner of the ${bout}`, [[radius + 4, 1]], log(rules.reverse * lengthMm));
}

function keepWaist(keep: Keep, lengthMm: number, rules: BoundRules): void {
  const c = AT.cRadii;
  const h = AT.cHeadings;
  const least = log(rules.cSmall * lengthMm);
  keep('tight lower curve of the waist', [[c, 1]], least);
  keep('tight upper curve of the waist', [[c + 2, 1]], least);
  const flatter = (says: string, small: number): void =>
    keep(
      says,
      [
        [c + 1, 1],
        [small, -1],
      ],
      0,
    );
  flatter('lower curve of the waist flatter than its middle', c);
  flatter('upper curve of the waist flatter than its middle', c + 2);
  keep('lower hook of the waist turned up', [[h, 1]], rad(-10));
  keep('deep lower hook of the waist', [[h, -1]], rad(-50));
  keep('upper hook of the waist turned down', [[h + 3, 1]], rad(-25));
  keep('deep upper hook of the waist', [[h + 3, -1]], rad(-50));
  keep('narrowest place at the lower end of the middle curve', [[h + 1, 1]], rad(95));
  keep('narrowest place at the upper end of the middle curve', [[h + 2, -1]], rad(-85));
  const sweep = rad(LEAST_SWEEP_DEG);
  keep(
    'short lower curve of the waist',
    [
      [h, 1],
      [h + 1, -1],
    ],
    sweep - Math.PI,
  );
  keep(
    'short upper curve of the waist',
    [
      [h + 2, 1],
      [h + 3, 1],
    ],
    sweep,
  );
}
