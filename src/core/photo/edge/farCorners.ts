import { hypot, type Point, point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';

/** mm along the edge from a corner end within which an arm belongs to the corner. */
const ARM_MM = 16;
/** mm. An overlook from which on a corner of the far plate stands out beside the near one. */
const STANDS_OUT_MM = 0.5;
/** mm beyond the far plate's shift within which its corner may still be taken for the near one's. */
const BESIDE_MM = 1;

/**
 * Places at corners that may lie on the far plate's corner though nothing is looked over along their own normal: the
 * far corner stands out past the near one in the direction of the overlook, and the places next to a stretch that is
 * looked over, round the corner from it, are its. An arm that stands so on both sides is left as seen.
 */
export function onFarCorners(
  edge: readonly EdgePoint[],
  overlookPx: (place: Point<'photo'>, normal: Point<'photo'>) => number,
  pxPerMm: number,
): readonly boolean[] {
  const corners = edge.filter(({ section }) => section.endsWith('Corner'));
  const isAtCorner = ({ side, along }: EdgePoint) =>
    corners.some((end) => end.side === side && Math.abs(end.along - along) < ARM_MM);
  const atCorner = edge.map(isAtCorner);
  const overlooked = edge
    .filter((_, i) => atCorner[i])
    .filter((place) => overlookPx(place.point, place.normal) > STANDS_OUT_MM * pxPerMm)
    .map((place) => ({
      place,
      shiftPx: hypot(overlookPx(place.point, point(1, 0)), overlookPx(place.point, point(0, 1))),
    }));
  const isOverlooked = (place: EdgePoint) => overlooked.some(({ place: other }) => other === place);
  const far = edge.map(
    (own, i) =>
      atCorner[i] &&
      !isOverlooked(own) &&
      overlooked.some(
        ({ place, shiftPx }) =>
          place.side === own.side &&
          place.section !== own.section &&
          hypot(place.point.x - own.point.x, place.point.y - own.point.y) < shiftPx + BESIDE_MM * pxPerMm,
      ),
  );
  // Where the same arm stands so on both sides, setting both aside would leave nothing but the usual shape.
  const armOf = ({ side, section, along }: EdgePoint) =>
    `${section} at ${corners.find((end) => end.side === side && Math.abs(end.along - along) < ARM_MM)?.section}`;
  const farArms = (side: EdgePoint['side']) =>
    new Set(edge.filter((place, i) => far[i] && place.side === side).map(armOf));
  const [bass, treble] = [farArms('bass'), farArms('treble')];
  return edge.map((place, i) => far[i] && !(bass.has(armOf(place)) && treble.has(armOf(place))));
}
