import type { Point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { darkPatches } from './darkPatches.ts';
import { codeReader } from './markerCode.ts';
import type { FoundMarker, MarkerFinder } from './markerFinder.ts';
import { patchQuad, type Quad, sharpenedQuad } from './patchQuad.ts';

/** px. A code of seven cells cannot be read when it is smaller. */
const LEAST_PX = 8;
/** Share of the picture's long side that a code may take: it is one of many on a sheet. */
const MOST_SHARE = 0.2;
/** Share of the long side of the window in which a pixel is called dark or light, and its least size, px. */
const WINDOW_SHARE = 0.04;
const LEAST_WINDOW_PX = 24;

/**
 * Our finder of square codes: all that are dark squares in white, 8 px wide or more, with their corners to a fraction
 * of a pixel, in the order of their upper edges. A code that reads only in a mirror is given and marked so.
 */
export function markerFinder(): MarkerFinder {
  const read = codeReader();
  return (picture: GrayPicture) => {
    const longSide = Math.max(picture.widthPx, picture.heightPx);
    if (Math.min(picture.widthPx, picture.heightPx) < LEAST_PX) return [];
    const windowPx = Math.max(LEAST_WINDOW_PX, Math.round(WINDOW_SHARE * longSide));
    const size = { leastPx: LEAST_PX, mostPx: Math.max(MOST_SHARE * longSide, 3 * LEAST_PX) };
    return darkPatches(picture, windowPx, size).flatMap((patch): FoundMarker[] => {
      const rough = patchQuad(patch);
      if (rough === null) return [];
      const quad = sharpenedQuad(picture, rough);
      const code = read(picture, quad);
      if (code === null) return [];
      const corners = fromCorner(quad, code.firstCorner);
      return [{ id: code.id, corners, ...(code.isMirrored && { isMirrored: true }) }];
    });
  };
}

function fromCorner(quad: Quad, first: number): Quad {
  const corner = (place: number): Point<'photo'> => quad[(first + place) % 4];
  return [corner(0), corner(1), corner(2), corner(3)];
}
