import { distanceBetween, letGo, point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { FoundMarker, MarkerFinder } from './markerFinder.ts';
import { shrunkGrayOf } from './shrunkGray.ts';

/** px. Long side of the picture in which codes are looked for first. */
const SEARCH_SIZE_PX = 1700;
/** With fewer codes than this, or smaller ones, the search is repeated in a larger picture. */
const ENOUGH_MARKERS = 24;
const LARGE_ENOUGH_PX = 13;

/** All codes in the photograph, corners in its own pixels, found in it shrunk as far as they can be read. */
export function searchMarkers(picture: Picture, finder: MarkerFinder): readonly FoundMarker[] {
  const longSide = Math.max(picture.widthPx, picture.heightPx);
  let best: readonly FoundMarker[] = [];
  for (let times = Math.max(1, Math.round(longSide / SEARCH_SIZE_PX)); ; times = Math.ceil(times / 2)) {
    const gray = shrunkGrayOf(picture, times);
    const found = finder(gray).map((marker) => enlargedMarker(marker, times));
    letGo(gray.data);
    if (found.length > best.length) best = found;
    if (times === 1 || (best.length >= ENOUGH_MARKERS && sizePx(best) >= LARGE_ENOUGH_PX * times))
      return best;
  }
}

/** The size that a tenth of the codes stay below. */
function sizePx(markers: readonly FoundMarker[]): number {
  const sizes = markers
    .map(({ corners }) => distanceBetween(corners[0], corners[2]) / Math.SQRT2)
    .sort((a, b) => a - b);
  return sizes[Math.floor(sizes.length / 10)] ?? 0;
}

function enlargedMarker({ corners, ...rest }: FoundMarker, times: number): FoundMarker {
  const large = ({ x, y }: { x: number; y: number }) =>
    point<'photo'>((x + 0.5) * times - 0.5, (y + 0.5) * times - 0.5);
  return { ...rest, corners: [large(corners[0]), large(corners[1]), large(corners[2]), large(corners[3])] };
}
