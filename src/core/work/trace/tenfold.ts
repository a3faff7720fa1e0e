import { type Point, point } from '../../base/index.ts';
import { type Chain, nearestOn } from '../../curve/index.ts';

/** How many times larger than life differences are drawn. */
export const DIFFERENCE_TIMES = 10;

/** The edge of one side as found, as many times farther from the restored outline (drawn for x ≥ 0) as differences are drawn. */
export function tenfold(
  asFound: readonly Point<'body'>[],
  restored: Chain<'body'>,
): readonly Point<'body'>[] {
  return asFound.map(({ x, y }) => {
    const side = x < 0 ? -1 : 1;
    const on = nearestOn(restored, point<'body'>(side * x, y)).point;
    return point<'body'>(
      side * (on.x + DIFFERENCE_TIMES * (side * x - on.x)),
      on.y + DIFFERENCE_TIMES * (y - on.y),
    );
  });
}
