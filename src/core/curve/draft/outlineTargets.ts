import type { BodySizes, OutlineHabit } from './outlineHabit.ts';

/**
 * What a drafted outline has to meet, mm. Stations are heights above the lower end, measured along the centre
 * line; corner widths are over all, measured at the points where the corners stand out most, the bout side of
 * the corner ends. What is left out follows the family's habit.
 */
export interface OutlineTargets extends BodySizes {
  readonly lowerBoutStationMm?: number;
  readonly waistStationMm?: number;
  readonly upperBoutStationMm?: number;
  readonly lowerCornerStationMm?: number;
  readonly upperCornerStationMm?: number;
  readonly lowerCornersMm?: number;
  readonly upperCornersMm?: number;
  readonly lowerCornerEndMm?: number;
  readonly upperCornerEndMm?: number;
}

/** The width of a corner end, given or the family's at this body length. */
export function cornerEndsMm(targets: OutlineTargets, habit: OutlineHabit): { lower: number; upper: number } {
  const scale = targets.bodyLengthMm / habit.usualSizes.bodyLengthMm;
  return {
    lower: targets.lowerCornerEndMm ?? habit.lowerCornerEndMm * scale,
    upper: targets.upperCornerEndMm ?? habit.upperCornerEndMm * scale,
  };
}
