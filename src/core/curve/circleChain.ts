import type { Frame, Point } from '../base/index.ts';
import type { Chain } from './chain.ts';

/** A whole circle as two half circles, starting at its rightmost point; anticlockwise unless asked otherwise. */
export function circleChain<F extends Frame>(
  centre: Point<F>,
  radiusMm: number,
  clockwise = false,
): Chain<F> {
  const bulge = clockwise ? -1 : 1;
  return {
    closed: true,
    vertices: [
      { x: centre.x + radiusMm, y: centre.y, bulge },
      { x: centre.x - radiusMm, y: centre.y, bulge },
    ],
  };
}
