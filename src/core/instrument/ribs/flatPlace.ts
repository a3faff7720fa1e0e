import type { Point } from '../../base/index.ts';
import {
  arcOf,
  type Chain,
  headingOn,
  nearestOn,
  segmentLength,
  segments,
  type Vertex,
} from '../../curve/index.ts';

/** Where a place of bent wood comes to lie when the wood is laid flat. */
export interface FlatPlace {
  /** Along the middle of the thickness, from where the outer face begins; below 0 before it, above its length beyond it. */
  readonly alongMm: number;
  /** From the outer face inward. */
  readonly insideMm: number;
}

/** mm. Wood that runs straight on beyond both ends of its face; more than any end is trimmed by. */
const BEYOND_MM = 60;

/** Where a place in the wood behind an outer face lies when the wood is laid flat; beyond its ends the wood is straight. */
export function flatPlace(outerFace: Chain<'body'>, thicknessMm: number, at: Point<'body'>): FlatPlace {
  const face = prolonged(outerFace);
  const foot = nearestOn(face, at);
  let alongMm = -BEYOND_MM;
  for (const [index, segment] of segments(face).entries()) {
    const arc = arcOf(segment);
    const faceMm = segmentLength(segment);
    const lengthMm = arc === null ? faceMm : faceMm - (arc.sweepRad * thicknessMm) / 2;
    if (index === foot.segment)
      return { alongMm: alongMm + foot.fraction * lengthMm, insideMm: foot.distanceMm };
    alongMm += lengthMm;
  }
  return { alongMm, insideMm: foot.distanceMm };
}

/** The line with a straight piece along its tangent before its start and beyond its end. */
function prolonged(line: Chain<'body'>): Chain<'body'> {
  const all = segments(line);
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return line;
  const [inRad, outRad] = [headingOn(first, 0), headingOn(last, 1)];
  const straight = (at: Point<'body'>, headingRad: number, mm: number): Vertex<'body'> => ({
    x: at.x + mm * Math.cos(headingRad),
    y: at.y + mm * Math.sin(headingRad),
    bulge: 0,
  });
  return {
    closed: false,
    vertices: [
      straight(first.start, inRad, -BEYOND_MM),
      ...line.vertices,
      straight(last.end, outRad, BEYOND_MM),
    ],
  };
}
