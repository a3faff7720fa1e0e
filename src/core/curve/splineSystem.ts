import { cos, type Frame, sin } from '../base/index.ts';
import { type ArcSpline, arcCount, nodesOf } from './arcSpline.ts';
import { endResiduals, endRows, type SplineEnds } from './splineEnds.ts';
import type { SplineFeet } from './splineFeet.ts';
import { type NodeSlopes, slopesOf } from './splineSlopes.ts';

/** The equations of one step: the normal matrix of the distances, bordered by what the ends must keep. */
export interface System {
  readonly matrix: readonly Float64Array[];
  readonly right: Float64Array;
  readonly unknowns: number;
}

/**
 * The equations whose solution moves the spline to least weighted squares. Method: a point's distance changes
 * only with how its arc's first node moves and turns and with the arc's own curvature, so the points of an
 * arc are first summed in these four numbers and the sums then carried to all unknowns, arc by arc.
 */
export function normalSystem<F extends Frame>(
  spline: ArcSpline,
  feet: SplineFeet,
  weights: Float64Array,
  ends: SplineEnds<F>,
): System {
  const unknowns = spline.length;
  const slopes = slopesOf(spline);
  const constraints = endRows(spline, slopes[arcCount(spline)], ends);
  const size = unknowns + constraints.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  const sums = sumsOf(spline, feet, weights);
  const nodes = nodesOf(spline);
  for (let arc = 0; arc < arcCount(spline); arc++) {
    const rows = localRows(slopes[arc], nodes.cosine[arc], nodes.sine[arc], 3 + 2 * arc);
    addArcSums(matrix, right, rows, sums.subarray(arc * SUMS, (arc + 1) * SUMS), 4 + 2 * arc);
  }
  for (let i = 0; i < unknowns; i++) {
    for (let j = 0; j < i; j++) matrix[j][i] = matrix[i][j];
  }
  const missing = endResiduals(spline, ends);
  for (const [index, row] of constraints.entries()) {
    matrix[unknowns + index].set(row);
    for (let i = 0; i < unknowns; i++) matrix[i][unknowns + index] = row[i];
    right[unknowns + index] = missing[index];
  }
  return { matrix, right, unknowns };
}

/** Four slopes of a distance (along, left, turn, curvature): ten products, and four with the distance itself. */
const SUMS = 14;

function sumsOf(spline: ArcSpline, feet: SplineFeet, weights: Float64Array): Float64Array {
  const sums = new Float64Array(arcCount(spline) * SUMS);
  for (let index = 0; index < weights.length; index++) {
    const arc = feet.arc[index];
    const alongMm = feet.alongMm[index];
    const half = (spline[3 + 2 * arc] * alongMm) / 2;
    const sinHalf = sin(half);
    const cosHalf = cos(half);
    const chordMm = half === 0 ? alongMm : (alongMm * sinHalf) / half;
    const along = -2 * sinHalf * cosHalf;
    const left = 1 - 2 * sinHalf * sinHalf;
    const turn = chordMm * cosHalf;
    const bend = (chordMm * chordMm) / 2;
    const weight = weights[index];
    const off = feet.leftMm[index] * weight;
    const at = arc * SUMS;
    sums[at] += weight * along * along;
    sums[at + 1] += weight * left * along;
    sums[at + 2] += weight * left * left;
    sums[at + 3] += weight * turn * along;
    sums[at + 4] += weight * turn * left;
    sums[at + 5] += weight * turn * turn;
    sums[at + 6] += weight * bend * along;
    sums[at + 7] += weight * bend * left;
    sums[at + 8] += weight * bend * turn;
    sums[at + 9] += weight * bend * bend;
    sums[at + 10] += off * along;
    sums[at + 11] += off * left;
    sums[at + 12] += off * turn;
    sums[at + 13] += off * bend;
  }
  return sums;
}

/** The slopes of an arc's first node in the arc's own directions, and of its curvature, which is one of the unknowns. */
function localRows(node: NodeSlopes, cosine: number, sine: number, own: number): readonly Float64Array[] {
  const used = own + 1;
  const along = new Float64Array(used);
  const left = new Float64Array(used);
  const bend = new Float64Array(used);
  for (let index = 0; index < used; index++) {
    along[index] = cosine * node.x[index] + sine * node.y[index];
    left[index] = cosine * node.y[index] - sine * node.x[index];
  }
  bend[own] = 1;
  return [along, left, node.headingRad, bend];
}

function addArcSums(
  matrix: readonly Float64Array[],
  right: Float64Array,
  rows: readonly Float64Array[],
  sums: Float64Array,
  used: number,
): void {
  const [along, left, turn, bend] = rows;
  for (let i = 0; i < used; i++) {
    const [a, l, t, b] = [along[i], left[i], turn[i], bend[i]];
    const byAlong = a * sums[0] + l * sums[1] + t * sums[3] + b * sums[6];
    const byLeft = a * sums[1] + l * sums[2] + t * sums[4] + b * sums[7];
    const byTurn = a * sums[3] + l * sums[4] + t * sums[5] + b * sums[8];
    const byBend = a * sums[6] + l * sums[7] + t * sums[8] + b * sums[9];
    const row = matrix[i];
    for (let j = 0; j <= i; j++) {
      row[j] += byAlong * along[j] + byLeft * left[j] + byTurn * turn[j] + byBend * bend[j];
    }
    right[i] += a * sums[10] + l * sums[11] + t * sums[12] + b * sums[13];
  }
}
