import { type Frame, type Point, SETTLED, WELD_MM } from '../base/index.ts';
import { solveSquare } from '../numeric/index.ts';
import {
  type ArcSpline,
  arcCount,
  footOn,
  nodesOf,
  reach,
  reachByCurvature,
  type SplineFoot,
  type SplineNodes,
} from './arcSpline.ts';
import { wrapAngle } from './segment.ts';

/** What a spline must keep exactly; what is left out is free. */
export interface SplineEnds<F extends Frame> {
  readonly start?: Point<F>;
  readonly end?: Point<F>;
  readonly startHeadingRad?: number;
  readonly endHeadingRad?: number;
  /** It closes on itself, tangent. */
  readonly closed: boolean;
}

/** How far points lie from a spline. */
export interface Misfit {
  readonly rmsMm: number;
  readonly maxMm: number;
}

export interface SettledSpline extends Misfit {
  readonly spline: ArcSpline;
  /** Largest departure from what the ends must keep, mm and rad. */
  readonly endsOff: number;
}

/**
 * The spline moved to where the weighted squares of its distances from the points are least and its ends
 * keep what they must. Method: Gauss-Newton with Lagrange multipliers, damped; the feet follow each step.
 */
export function settleSpline<F extends Frame>(
  start: ArcSpline,
  points: readonly Point<F>[],
  ends: SplineEnds<F>,
  weights: Float64Array,
  firstArcs?: Int32Array,
): SettledSpline {
  let spline = start;
  let feet = feetOf(spline, points, firstArcs);
  let merit = meritOf(spline, feet, weights, ends);
  let damping = 0.001;
  for (let round = 0; round < ROUNDS; round++) {
    const system = normalSystem(spline, feet, weights, ends);
    let better = false;
    for (let tries = 0; tries < 6 && !better; tries++) {
      const moved = stepped(spline, system, damping);
      if (moved) {
        // At first each point keeps the arc it was counted to, so that a rough start cannot lead it astray.
        const newFeet = feetOf(moved, points, round < 2 ? firstArcs : undefined);
        const newMerit = meritOf(moved, newFeet, weights, ends);
        if (newMerit <= merit || (round === 2 && firstArcs)) {
          const settled = merit - newMerit <= MERIT_SHARE * merit && round > 3;
          spline = moved;
          feet = newFeet;
          merit = newMerit;
          damping = Math.max(damping / 10, SETTLED);
          if (settled) return closeEnds(spline, points, ends, weights);
          better = true;
          continue;
        }
      }
      damping *= 10;
    }
    if (!better) break;
  }
  return closeEnds(spline, points, ends, weights);
}

const ROUNDS = 40;

/** Share of the merit below which a step no longer counts. */
const MERIT_SHARE = 0.000_1;

/** The feet of points in order, each sought from the arc of the one before. */
export function feetOf<F extends Frame>(
  spline: ArcSpline,
  points: readonly Point<F>[],
  arcs?: Int32Array,
): readonly SplineFoot[] {
  const nodes = nodesOf(spline);
  let arc = 0;
  return points.map((p, index) => {
    const foot = footOn(spline, nodes, p, arcs?.[index] ?? arc, arcs === undefined);
    arc = foot.arc;
    return foot;
  });
}

export function misfitOf(feet: readonly SplineFoot[]): Misfit {
  let square = 0;
  let maxMm = 0;
  for (const { leftMm } of feet) {
    square += leftMm * leftMm;
    maxMm = Math.max(maxMm, Math.abs(leftMm));
  }
  return { rmsMm: Math.sqrt(square / feet.length), maxMm };
}

interface System {
  readonly matrix: Float64Array[];
  readonly right: Float64Array;
  readonly unknowns: number;
}

/** The last steps only bring the ends home; the curve moves as little as the points allow. */
function closeEnds<F extends Frame>(
  start: ArcSpline,
  points: readonly Point<F>[],
  ends: SplineEnds<F>,
  weights: Float64Array,
): SettledSpline {
  let spline = start;
  for (let round = 0; round < 6; round++) {
    if (endsOff(spline, ends) < SETTLED) break;
    const system = normalSystem(spline, feetOf(spline, points), weights, ends);
    system.right.fill(0, 0, system.unknowns);
    const moved = stepped(spline, system, MERIT_SHARE);
    if (!moved || endsOff(moved, ends) >= endsOff(spline, ends)) break;
    spline = moved;
  }
  return { spline, ...misfitOf(feetOf(spline, points)), endsOff: endsOff(spline, ends) };
}

function stepped(spline: ArcSpline, system: System, damping: number): ArcSpline | undefined {
  const { matrix, right, unknowns } = system;
  const damped = matrix.map((row, index) => {
    if (index >= unknowns) return row;
    const copy = Float64Array.from(row);
    copy[index] = (row[index] ?? 0) * (1 + damping) + SETTLED;
    return copy;
  });
  const step = solveSquare(damped, right);
  if (!step) return undefined;
  // No arc loses more than half its length in one step.
  let share = 1;
  for (let arc = 0; arc < arcCount(spline); arc++) {
    const lengthMm = spline[4 + 2 * arc] ?? 0;
    const change = step[4 + 2 * arc] ?? 0;
    if (change < -lengthMm / 2) share = Math.min(share, -lengthMm / 2 / change);
  }
  return spline.map((value, index) => value + share * (step[index] ?? 0));
}

function meritOf<F extends Frame>(
  spline: ArcSpline,
  feet: readonly SplineFoot[],
  weights: Float64Array,
  ends: SplineEnds<F>,
): number {
  let sum = 0;
  for (const [index, { leftMm }] of feet.entries()) sum += (weights[index] ?? 0) * leftMm * leftMm;
  for (let arc = 0; arc < arcCount(spline); arc++) {
    if (!((spline[4 + 2 * arc] ?? 0) > WELD_MM)) return Infinity;
  }
  for (const off of endResiduals(spline, nodesOf(spline), ends)) sum += feet.length * off * off;
  return sum;
}

function endsOff<F extends Frame>(spline: ArcSpline, ends: SplineEnds<F>): number {
  return endResiduals(spline, nodesOf(spline), ends).reduce((most, off) => Math.max(most, Math.abs(off)), 0);
}

/** What is missing at the ends, in the order in which `endRows` gives their slopes. */
function endResiduals<F extends Frame>(spline: ArcSpline, nodes: SplineNodes, ends: SplineEnds<F>): number[] {
  const last = arcCount(spline);
  const [startX = 0, startY = 0, startRad = 0] = spline;
  const [endX, endY, endRad] = [nodes.x[last] ?? 0, nodes.y[last] ?? 0, nodes.headingRad[last] ?? 0];
  const missing: number[] = [];
  if (ends.start) missing.push(ends.start.x - startX, ends.start.y - startY);
  if (ends.startHeadingRad !== undefined) missing.push(wrapAngle(ends.startHeadingRad - startRad));
  if (ends.closed) missing.push(startX - endX, startY - endY, wrapAngle(startRad - endRad));
  if (ends.end) missing.push(ends.end.x - endX, ends.end.y - endY);
  if (ends.endHeadingRad !== undefined) missing.push(wrapAngle(ends.endHeadingRad - endRad));
  return missing;
}

function endRows<F extends Frame>(spline: ArcSpline, slopes: Slopes, ends: SplineEnds<F>): Float64Array[] {
  const unit = (index: number) => {
    const row = new Float64Array(spline.length);
    row[index] = 1;
    return row;
  };
  const last = arcCount(spline) - 1;
  const lengthMm = spline[4 + 2 * last] ?? 0;
  const endX = slopes.row(last, lengthMm, 1, 0, true);
  const endY = slopes.row(last, lengthMm, 0, 1, true);
  const endRad = unit(2);
  for (let arc = 0; arc <= last; arc++) {
    endRad[3 + 2 * arc] = spline[4 + 2 * arc] ?? 0;
    endRad[4 + 2 * arc] = spline[3 + 2 * arc] ?? 0;
  }
  const less = (row: Float64Array, index: number) => row.map((value, at) => value - (at === index ? 1 : 0));
  const rows: Float64Array[] = [];
  if (ends.start) rows.push(unit(0), unit(1));
  if (ends.startHeadingRad !== undefined) rows.push(unit(2));
  if (ends.closed) rows.push(less(endX, 0), less(endY, 1), less(endRad, 2));
  if (ends.end) rows.push(endX, endY);
  if (ends.endHeadingRad !== undefined) rows.push(endRad);
  return rows;
}

function normalSystem<F extends Frame>(
  spline: ArcSpline,
  feet: readonly SplineFoot[],
  weights: Float64Array,
  ends: SplineEnds<F>,
): System {
  const unknowns = spline.length;
  const nodes = nodesOf(spline);
  const slopes = new Slopes(spline, nodes);
  const constraints = endRows(spline, slopes, ends);
  const missing = endResiduals(spline, nodes, ends);
  const size = unknowns + constraints.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  for (const [index, { arc, alongMm, leftMm }] of feet.entries()) {
    const weight = weights[index] ?? 0;
    const heading = (nodes.headingRad[arc] ?? 0) + (spline[3 + 2 * arc] ?? 0) * alongMm;
    const row = slopes.row(arc, alongMm, -Math.sin(heading), Math.cos(heading), false);
    const used = 4 + 2 * arc;
    for (let i = 0; i < used; i++) {
      const scaled = weight * (row[i] ?? 0);
      const target = matrix[i];
      if (!target) continue;
      right[i] = (right[i] ?? 0) + scaled * leftMm;
      for (let j = 0; j <= i; j++) target[j] = (target[j] ?? 0) + scaled * (row[j] ?? 0);
    }
  }
  for (let i = 0; i < unknowns; i++) {
    for (let j = 0; j < i; j++) {
      const upper = matrix[j];
      if (upper) upper[i] = matrix[i]?.[j] ?? 0;
    }
  }
  for (const [index, row] of constraints.entries()) {
    for (let i = 0; i < unknowns; i++) {
      const bottom = matrix[unknowns + index];
      const side = matrix[i];
      if (bottom) bottom[i] = row[i] ?? 0;
      if (side) side[unknowns + index] = row[i] ?? 0;
    }
    right[unknowns + index] = missing[index] ?? 0;
  }
  return { matrix, right, unknowns };
}

/** How points of a spline move, in a direction, with each of its numbers. */
class Slopes {
  readonly #spline: ArcSpline;
  readonly #nodes: SplineNodes;
  readonly #bendX: Float64Array;
  readonly #bendY: Float64Array;
  readonly #row: Float64Array;

  constructor(spline: ArcSpline, nodes: SplineNodes) {
    const count = arcCount(spline);
    this.#spline = spline;
    this.#nodes = nodes;
    this.#row = new Float64Array(spline.length);
    this.#bendX = new Float64Array(count);
    this.#bendY = new Float64Array(count);
    for (let arc = 0; arc < count; arc++) {
      const bend = this.#bend(arc, spline[4 + 2 * arc] ?? 0);
      this.#bendX[arc] = bend.x;
      this.#bendY[arc] = bend.y;
    }
  }

  /** The slopes of direction · C, where C lies `alongMm` into an arc; a row to be used before the next is asked for. */
  row(arc: number, alongMm: number, directionX: number, directionY: number, atEnd: boolean): Float64Array {
    const spline = this.#spline;
    const nodes = this.#nodes;
    const row = atEnd ? new Float64Array(spline.length) : this.#row;
    const heading = nodes.headingRad[arc] ?? 0;
    const { along, left } = reach(spline[3 + 2 * arc] ?? 0, alongMm);
    const x = (nodes.x[arc] ?? 0) + along * Math.cos(heading) - left * Math.sin(heading);
    const y = (nodes.y[arc] ?? 0) + along * Math.sin(heading) + left * Math.cos(heading);
    row[0] = directionX;
    row[1] = directionY;
    row[2] = directionY * (x - (nodes.x[0] ?? 0)) - directionX * (y - (nodes.y[0] ?? 0));
    for (let before = 0; before < arc; before++) {
      const turned =
        directionY * (x - (nodes.x[before + 1] ?? 0)) - directionX * (y - (nodes.y[before + 1] ?? 0));
      const next = nodes.headingRad[before + 1] ?? 0;
      row[3 + 2 * before] =
        directionX * (this.#bendX[before] ?? 0) +
        directionY * (this.#bendY[before] ?? 0) +
        (spline[4 + 2 * before] ?? 0) * turned;
      row[4 + 2 * before] =
        directionX * Math.cos(next) + directionY * Math.sin(next) + (spline[3 + 2 * before] ?? 0) * turned;
    }
    const bend = this.#bend(arc, alongMm);
    row[3 + 2 * arc] = directionX * bend.x + directionY * bend.y;
    if (atEnd) {
      const out = nodes.headingRad[arc + 1] ?? 0;
      row[4 + 2 * arc] = directionX * Math.cos(out) + directionY * Math.sin(out);
    }
    return row;
  }

  #bend(arc: number, alongMm: number): { x: number; y: number } {
    const heading = this.#nodes.headingRad[arc] ?? 0;
    const { along, left } = reachByCurvature(this.#spline[3 + 2 * arc] ?? 0, alongMm);
    return {
      x: along * Math.cos(heading) - left * Math.sin(heading),
      y: along * Math.sin(heading) + left * Math.cos(heading),
    };
  }
}
