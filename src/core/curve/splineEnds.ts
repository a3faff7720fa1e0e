import type { Frame, Point } from '../base/index.ts';
import { type ArcSpline, arcCount, nodesOf } from './arcSpline.ts';
import { wrapAngle } from './segment.ts';
import type { NodeSlopes } from './splineSlopes.ts';

/** What a spline must keep exactly; what is left out is free. */
export interface SplineEnds<F extends Frame> {
  readonly start?: Point<F>;
  readonly end?: Point<F>;
  readonly startHeadingRad?: number;
  readonly endHeadingRad?: number;
  /** It closes on itself, tangent. */
  readonly closed: boolean;
}

/** The largest departure from what the ends must keep, mm and rad. */
export function endsOff<F extends Frame>(spline: ArcSpline, ends: SplineEnds<F>): number {
  return endResiduals(spline, ends).reduce((most, off) => Math.max(most, Math.abs(off)), 0);
}

/** What is missing at the ends, in the order in which `endRows` gives their slopes. */
export function endResiduals<F extends Frame>(spline: ArcSpline, ends: SplineEnds<F>): readonly number[] {
  const nodes = nodesOf(spline);
  const last = arcCount(spline);
  const [startX, startY, startRad] = spline;
  const [endX, endY, endRad] = [nodes.x[last], nodes.y[last], nodes.headingRad[last]];
  const missing: number[] = [];
  if (ends.start) missing.push(ends.start.x - startX, ends.start.y - startY);
  if (ends.startHeadingRad !== undefined) missing.push(wrapAngle(ends.startHeadingRad - startRad));
  if (ends.closed) missing.push(startX - endX, startY - endY, wrapAngle(startRad - endRad));
  if (ends.end) missing.push(ends.end.x - endX, ends.end.y - endY);
  if (ends.endHeadingRad !== undefined) missing.push(wrapAngle(ends.endHeadingRad - endRad));
  return missing;
}

/** How what the ends must keep changes with each number of the spline, from the slopes of its last node. */
export function endRows<F extends Frame>(
  spline: ArcSpline,
  last: NodeSlopes,
  ends: SplineEnds<F>,
): readonly Float64Array[] {
  const unit = (index: number) => {
    const row = new Float64Array(spline.length);
    row[index] = 1;
    return row;
  };
  const less = (row: Float64Array, index: number) => row.map((value, at) => value - (at === index ? 1 : 0));
  const rows: Float64Array[] = [];
  if (ends.start) rows.push(unit(0), unit(1));
  if (ends.startHeadingRad !== undefined) rows.push(unit(2));
  if (ends.closed) rows.push(less(last.x, 0), less(last.y, 1), less(last.headingRad, 2));
  if (ends.end) rows.push(last.x, last.y);
  if (ends.endHeadingRad !== undefined) rows.push(last.headingRad);
  return rows;
}
