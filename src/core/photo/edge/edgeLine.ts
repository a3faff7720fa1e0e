import type { Frame } from '../../base/index.ts';
import type { EdgeSpot } from './foundEdge.ts';

/** mm. Spots farther apart than this along the edge are not joined: what lies between was not seen. */
const LONGEST_LINK_MM = 4;
/** Stations to either side that are searched for the nearest link. */
const WINDOW = 14;

/** Nearest place on a half's edge: the signed way from it to the point, along the link's outward normal. */
export interface NearestLink {
  readonly distanceMm: number;
  readonly normalX: number;
  readonly normalY: number;
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
  return {
    nearest(x, y, alongMm) {
      const middle = indexAt(spots, alongMm);
      let best: NearestLink | null = null;
      let least = Number.POSITIVE_INFINITY;
      const last = Math.min(spots.length - 2, middle + WINDOW);
      for (let i = Math.max(0, middle - WINDOW); i <= last; i++) {
        const a = spots[i];
        const b = spots[i + 1];
        if (!a.seen || !b.seen || b.alongMm - a.alongMm > LONGEST_LINK_MM) continue;
        const dx = b.x - a.x;
        const dy = b.y - a.y;
        const square = dx * dx + dy * dy;
        if (square === 0) continue;
        const share = ((x - a.x) * dx + (y - a.y) * dy) / square;
        if (share < -0.5 || share > 1.5) continue;
        const held = Math.min(1, Math.max(0, share));
        const ex = x - a.x - held * dx;
        const ey = y - a.y - held * dy;
        const away = ex * ex + ey * ey;
        if (away >= least) continue;
        least = away;
        const length = Math.sqrt(square);
        const normalX = (outwardSign * dy) / length;
        const normalY = (-outwardSign * dx) / length;
        best = { distanceMm: (x - a.x) * normalX + (y - a.y) * normalY, normalX, normalY };
      }
      return best;
    },
  };
}

function indexAt<F extends Frame>(spots: readonly EdgeSpot<F>[], alongMm: number): number {
  let low = 0;
  let high = spots.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (spots[middle].alongMm < alongMm) low = middle + 1;
    else high = middle;
  }
  return low;
}
