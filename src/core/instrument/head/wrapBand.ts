import { type Point, point } from '../../base/index.ts';
import { type Chain, chainThrough, fitArcs } from '../../curve/index.ts';
import { type HeadWidths, widthAlong } from './headWidths.ts';

/** mm. Step along the head at which the edge is taken, and how closely arcs follow it. */
const STEP_MM = 1.5;
const FIT_MM = 0.01;

/**
 * One edge of the head laid flat, from the tip of the chin over the top to the throat: along the line in its middle, and half
 * the width there. Bent round the side view it lies on the head's edge.
 */
export function wrapEdge(widths: HeadWidths): Chain<'section'> {
  return edgeOf(widths, 0, widths.bottomMm);
}

/** The edge between two places along the head, in arcs. */
function edgeOf(widths: HeadWidths, fromMm: number, toMm: number): Chain<'section'> {
  const count = Math.ceil((toMm - fromMm) / STEP_MM);
  const points = Array.from({ length: count + 1 }, (_, index): Point<'section'> => {
    const alongMm = fromMm + ((toMm - fromMm) * index) / count;
    return point(alongMm, widthAlong(widths, alongMm) / 2);
  });
  const fitted = fitArcs(points, { toleranceMm: FIT_MM });
  return fitted.ok ? fitted.value.chain : chainThrough(points, false);
}
