import { type Point, point } from '../../base/index.ts';
import type { BodyPose } from '../body/bodyTrace.ts';

/**
 * Half a body in units of a 355th of its length: x outward from the centre line, y from the lower end. Both halves
 * read alike, so that what is known of one hole holds for the other.
 */
export interface HoleFrame {
  readonly pxPerUnit: number;
  readonly toPhoto: (x: number, y: number) => Point<'photo'>;
  readonly fromPhoto: (at: Point<'photo'>) => readonly [number, number];
}

const LENGTH_UNITS = 355;

/** @param right whether the half lies to the right of the centre line in the picture, the neck up */
export function holeFrame({ lowerEnd, upperEnd }: BodyPose, right: boolean): HoleFrame {
  const [ax, ay] = [(upperEnd.x - lowerEnd.x) / LENGTH_UNITS, (upperEnd.y - lowerEnd.y) / LENGTH_UNITS];
  const way = right ? 1 : -1;
  const [bx, by] = [-ay * way, ax * way];
  const square = ax * ax + ay * ay;
  return {
    pxPerUnit: Math.sqrt(square),
    toPhoto: (x, y) => point(lowerEnd.x + x * bx + y * ax, lowerEnd.y + x * by + y * ay),
    fromPhoto: (at) => {
      const [dx, dy] = [at.x - lowerEnd.x, at.y - lowerEnd.y];
      return [(dx * bx + dy * by) / square, (dx * ax + dy * ay) / square];
    },
  };
}
