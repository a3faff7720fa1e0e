import { type Box, hypot, point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import { type Rectified, rectify, sceneBounds } from './rectify.ts';
import { toPhoto, type View } from './view.ts';

/** mm. Finer pixels than this tell nothing about an edge. */
const FINEST_PIXEL_MM = 0.1;
/** mm over which the photograph's own pixels are measured. */
const MEASURED_MM = 10;

/**
 * What lies in an area of the scene and up to `roundMm` beside it, as far as the photograph shows it, seen square on, in
 * pixels as fine as the photograph's own in the middle of the area.
 */
export function squareOn(
  picture: Picture,
  view: View,
  { min, max }: Box<'scene'>,
  roundMm: number,
): Rectified {
  const shown = sceneBounds(picture, view);
  const box: Box<'scene'> = {
    min: point(Math.max(shown.min.x, min.x - roundMm), Math.max(shown.min.y, min.y - roundMm)),
    max: point(Math.min(shown.max.x, max.x + roundMm), Math.min(shown.max.y, max.y + roundMm)),
  };
  const middle = point<'scene'>((min.x + max.x) / 2, (min.y + max.y) / 2);
  const [a, b] = [toPhoto(view, middle), toPhoto(view, point(middle.x + MEASURED_MM, middle.y))];
  const ownMm = MEASURED_MM / Math.max(1, hypot(b.x - a.x, b.y - a.y));
  return rectify(picture, view, { mmPerPixel: Math.max(FINEST_PIXEL_MM, ownMm), box });
}
