import { atan2, type Point, point } from '../../base/index.ts';
import type { BodyTrace } from '../body/bodyTrace.ts';
import type { EdgeSpot, FoundEdge } from './foundEdge.ts';

/** An edge found in a picture, carried to the scene place by place. */
export interface EdgeInScene {
  readonly edge: FoundEdge<'scene'>;
  /** The centre line as the template lay: a start for the mirror axis. */
  readonly start: { readonly through: Point<'scene'>; readonly headingRad: number };
}

/**
 * The traced edge in the scene, halves as seen: on the top the treble half is right, on the back it is left. `toScene`
 * carries a point of the picture that was traced; doubtful places count as bridged.
 */
export function edgeInScene(
  trace: BodyTrace,
  toScene: (at: Point<'photo'>) => Point<'scene'>,
  mmPerPixel: number,
  face: 'top' | 'back',
): EdgeInScene {
  const spots = (side: 'bass' | 'treble'): EdgeSpot<'scene'>[] =>
    trace.edge
      .filter((place) => place.side === side)
      .map((place) => {
        const { x, y } = toScene(place.point);
        return {
          ...point<'scene'>(x, y),
          section: place.section,
          alongMm: place.along,
          seen: place.state === 'seen',
          sigmaMm: place.sigmaPx * mmPerPixel,
          ...(place.overlookPx !== undefined && { overlookMm: place.overlookPx * mmPerPixel }),
        };
      });
  const lower = toScene(trace.pose.lowerEnd);
  const upper = toScene(trace.pose.upperEnd);
  return {
    edge:
      face === 'top'
        ? { left: spots('bass'), right: spots('treble') }
        : { left: spots('treble'), right: spots('bass') },
    start: { through: lower, headingRad: atan2(upper.y - lower.y, upper.x - lower.x) },
  };
}
