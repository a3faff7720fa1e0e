import { hypot, type Point, point } from '../../base/index.ts';
import type { Mask } from '../picture/largestPiece.ts';

/** The way through a mask between the two of its pixels that lie farthest apart along it; empty for an empty mask. */
export function farthestPath(mask: Mask): readonly Point<'photo'>[] {
  const start = mask.inside.indexOf(1);
  if (start < 0) return [];
  const one = spread(mask, start).last;
  return wayBack(mask, spread(mask, one));
}

/** The shortest way through a mask between two of its pixels; empty where there is none. */
export function pathBetween(mask: Mask, from: number, to: number): readonly Point<'photo'>[] {
  if (from < 0 || to < 0) return [];
  const reached = spread(mask, from);
  return reached.cameFrom[to] < 0 ? [] : wayBack(mask, { ...reached, last: to });
}

/** The pixel of a mask nearest to a place, or −1. */
export function nearestDark({ widthPx, inside }: Mask, to: Point<'photo'>): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < inside.length; i++) {
    if (!inside[i]) continue;
    const away = hypot((i % widthPx) - to.x, Math.floor(i / widthPx) - to.y);
    if (away < least) [least, best] = [away, i];
  }
  return best;
}

interface Reached {
  /** For each pixel the one that it was reached from; itself for the start, −1 where never reached. */
  readonly cameFrom: Int32Array;
  readonly last: number;
}

/** Breadth first, by sides before corners. */
function spread({ widthPx, inside }: Mask, start: number): Reached {
  const cameFrom = new Int32Array(inside.length).fill(-1);
  cameFrom[start] = start;
  const queue = [start];
  for (let head = 0; head < queue.length; head++) {
    const at = queue[head];
    const column = at % widthPx;
    for (const row of [0, -widthPx, widthPx])
      for (const step of [0, -1, 1]) {
        const next = at + row + step;
        if (column + step < 0 || column + step >= widthPx || next < 0 || next >= inside.length) continue;
        if (!inside[next] || cameFrom[next] >= 0) continue;
        cameFrom[next] = at;
        queue.push(next);
      }
  }
  return { cameFrom, last: queue[queue.length - 1] };
}

function wayBack({ widthPx }: Mask, { cameFrom, last }: Reached): readonly Point<'photo'>[] {
  const path: Point<'photo'>[] = [];
  for (let at = last; ; at = cameFrom[at]) {
    path.push(point(at % widthPx, Math.floor(at / widthPx)));
    if (cameFrom[at] === at) return path;
  }
}
