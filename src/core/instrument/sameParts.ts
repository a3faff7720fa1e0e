import { type Design, hasSameHalf, VALUES_OVER_PLATES } from '../design/index.ts';
import { isGroundOf, type PlateGround } from './arching/plateGround.ts';

/** Whether the parts in the plane and the arches of two designs are the same: told by everything that is given for them. */
export function hasSamePlates(one: Design, other: Design): boolean {
  return givenForPlates(one) === givenForPlates(other);
}

function givenForPlates({ values, overruled, settled, holeShape, headFit, ...rest }: Design): string {
  const given = Object.entries(values).filter(([name]) => !VALUES_OVER_PLATES.has(name));
  return JSON.stringify([rest, given]);
}

/** Whether the ground that was laid out for one design is the other's too: that of its half outline and its channel. */
export function isSharedGround(ground: PlateGround, laidFor: Design, other: Design): boolean {
  return isGroundOf(ground, other.values) && hasSameHalf(laidFor, other);
}
