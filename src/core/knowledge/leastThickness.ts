import { WRITE_MM } from '../base/index.ts';
import type { Quantity } from '../quantity/index.ts';
import type { Family } from './family.ts';
import { type Cell, lengthOf, read, recalled } from './size.ts';
import { ordinarySize } from './sizes.ts';

/** Parts of a plate whose least thickness a maker watches; the bar stands on the top alone. */
export const THICKNESS_ZONES = [
  'middle',
  'lowerBout',
  'waist',
  'upperBout',
  'channel',
  'post',
  'bar',
] as const;
export type ThicknessZone = (typeof THICKNESS_ZONES)[number];

/** The zones of a back: all but the bar's. */
export const BACK_ZONES = THICKNESS_ZONES.filter((zone) => zone !== 'bar');

type Plate = 'back' | 'top';

const thin = (mm: number): Cell => recalled(mm, 'the thinnest that plates of this family are left');
const centre = (mm: number): Cell => recalled(mm, 'under bridge and post');
const printed = (mm: number): Cell => read(mm, 'violaTable');

/** The thinnest place of a whole zone, so less than the figures that tables print for its middle. For the ordinary size. */
const LEAST: Readonly<Record<Family, Readonly<Record<Plate, Readonly<Record<ThicknessZone, Cell>>>>>> = {
  violin: {
    back: zones({ middle: centre(2.8), post: centre(3.2), elsewhere: thin(2) }),
    top: zones({ middle: centre(2.5), post: centre(2.6), elsewhere: thin(2.2) }),
  },
  viola: {
    back: zones({ middle: centre(3), post: centre(3.4), elsewhere: printed(2) }),
    top: zones({ middle: centre(2.6), post: centre(2.7), elsewhere: printed(2.3) }),
  },
  cello: {
    back: zones({ middle: centre(5), post: centre(5.5), elsewhere: thin(3.2) }),
    top: zones({ middle: centre(4), post: centre(4.3), elsewhere: thin(3.4) }),
  },
};

function zones(cells: {
  readonly middle: Cell;
  readonly post: Cell;
  readonly elsewhere: Cell;
}): Readonly<Record<ThicknessZone, Cell>> {
  const { middle, post, elsewhere } = cells;
  return {
    middle,
    post,
    lowerBout: elsewhere,
    waist: elsewhere,
    upperBout: elsewhere,
    channel: elsewhere,
    bar: elsewhere,
  };
}

/** Steps in a millimetre that a least thickness is rounded down to. */
const STEPS = 20;

/**
 * Least thickness that is usual in a zone of a plate, mm, with its origin; a smaller body than the family's ordinary one has
 * it in proportion, a larger one has the same.
 */
export function leastThickness(
  family: Family,
  plate: Plate,
  zone: ThicknessZone,
  bodyLengthMm: number,
): Quantity {
  const [ordinaryMm, origin] = LEAST[family][plate][zone];
  const scale = Math.min(1, bodyLengthMm / lengthOf(ordinarySize(family)));
  return { value: Math.floor((ordinaryMm * scale + WRITE_MM) * STEPS) / STEPS, unit: 'mm', origin };
}
