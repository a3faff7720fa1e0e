import { type Point, point } from '../../base/index.ts';
import type { PlaceInTwoViews } from '../camera/heightFromViews.ts';
import { toPhoto, type View } from '../camera/view.ts';
import { edgeLine } from './edgeLine.ts';
import { type EdgeSpot, type FoundEdge, isCornerEnd } from './foundEdge.ts';

/** An edge as one photograph shows it, carried to the scene through its view. */
export interface ViewedEdge {
  readonly edge: FoundEdge<'scene'>;
  readonly view: View;
  /** Of the photograph, about the middle of the body. */
  readonly mmPerPixel: number;
}

/** mm. Edges of one body in one plane lie nearer together than this, however wrong the height of the plane. */
const FARTHEST_MM = 12;
/** px. No place of an edge is read better than this in a real photograph (chosen by us). */
const LEAST_SIGMA_PX = 0.1;

/**
 * Places of one edge that both photographs show, paired across the edge: the first's spots with the nearest of the
 * second's edge, each as a photo point. Both views look at the same plane, whatever its height.
 */
export function placesInTwoViews(first: ViewedEdge, second: ViewedEdge): readonly PlaceInTwoViews[] {
  return [
    ...pairedSide(first, second, first.edge.left, second.edge.left, -1),
    ...pairedSide(first, second, first.edge.right, second.edge.right, 1),
  ];
}

function pairedSide(
  first: ViewedEdge,
  second: ViewedEdge,
  spots: readonly EdgeSpot<'scene'>[],
  others: readonly EdgeSpot<'scene'>[],
  outward: 1 | -1,
): readonly PlaceInTwoViews[] {
  const line = edgeLine(others, outward);
  return spots.flatMap((spot): PlaceInTwoViews[] => {
    if (!spot.seen || isCornerEnd(spot.section)) return [];
    const link = line.nearest(spot.x, spot.y, spot.alongMm);
    if (link === null || Math.abs(link.distanceMm) > FARTHEST_MM) return [];
    const foot: Point<'scene'> = point(
      spot.x - link.distanceMm * link.normalX,
      spot.y - link.distanceMm * link.normalY,
    );
    return [
      {
        first: toPhoto(first.view, point(spot.x, spot.y)),
        second: toPhoto(second.view, foot),
        sigmaPx: Math.max(LEAST_SIGMA_PX, spot.sigmaMm / first.mmPerPixel),
        acrossRad: Math.atan2(link.normalY, link.normalX),
      },
    ];
  });
}
