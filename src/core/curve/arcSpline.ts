import type { Frame, Point } from '../base/index.ts';
import type { Chain, Vertex } from './chain.ts';

/**
 * Tangent arcs, tangent by construction: a start, a heading, and each arc's signed curvature and length.
 * The numbers stand as one row: x, y, heading, then curvature and length arc by arc.
 */
export type ArcSpline = Float64Array;

export function arcCount(spline: ArcSpline): number {
  return (spline.length - 3) / 2;
}

/** Where each arc starts and heads, and, last, where the spline ends. */
export interface SplineNodes {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly headingRad: Float64Array;
}

export function nodesOf(spline: ArcSpline): SplineNodes {
  const count = arcCount(spline);
  const x = new Float64Array(count + 1);
  const y = new Float64Array(count + 1);
  const headingRad = new Float64Array(count + 1);
  x[0] = spline[0] ?? 0;
  y[0] = spline[1] ?? 0;
  headingRad[0] = spline[2] ?? 0;
  for (let arc = 0; arc < count; arc++) {
    const heading = headingRad[arc] ?? 0;
    const { along, left } = reach(spline[3 + 2 * arc] ?? 0, spline[4 + 2 * arc] ?? 0);
    x[arc + 1] = (x[arc] ?? 0) + along * Math.cos(heading) - left * Math.sin(heading);
    y[arc + 1] = (y[arc] ?? 0) + along * Math.sin(heading) + left * Math.cos(heading);
    headingRad[arc + 1] = heading + (spline[3 + 2 * arc] ?? 0) * (spline[4 + 2 * arc] ?? 0);
  }
  return { x, y, headingRad };
}

/** How far an arc of this curvature and length gets, along its first heading and to its left. */
export function reach(curvature: number, lengthMm: number): { along: number; left: number } {
  const half = (curvature * lengthMm) / 2;
  const chord = half === 0 ? lengthMm : (lengthMm * Math.sin(half)) / half;
  return { along: chord * Math.cos(half), left: chord * Math.sin(half) };
}

/** How `reach` changes with the curvature. */
export function reachByCurvature(curvature: number, lengthMm: number): { along: number; left: number } {
  const turn = curvature * lengthMm;
  const square = lengthMm * lengthMm;
  if (Math.abs(turn) < SERIES_RAD) {
    const t2 = turn * turn;
    return {
      along: -square * turn * (1 / 3 - t2 / 30 + (t2 * t2) / 840),
      left: square * (1 / 2 - t2 / 8 + (t2 * t2) / 144),
    };
  }
  const t2 = turn * turn;
  return {
    along: (square * (turn * Math.cos(turn) - Math.sin(turn))) / t2,
    left: (square * (turn * Math.sin(turn) - 1 + Math.cos(turn))) / t2,
  };
}

/** rad. Below this turn the closed forms cancel and their series are exact to rounding. */
const SERIES_RAD = 0.02;

/** A point's foot on a spline: which arc, how far along it, and how far the point lies to its left. */
export interface SplineFoot {
  arc: number;
  alongMm: number;
  leftMm: number;
}

/** The foot of a point on the arc given, or on one after or before it when the foot lies beyond its ends. */
export function footOn<F extends Frame>(
  spline: ArcSpline,
  nodes: SplineNodes,
  p: Point<F>,
  startArc: number,
  walk: boolean,
): SplineFoot {
  const count = arcCount(spline);
  let foot = footOnArc(spline, nodes, p, startArc);
  if (!walk) return foot;
  let direction = 0;
  for (let arc = startArc; ; ) {
    const lengthMm = spline[4 + 2 * arc] ?? 0;
    const step = foot.alongMm > lengthMm && arc < count - 1 ? 1 : foot.alongMm < 0 && arc > 0 ? -1 : 0;
    if (step === 0 || step === -direction) return foot;
    direction = step;
    arc += step;
    foot = footOnArc(spline, nodes, p, arc);
  }
}

function footOnArc<F extends Frame>(
  spline: ArcSpline,
  nodes: SplineNodes,
  p: Point<F>,
  arc: number,
): SplineFoot {
  const curvature = spline[3 + 2 * arc] ?? 0;
  const heading = nodes.headingRad[arc] ?? 0;
  const x = p.x - (nodes.x[arc] ?? 0);
  const y = p.y - (nodes.y[arc] ?? 0);
  const cos = Math.cos(heading);
  const sin = Math.sin(heading);
  const u = cos * x + sin * y;
  const v = cos * y - sin * x;
  const leftMm = (2 * v - curvature * (u * u + v * v)) / (1 + Math.hypot(1 - curvature * v, curvature * u));
  const turn = Math.atan2(curvature * u, 1 - curvature * v);
  let alongMm = Math.abs(turn) < SERIES_RAD / 1000 ? u / (1 - curvature * v) : turn / curvature;
  const lengthMm = spline[4 + 2 * arc] ?? 0;
  const roundMm = (2 * Math.PI) / Math.abs(curvature);
  if (alongMm < 0 && alongMm + roundMm - lengthMm < -alongMm) alongMm += roundMm;
  return { arc, alongMm, leftMm };
}

/** The spline as an open chain. */
export function splineChain<F extends Frame>(spline: ArcSpline): Chain<F> {
  const nodes = nodesOf(spline);
  const vertices: Vertex<F>[] = [];
  for (let node = 0; node <= arcCount(spline); node++) {
    const turn = (spline[3 + 2 * node] ?? 0) * (spline[4 + 2 * node] ?? 0);
    vertices.push({ x: nodes.x[node] ?? 0, y: nodes.y[node] ?? 0, bulge: Math.tan(turn / 4) });
  }
  return { closed: false, vertices };
}
