import type { Chain } from './chain.ts';

/**
 * The treble half of a body outline in its three sections, body frame, millimetres, x ≥ 0.
 *
 * - `lowerBout`: from (0, 0), leaving level to the right, to the lower corner's bout-side tip
 * - `cBout`: from the lower corner's C-side tip to the upper corner's C-side tip
 * - `upperBout`: from the upper corner's bout-side tip to (0, body length), arriving level
 *
 * Each is an open chain, tangent inside; the two corner ends are the straight lines between them.
 */
export interface HalfOutline {
  readonly lowerBout: Chain<'body'>;
  readonly cBout: Chain<'body'>;
  readonly upperBout: Chain<'body'>;
}
