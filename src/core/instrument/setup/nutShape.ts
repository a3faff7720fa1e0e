import { point } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import { crownArcs } from './crownArcs.ts';
import { SLOT_SHARE, type StringPlace } from './stringPlaces.ts';

/** Top of the nut where it meets the board: across (toward the highest string positive), and over the gluing face of the board. */
export function nutCrown(places: readonly StringPlace[], widthMm: number): Chain<'section'> {
  const tops = places.map(({ atNutMm, nutUpMm, diameterMm }) =>
    point<'section'>(atNutMm, nutUpMm + SLOT_SHARE * diameterMm),
  );
  return crownArcs(tops, -widthMm / 2, widthMm / 2);
}
