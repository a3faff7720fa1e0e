import type { Frame } from '../../base/index.ts';
import type { EdgeSpot } from './foundEdge.ts';

/** mm. Places farther apart than this, along the edge or straight, are not joined: what lies between was not seen. */
export const LONGEST_LINK_MM = 4;
/** Stations to either side that are searched for the nearest link. */
const WINDOW = 14;
/** Lengths of itself that a link is carried on where the edge beyond it was not seen. */
const CARRIED_ON = 0.5;

/** Nearest place on a half's edge: the signed way from it to the point, along the link's outward normal. */
export interface NearestLink {
  readonly distanceMm: number;
  readonly normalX: number;
  readonly normalY: number;
  /** Where the link's line lies along that normal: another point is its own way along the normal less this outside it. */
  readonly offsetMm: number;
}

/** The seen edge of one half as links between neighbouring spots, ready to be asked for nearest places. */
export interface EdgeLine {
  readonly nearest: (x: number, y: number, alongMm: number) => NearestLink | null;
}

/**
 * @param outwardSign +1 where outward lies right of the way from the lower to the upper end (a treble half, x to
 * the right), -1 where it lies left
 */
export function edgeLine<F extends Frame>(spots: readonly EdgeSpot<F>[], outwardSign: 1 | -1): EdgeLine {
  const links = linksOf(spots);
  const { x: startX, y: startY, dx, dy, square, along } = links;
  return {
    nearest(x, y, alongMm) {
      const middle = indexAt(along, alongMm);
      const last = Math.min(square.length - 1, middle + WINDOW);
      let best = -1;
      let least = Number.POSITIVE_INFINITY;
      for (let i = Math.max(0, middle - WINDOW); i <= last; i++) {
        if (square[i] === 0) continue;
        const offX = x - startX[i];
        const offY = y - startY[i];
        const share = (offX * dx[i] + offY * dy[i]) / square[i];
        if (share < -CARRIED_ON || share > 1 + CARRIED_ON) continue;
        const held = share < 0 ? 0 : share > 1 ? 1 : share;
        const awayX = offX - held * dx[i];
        const awayY = offY - held * dy[i];
        const away = awayX * awayX + awayY * awayY;
        if (away >= least) continue;
        least = away;
        best = i;
      }
      if (best < 0) return null;
      const length = Math.sqrt(square[best]);
      const normalX = (outwardSign * dy[best]) / length;
      const normalY = (-outwardSign * dx[best]) / length;
      return {
        distanceMm: (x - startX[best]) * normalX + (y - startY[best]) * normalY,
        normalX,
        normalY,
        offsetMm: startX[best] * normalX + startY[best] * normalY,
      };
    },
  };
}

/** Links as columns; one whose ends were not both seen has the square 0. */
interface Links {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly square: Float64Array;
  readonly along: Float64Array;
}

function linksOf<F extends Frame>(spots: readonly EdgeSpot<F>[]): Links {
  const count = Math.max(0, spots.length - 1);
  const column = () => new Float64Array(count);
  const links = { x: column(), y: column(), dx: column(), dy: column(), square: column() };
  for (let i = 0; i < count; i++) {
    const [from, to] = [spots[i], spots[i + 1]];
    links.x[i] = from.x;
    links.y[i] = from.y;
    links.dx[i] = to.x - from.x;
    links.dy[i] = to.y - from.y;
    const square = links.dx[i] ** 2 + links.dy[i] ** 2;
    const isNear = to.alongMm - from.alongMm <= LONGEST_LINK_MM && square <= LONGEST_LINK_MM ** 2;
    if (from.seen && to.seen && isNear) links.square[i] = square;
  }
  return { ...links, along: Float64Array.from(spots, (spot) => spot.alongMm) };
}

function indexAt(along: Float64Array, alongMm: number): number {
  let low = 0;
  let high = along.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (along[middle] < alongMm) low = middle + 1;
    else high = middle;
  }
  return low;
}
