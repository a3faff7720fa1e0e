import { cos, type Frame, hypot, type Point, sin } from '../../base/index.ts';
import { axisPlusMinusAt, type MirrorAxis } from './mirrorAxis.ts';

/** Where the joint lies against the mirror axis of the outline, with a half interval (k = 2) that counts both. */
export interface JointOffAxis {
  /** mm to the right of the axis, looking from the lower to the upper end. */
  readonly lowerMm: number;
  readonly upperMm: number;
  readonly plusMinusMm: number;
}

/** @param plusMinusMm half intervals of the joint's own ends */
export function jointOffAxis<F extends Frame>(
  joint: { readonly lower: Point<F>; readonly upper: Point<F> },
  plusMinusMm: { readonly lower: number; readonly upper: number },
  axis: MirrorAxis<F>,
): JointOffAxis {
  const [c, s] = [cos(axis.headingRad), sin(axis.headingRad)];
  const aside = ({ x, y }: Point<F>): number => s * (x - axis.through.x) - c * (y - axis.through.y);
  const along = ({ x, y }: Point<F>): number => c * (x - axis.through.x) + s * (y - axis.through.y);
  const axisMm = [joint.lower, joint.upper].map((end) => axisPlusMinusAt(axis, along(end)));
  return {
    lowerMm: aside(joint.lower),
    upperMm: aside(joint.upper),
    plusMinusMm: Math.max(hypot(axisMm[0], plusMinusMm.lower), hypot(axisMm[1], plusMinusMm.upper)),
  };
}
