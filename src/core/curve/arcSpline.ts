import { cos, type Frame, sin, tan } from '../base/index.ts';
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
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

export function nodesOf(spline: ArcSpline): SplineNodes {
  const count = arcCount(spline);
  const row = () => new Float64Array(count + 1);
  const nodes = { x: row(), y: row(), headingRad: row(), cosine: row(), sine: row() };
  nodes.x[0] = spline[0];
  nodes.y[0] = spline[1];
  nodes.headingRad[0] = spline[2];
  for (let arc = 0; arc <= count; arc++) {
    const cosine = cos(nodes.headingRad[arc]);
    const sine = sin(nodes.headingRad[arc]);
    nodes.cosine[arc] = cosine;
    nodes.sine[arc] = sine;
    if (arc === count) break;
    const { along, left } = reach(spline[3 + 2 * arc], spline[4 + 2 * arc]);
    nodes.x[arc + 1] = nodes.x[arc] + along * cosine - left * sine;
    nodes.y[arc + 1] = nodes.y[arc] + along * sine + left * cosine;
    nodes.headingRad[arc + 1] = nodes.headingRad[arc] + spline[3 + 2 * arc] * spline[4 + 2 * arc];
  }
  return nodes;
}

/** How far an arc of this curvature and length gets, along its first heading and to its left. */
function reach(curvature: number, lengthMm: number): { along: number; left: number } {
  const half = (curvature * lengthMm) / 2;
  const chord = half === 0 ? lengthMm : (lengthMm * sin(half)) / half;
  return { along: chord * cos(half), left: chord * sin(half) };
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
    along: (square * (turn * cos(turn) - sin(turn))) / t2,
    left: (square * (turn * sin(turn) - 1 + cos(turn))) / t2,
  };
}

/** rad. Below this turn the closed forms cancel and their series are exact to rounding. */
const SERIES_RAD = 0.02;

/** The spline as an open chain. */
export function splineChain<F extends Frame>(spline: ArcSpline): Chain<F> {
  const nodes = nodesOf(spline);
  const vertices: Vertex<F>[] = [];
  for (let node = 0; node <= arcCount(spline); node++) {
    const turn = (spline[3 + 2 * node] ?? 0) * (spline[4 + 2 * node] ?? 0);
    vertices.push({ x: nodes.x[node] ?? 0, y: nodes.y[node] ?? 0, bulge: tan(turn / 4) });
  }
  return { closed: false, vertices };
}
