import { point, WRITE_MM } from '../../base/index.ts';
import { boundsOf, closeChain, containsPoint, joinChains } from '../../curve/index.ts';
import { type HeightField, heightField } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { EdgeState } from './edgeShape.ts';
import { plateHeight } from './plateHeight.ts';

/**
 * Heights of a plate's outside over a grid that is even about the centre line and starts at the lower end; NaN off the
 * plate. Body frame: the plates are symmetric, so that the same grid serves the back seen from outside.
 */
export function plateField(arch: PlateArch, state: EdgeState, stepMm: number): HeightField {
  const treble = closeChain(joinChains(...arch.edge));
  const box = boundsOf(treble);
  const half = Math.ceil(box.max.x / stepMm);
  const grid = {
    fromXMm: -half * stepMm,
    fromYMm: 0,
    stepMm,
    columns: 2 * half + 1,
    rows: Math.ceil(box.max.y / stepMm) + 1,
  };
  // The centre line closes the half: a place on it counts as a hair beside it.
  return heightField(grid, (x, y) =>
    containsPoint(treble, point<'body'>(Math.max(Math.abs(x), WRITE_MM), y))
      ? plateHeight(arch, x, y, state)
      : Number.NaN,
  );
}
