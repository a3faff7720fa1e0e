import { cos, type Frame, type Point, point, sin } from '../../base/index.ts';
import type { EdgeSpot } from '../edge/foundEdge.ts';

/** A line of a frame by one of its points and its heading, anticlockwise from x. */
export interface Heading<F extends Frame> {
  readonly through: Point<F>;
  readonly headingRad: number;
}

/** A point in the frame in which a line is the y axis: x to the right of it, y along it from its `through`. */
export function turnedUpright<F extends Frame>(at: Point<F>, line: Heading<F>): Point<'body'> {
  const c = cos(line.headingRad);
  const s = sin(line.headingRad);
  const dx = at.x - line.through.x;
  const dy = at.y - line.through.y;
  return point(s * dx - c * dy, c * dx + s * dy);
}

/** The spots of a half in that frame. */
export function uprightSpots<F extends Frame>(
  spots: readonly EdgeSpot<F>[],
  line: Heading<F>,
): readonly EdgeSpot<'body'>[] {
  const c = cos(line.headingRad);
  const s = sin(line.headingRad);
  return spots.map(({ x, y, section, alongMm, seen, sigmaMm, overlookMm }) => {
    const dx = x - line.through.x;
    const dy = y - line.through.y;
    return {
      x: s * dx - c * dy,
      y: c * dx + s * dy,
      section,
      alongMm,
      seen,
      sigmaMm,
      ...(overlookMm !== undefined && { overlookMm }),
    };
  });
}
