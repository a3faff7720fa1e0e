import { atan2, type Frame, type Point } from '../base/index.ts';
import { type ArcSpline, arcCount, nodesOf, type SplineNodes } from './arcSpline.ts';

/** Points as two rows of numbers, mm. */
export interface PointRows {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** The feet of points on a spline: on which arc, how far along it, and how far the point lies to its left. */
export interface SplineFeet {
  readonly arc: Int32Array;
  readonly alongMm: Float64Array;
  readonly leftMm: Float64Array;
}

export function pointRows<F extends Frame>(points: readonly Point<F>[]): PointRows {
  return { x: Float64Array.from(points, (p) => p.x), y: Float64Array.from(points, (p) => p.y) };
}

/**
 * The feet of points in order. Without `arcs` each is sought from the arc of the one before, walking on or back
 * while the foot lies beyond the arc's end; with `arcs` each point keeps the arc it is given.
 */
export function feetOf(spline: ArcSpline, points: PointRows, arcs?: Int32Array): SplineFeet {
  const nodes = nodesOf(spline);
  const count = points.x.length;
  const feet = {
    arc: new Int32Array(count),
    alongMm: new Float64Array(count),
    leftMm: new Float64Array(count),
  };
  const last = arcCount(spline) - 1;
  let arc = 0;
  for (let index = 0; index < count; index++) {
    if (arcs) arc = arcs[index];
    setFoot(feet, index, spline, nodes, points, arc);
    for (let direction = 0; !arcs; ) {
      const alongMm = feet.alongMm[index];
      const step = alongMm > spline[4 + 2 * arc] && arc < last ? 1 : alongMm < 0 && arc > 0 ? -1 : 0;
      if (step === 0 || step === -direction) break;
      direction = step;
      arc += step;
      setFoot(feet, index, spline, nodes, points, arc);
    }
  }
  return feet;
}

function setFoot(
  feet: SplineFeet,
  index: number,
  spline: ArcSpline,
  nodes: SplineNodes,
  points: PointRows,
  arc: number,
): void {
  const curvature = spline[3 + 2 * arc];
  const lengthMm = spline[4 + 2 * arc];
  const x = points.x[index] - nodes.x[arc];
  const y = points.y[index] - nodes.y[arc];
  const u = nodes.cosine[arc] * x + nodes.sine[arc] * y;
  const v = nodes.cosine[arc] * y - nodes.sine[arc] * x;
  const ahead = curvature * u;
  const inward = 1 - curvature * v;
  const turn = Math.abs(ahead) < FLAT_RAD * inward ? 0 : atan2(ahead, inward);
  let alongMm = turn === 0 ? u / inward : turn / curvature;
  if (alongMm < 0) {
    // Almost once round, a foot before the start may as well lie past the end.
    const roundMm = (2 * Math.PI) / Math.abs(curvature);
    if (alongMm + roundMm - lengthMm < -alongMm) alongMm += roundMm;
  }
  feet.arc[index] = arc;
  feet.alongMm[index] = alongMm;
  feet.leftMm[index] =
    (2 * v - curvature * (u * u + v * v)) / (1 + Math.sqrt(inward * inward + ahead * ahead));
}

/** rad. Below this turn the arc's length is its tangent's to rounding. */
const FLAT_RAD = 0.000_02;

/** How far points lie from a spline. */
export interface Misfit {
  readonly rmsMm: number;
  readonly maxMm: number;
}

export function misfitOf({ leftMm }: SplineFeet): Misfit {
  let square = 0;
  let maxMm = 0;
  for (const left of leftMm) {
    square += left * left;
    maxMm = Math.max(maxMm, Math.abs(left));
  }
  return { rmsMm: Math.sqrt(square / leftMm.length), maxMm };
}
