import { log } from '../../base/index.ts';
import { AT } from './arcRun.ts';
import type { BodySizes, BoutArcs, OutlineHabit, Usual } from './outlineHabit.ts';

/** The first 28 numbers of every shape: their usual values and spreads, radii as logarithms, angles in radians. */
export interface UsualNumbers {
  readonly value: Float64Array;
  readonly spread: Float64Array;
}

const RAD = Math.PI / 180;

const arcsOf = (arcs: BoutArcs): readonly Usual[] => [
  arcs.end,
  arcs.shoulder,
  arcs.flank,
  arcs.upperFlank,
  arcs.reverse,
];

/** How much a body of `sizes` enlarges the radii of each stretch. */
function enlargements(habit: OutlineHabit, sizes: BodySizes): { lower: number; c: number; upper: number } {
  const base = habit.radiiStandFor;
  const length = sizes.bodyLengthMm / base.bodyLengthMm;
  return {
    lower: Math.sqrt((sizes.lowerBoutMm / base.lowerBoutMm) * length),
    c: length,
    upper: Math.sqrt((sizes.upperBoutMm / base.upperBoutMm) * length),
  };
}

/**
 * The usual radii, headings and lower corner direction of a family on a body of `sizes`, in the order of
 * `AT`; `size` numbers in all, those from 28 on left at value 0 and spread 1.
 */
export function usualNumbers(habit: OutlineHabit, sizes: BodySizes, size: number): UsualNumbers {
  const value = new Float64Array(size);
  const spread = new Float64Array(size).fill(1);
  const factor = enlargements(habit, sizes);
  const radii = (from: number, usual: readonly Usual[], enlarged: number): void =>
    usual.forEach((one, i) => {
      value[from + i] = log(one.value * enlarged);
      spread[from + i] = one.spread;
    });
  const headings = (from: number, usual: readonly Usual[]): void =>
    usual.forEach((one, i) => {
      value[from + i] = one.value * RAD;
      spread[from + i] = one.spread * RAD;
    });
  const { lower, middle, upper } = habit.cRadiiMm;
  const c = habit.cHeadingsDeg;
  radii(AT.lowerRadii, arcsOf(habit.lowerRadiiMm), factor.lower);
  radii(AT.cRadii, [lower, middle, upper], factor.c);
  radii(AT.upperRadii, arcsOf(habit.upperRadiiMm), factor.upper);
  headings(AT.lowerHeadings, arcsOf(habit.lowerHeadingsDeg));
  headings(AT.upperHeadings, arcsOf(habit.upperHeadingsDeg));
  headings(AT.cHeadings, [c.lowerHook, c.lower, c.middle, c.upperHook]);
  headings(AT.lowerEndHeading, [habit.lowerCornerEndDeg]);
  return { value, spread };
}
