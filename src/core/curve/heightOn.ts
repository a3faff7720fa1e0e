import type { Frame } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { arcOf, type Segment, segments } from './segment.ts';

/**
 * Height of an open line that runs rightward without turning back, at a place across; beyond its ends its first or last arc
 * is carried on. NaN where that does not reach.
 */
export function heightOn<F extends Frame>(chain: Chain<F>, x: number): number {
  const all = segments(chain);
  const segment = all.findLast(({ start }) => start.x <= x) ?? all[0];
  return segment ? heightOnSegment(segment, x) : (chain.vertices[0]?.y ?? Number.NaN);
}

function heightOnSegment<F extends Frame>(segment: Segment<F>, x: number): number {
  const { start, end, bulge } = segment;
  const arc = arcOf(segment);
  if (!arc) return start.y + ((end.y - start.y) * (x - start.x)) / (end.x - start.x);
  // Running rightward an arc that turns right lies over its centre.
  return arc.centre.y - Math.sign(bulge) * Math.sqrt(arc.radiusMm ** 2 - (x - arc.centre.x) ** 2);
}
