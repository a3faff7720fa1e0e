import { accept, type Checked, type Point } from '../../base/index.ts';
import { type Chain, fitArcs } from '../../curve/index.ts';

/** mm. Arcs leave the profile by no more than this: far finer than paper, laser and router. */
const ARC_FIT_MM = 0.005;

/** A stretch of a profile without corners as tangent arcs within {@link ARC_FIT_MM}; a level end has heading 0 exactly. */
export function fitProfile(
  points: readonly Point<'section'>[],
  level: { readonly start?: boolean; readonly end?: boolean },
): Checked<Chain<'section'>> {
  const fitted = fitArcs(points, {
    toleranceMm: ARC_FIT_MM,
    ...(level.start ? { startHeadingRad: 0 } : {}),
    ...(level.end ? { endHeadingRad: 0 } : {}),
  });
  return fitted.ok ? accept(fitted.value.chain) : fitted;
}
