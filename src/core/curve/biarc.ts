import { atan2, cos, type Frame, type Point, sin, tan } from '../base/index.ts';
import type { Chain } from './chain.ts';
import { wrapAngle } from './segment.ts';

/**
 * Two arcs that leave `from` in one heading, arrive at `to` in another and touch each other smoothly.
 *
 * @param ratio how far the tangents of the first arc reach over those of the second; 1 when left out
 * Source of the construction: K. M. Bolton, Biarc curves, 1975 (from memory); the joint lies where the two tangents meet.
 */
export function biarc<F extends Frame>(
  from: Point<F>,
  fromHeadingRad: number,
  to: Point<F>,
  toHeadingRad: number,
  ratio = 1,
): Chain<F> {
  const [ux, uy] = [cos(fromHeadingRad), sin(fromHeadingRad)];
  const [wx, wy] = [cos(toHeadingRad), sin(toHeadingRad)];
  const [vx, vy] = [to.x - from.x, to.y - from.y];
  // |v - r d u - d w| = (1 + r) d, a quadratic in the second tangent's length d.
  const square = 2 * ratio * (1 - (ux * wx + uy * wy));
  const linear = vx * (ratio * ux + wx) + vy * (ratio * uy + wy);
  const constant = vx * vx + vy * vy;
  const root = Math.sqrt(linear * linear + square * constant);
  // Written so that neither parallel tangents nor a long way cancel out.
  const second = linear >= 0 ? constant / (linear + root) : (root - linear) / square;
  const first = ratio * second;
  const share = ratio / (1 + ratio);
  const turnFrom = { x: from.x + first * ux, y: from.y + first * uy };
  const turnTo = { x: to.x - second * wx, y: to.y - second * wy };
  const joint = {
    x: turnFrom.x + share * (turnTo.x - turnFrom.x),
    y: turnFrom.y + share * (turnTo.y - turnFrom.y),
  };
  const jointHeading = atan2(turnTo.y - turnFrom.y, turnTo.x - turnFrom.x);
  return {
    closed: false,
    vertices: [
      { x: from.x, y: from.y, bulge: bulgeLeaving(from, fromHeadingRad, joint) },
      { ...joint, bulge: bulgeLeaving(joint, jointHeading, to) },
      { x: to.x, y: to.y, bulge: 0 },
    ],
  };
}

/** The bulge of the arc that leaves a point in a heading and passes through another. */
export function bulgeLeaving<F extends Frame>(from: Point<F>, headingRad: number, to: Point<F>): number {
  return tan(wrapAngle(atan2(to.y - from.y, to.x - from.x) - headingRad) / 2);
}
