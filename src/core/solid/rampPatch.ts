import { cos, hypot, type Point, point, sin } from '../base/index.ts';
import { arcOf, headingOn, nearestOnSpans, pointOn, type Segment, segmentLength } from '../curve/index.ts';
import { fullDepthAt, type HollowPlate, insideHeight } from '../instrument/index.ts';
import {
  type CubicKnots,
  cubicKnots,
  knotPlaces,
  type SplinePatch,
  type SplineSurface,
  splinePatch,
  splinePatchAt,
  splineSurfaceAt,
} from '../surface/index.ts';

/** Steps between knots from the border of the hollow down to its foot: the ramp is a cubic, times a depth that changes little. */
const ACROSS = 6;

/** rad of a round side between two knots along it: a circle is met there to a thirty-thousandth of its radius. */
const TURN_RAD = 0.25;

/** Steps along even the shortest side. */
const LEAST_STEPS = 2;

/**
 * The ramp of a hollow over one side of its border, as a patch: u from the border (0) straight and square to it down to the foot
 * (1), v along the side (0 to 1). On the border at height 0, at the foot as high and as steep as the floor's surface is there.
 */
export function rampPatch(
  plate: HollowPlate,
  side: Segment<'body'>,
  floor: SplineSurface,
  alongMm: number,
): SplinePatch {
  const [knotsU, knotsV] = [
    cubicKnots([0, 1], 1 / ACROSS),
    cubicKnots([0, 1], 1 / stepsAlong(side, alongMm)),
  ];
  return splinePatch(knotsU, knotsV, (u, v) => {
    const { x, y } = placeInside(plate, side, u, v);
    if (u === 0) return [x, y, 0];
    const own = fullDepthAt(plate, x, y).zMm;
    const floorShare = rampShare(Math.max(0, (u - FLOOR_FROM) / (1 - FLOOR_FROM)));
    return [x, y, rampShare(u) * (own + floorShare * (splineSurfaceAt(floor, x, y).zMm - own))];
  });
}

/** Share of the way down from which the ramp turns from the plate's own depth to that of the floor's surface, slope and all. */
const FLOOR_FROM = 0.5;

function stepsAlong(side: Segment<'body'>, alongMm: number): number {
  const turnRad = Math.abs(arcOf(side)?.sweepRad ?? 0);
  return Math.max(LEAST_STEPS, Math.ceil(segmentLength(side) / alongMm), Math.ceil(turnRad / TURN_RAD));
}

/** So much of the full depth is reached so much of the way down. */
function rampShare(t: number): number {
  return t * t * (3 - 2 * t);
}

/** The place inside a side of an anticlockwise border, a share of the ramp away from it. */
function placeInside(
  { rampMm }: HollowPlate,
  side: Segment<'body'>,
  share: number,
  along: number,
): Point<'body'> {
  const { x, y } = pointOn(side, along);
  const headingRad = headingOn(side, along);
  return point(x - share * rampMm * sin(headingRad), y + share * rampMm * cos(headingRad));
}

/** Half way between the places of knots: where a spline through these is farthest from what it was made from. */
function middles(knots: CubicKnots): readonly number[] {
  const places = [...knotPlaces(knots)];
  return places.slice(1).map((to, index) => (to + (places[index] as number)) / 2);
}

/** The most by which a ramp stands off the inside of the plate, measured half way between the places it was made from. */
export function rampOff(plate: HollowPlate, patch: SplinePatch): number {
  let most = 0;
  for (const v of middles(patch.knotsV))
    for (const u of middles(patch.knotsU)) {
      const [x, y, zMm] = splinePatchAt(patch, u, v);
      most = Math.max(most, Math.abs(zMm - insideHeight(plate, x, y)));
    }
  return most;
}

/** The most by which the edges of a ramp stand off the hollow's border and the floor's surface. */
export function rampEdgeOff({ lineSpans }: HollowPlate, floor: SplineSurface, patch: SplinePatch): number {
  let most = 0;
  for (const v of middles(patch.knotsV)) {
    const [borderX, borderY, borderZ] = splinePatchAt(patch, 0, v);
    const [footX, footY, footZ] = splinePatchAt(patch, 1, v);
    const offBorder = nearestOnSpans(lineSpans, point(borderX, borderY)).distanceMm;
    const offFloor = Math.abs(splineSurfaceAt(floor, footX, footY).zMm - footZ);
    most = Math.max(most, hypot(offBorder, borderZ), offFloor);
  }
  return most;
}
