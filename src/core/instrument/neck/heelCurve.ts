import { accept, type Checked, type Point, refuse } from '../../base/index.ts';
import { arcOf, biarc, type Chain, segments } from '../../curve/index.ts';

/** Where the heel begins or ends, and which way it runs there. */
export interface HeelEnd {
  readonly at: Point<'section'>;
  readonly headingRad: number;
}

/** The heel of a neck seen from the side: two tangent arcs from the back of the neck to the tip of the button. */
export interface HeelCurve {
  readonly chain: Chain<'section'>;
  readonly upperRadiusMm: number;
  readonly lowerRadiusMm: number;
}

/** No unit. How far the tangents of the upper arc reach over those of the lower one: the hollow lies high, in the hand. Chosen by us. */
const UPPER_TO_LOWER = 1.25;

/** The heel between its ends. Fault: `neck.heel` where no two arcs that both bend down join them. */
export function heelCurve(from: HeelEnd, to: HeelEnd): Checked<HeelCurve> {
  const chain = biarc(from.at, from.headingRad, to.at, to.headingRad, UPPER_TO_LOWER);
  const [upper, lower] = segments(chain).map(arcOf);
  if (upper && lower && upper.sweepRad < 0 && lower.sweepRad < 0)
    return accept({ chain, upperRadiusMm: upper.radiusMm, lowerRadiusMm: lower.radiusMm });
  const [along, high] = [to.at.x - from.at.x, from.at.y - to.at.y];
  return refuse({
    code: 'neck.heel',
    at: 'heelStart',
    found: `a heel that begins ${along.toFixed(1)} mm before the tip of the button and is ${high.toFixed(1)} mm high`,
    need: 'room for a hollow curve from the back of the neck down to the button',
    remedy: 'let the heel begin further from the body, or make the button shorter',
  });
}
