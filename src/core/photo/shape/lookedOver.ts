import { type Point, point } from '../../base/index.ts';
import type { SheetPlace } from '../camera/camera.ts';

/** mm of an upright wall that show in the picture's plane beyond its upper edge; negative where it leans out of sight. */
export function wallShownMm(
  stand: SheetPlace,
  planeHeightMm: number,
  upperEdgeMm: number,
  at: Point<'scene'>,
  normal: Point<'scene'>,
): number {
  const foot = asSeenAt(stand, planeHeightMm, at, 0);
  const edge = asSeenAt(stand, planeHeightMm, at, upperEdgeMm);
  return (foot.x - edge.x) * normal.x + (foot.y - edge.y) * normal.y;
}

/** Where a place `heightMm` over the paper shows in the plane of the picture. */
export function asSeenAt(
  stand: SheetPlace,
  planeHeightMm: number,
  { x, y }: Point<'scene'>,
  heightMm: number,
): Point<'scene'> {
  const reach = (stand.z - planeHeightMm) / (stand.z - heightMm);
  return point(stand.x + reach * (x - stand.x), stand.y + reach * (y - stand.y));
}

/** The place over the paper, `heightMm` up, that shows at a place in the plane of the picture. */
export function placeAtHeight(
  stand: SheetPlace,
  planeHeightMm: number,
  { x, y }: Point<'scene'>,
  heightMm: number,
): Point<'scene'> {
  const reach = (stand.z - heightMm) / (stand.z - planeHeightMm);
  return point(stand.x + reach * (x - stand.x), stand.y + reach * (y - stand.y));
}
