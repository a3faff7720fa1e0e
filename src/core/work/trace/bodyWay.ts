import { cos, type Point, point, sin } from '../../base/index.ts';
import type { RestoredOutline } from '../../photo/index.ts';

/** From the scene to the body frame of a restored outline: y up the centre line, x to the treble side. */
export function bodyWay({ axis, lowerEndMm }: RestoredOutline, face: 'top' | 'back') {
  const [c, s] = [cos(axis.headingRad), sin(axis.headingRad)];
  const side = face === 'top' ? 1 : -1;
  return ({ x, y }: Point<'scene'>): Point<'body'> => {
    const [dx, dy] = [x - axis.through.x, y - axis.through.y];
    return point(side * (s * dx - c * dy), c * dx + s * dy - lowerEndMm);
  };
}
