import { accept, type Checked, type Point } from '../../base/index.ts';
import { type Chain, chainThrough } from '../../curve/index.ts';

/** A stretch of a profile without corners as a chain; a level end is one whose heading is 0. */
export function fitProfile(
  points: readonly Point<'section'>[],
  _level: { readonly start?: boolean; readonly end?: boolean },
): Checked<Chain<'section'>> {
  return accept(chainThrough(points, false));
}
