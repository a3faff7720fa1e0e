import { type Design, VALUES_OVER_GROUND } from '../design/index.ts';

/** Whether outline, parts in the plane and arches of two designs are the same: told by everything that is given for them. */
export function isOnSameGround(one: Design, other: Design): boolean {
  return groundOf(one) === groundOf(other);
}

function groundOf({ values, overruled, settled, holeShape, headFit, ...rest }: Design): string {
  const ground = Object.entries(values).filter(([name]) => !VALUES_OVER_GROUND.has(name));
  return JSON.stringify([rest, ground]);
}
