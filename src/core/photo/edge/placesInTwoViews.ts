import { atan2, hypot, type Point, point } from '../../base/index.ts';
import { isCornerEnd } from '../body/templateStations.ts';
import type { PlaceInTwoViews } from '../camera/heightFromViews.ts';
import { toPhoto, type View } from '../camera/view.ts';
import { edgeLine } from './edgeLine.ts';
import type { EdgeSpot, FoundEdge } from './foundEdge.ts';

/** An edge as one photograph shows it, carried to the scene through its view. */
export interface ViewedEdge {
  readonly edge: FoundEdge<'scene'>;
  readonly view: View;
  /** Of the photograph, about the middle of the body. */
  readonly mmPerPixel: number;
}

/** mm. Edges of one body in one plane lie nearer together than this, however wrong the height of the plane. */
const FARTHEST_MM = 12;
/**
 * mm. A rounded edge, its shadow and what shows below it move the line that is read by so much from one view to
 * another, and places within this length of edge err alike (chosen by us after simulated photographs).
 */
const VIEW_SPREAD_MM = 0.2;
const ERR_ALIKE_MM = 60;

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
  const alike = Math.sqrt(Math.max(1, ERR_ALIKE_MM / stepOf(spots)));
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
        sigmaPx: (alike * hypot(VIEW_SPREAD_MM, spot.sigmaMm)) / first.mmPerPixel,
        acrossRad: atan2(link.normalY, link.normalX),
      },
    ];
  });
}

function stepOf(spots: readonly EdgeSpot<'scene'>[]): number {
  const [first, last] = [spots[0], spots.at(-1)];
  return first && last ? (last.alongMm - first.alongMm) / Math.max(1, spots.length - 1) : ERR_ALIKE_MM;
}
