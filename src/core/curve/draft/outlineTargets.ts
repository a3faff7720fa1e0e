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

export type WidthName = 'upperBoutMm' | 'waistMm' | 'lowerBoutMm';
const WIDTHS: readonly WidthName[] = ['upperBoutMm', 'waistMm', 'lowerBoutMm'];

/** All four sizes, and which of the widths were not given. */
export interface FilledSizes {
  readonly sizes: BodySizes;
  readonly derived: readonly WidthName[];
}

/**
 * The four sizes where some widths are missing: a missing one stands to the family's usual width as the given
 * widths do on the mean, or as the body length does where none is given.
 */
export function fillBodySizes(
  given: Partial<BodySizes> & Pick<BodySizes, 'bodyLengthMm'>,
  habit: OutlineHabit,
): FilledSizes {
  const known = WIDTHS.flatMap((name) => {
    const value = given[name];
    return value === undefined ? [] : [value / habit.usualSizes[name]];
  });
  const scale =
    known.length === 0
      ? given.bodyLengthMm / habit.usualSizes.bodyLengthMm
      : known.reduce((sum, one) => sum + one, 0) / known.length;
  const width = (name: WidthName): number => given[name] ?? scale * habit.usualSizes[name];
  return {
    sizes: {
      bodyLengthMm: given.bodyLengthMm,
      upperBoutMm: width('upperBoutMm'),
      waistMm: width('waistMm'),
      lowerBoutMm: width('lowerBoutMm'),
    },
    derived: WIDTHS.filter((name) => given[name] === undefined),
  };
}
