import { accept, type Checked, type Point, refuse } from '../../base/index.ts';
import { bulgeOfSweep, type Chain, wrapAngle } from '../../curve/index.ts';

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

/**
 * No unit. How far the lower arc's tangent reaches over the upper one's: below 1, so that the tighter arc lies in the hand.
 * Chosen by us for a heel that runs down steeply to the button.
 */
const LOWER_TO_UPPER = 0.8;

/**
 * Two arcs that leave one end and reach the other tangent to both and to each other.
 *
 * Method: the two tangents from the ends are equally long to where they meet the joint's, with the lower so many times the
 * upper; that length is the positive root of a quadratic. Fault: `neck.heel` where no such arcs turn one way.
 */
export function heelCurve(from: HeelEnd, to: HeelEnd): Checked<HeelCurve> {
  const [u, v] = [from, to].map(
    ({ headingRad }) => [Math.cos(headingRad), Math.sin(headingRad)] as const,
  ) as [readonly [number, number], readonly [number, number]];
  const span = [to.at.x - from.at.x, to.at.y - from.at.y] as const;
  const k = LOWER_TO_UPPER;
  const a = 2 * k * (u[0] * v[0] + u[1] * v[1] - 1);
  const b = -2 * (span[0] * (u[0] + k * v[0]) + span[1] * (u[1] + k * v[1]));
  const c = span[0] ** 2 + span[1] ** 2;
  const tangentMm = (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  const joint = {
    x: (k * (from.at.x + tangentMm * u[0]) + (to.at.x - k * tangentMm * v[0])) / (1 + k),
    y: (k * (from.at.y + tangentMm * u[1]) + (to.at.y - k * tangentMm * v[1])) / (1 + k),
  };
  const upper = arcFrom(from.at, from.headingRad, joint);
  const lower = arcFrom(joint, from.headingRad + upper.sweepRad, to.at);
  if (!(tangentMm > 0 && upper.sweepRad < 0 && lower.sweepRad < 0))
    return refuse({
      code: 'neck.heel',
      at: 'heelStart',
      found: `a heel that begins ${Math.abs(span[0]).toFixed(1)} mm before the tip of the button and is ${Math.abs(span[1]).toFixed(1)} mm high`,
      need: 'room for a hollow curve from the back of the neck down to the button',
      remedy: 'let the heel begin further from the body, or make the button shorter',
    });
  return accept({
    chain: {
      closed: false,
      vertices: [
        { ...from.at, bulge: bulgeOfSweep(upper.sweepRad) },
        { ...joint, bulge: bulgeOfSweep(lower.sweepRad) },
        { ...to.at, bulge: 0 },
      ],
    },
    upperRadiusMm: upper.radiusMm,
    lowerRadiusMm: lower.radiusMm,
  });
}

/** The arc from a place with a heading to another place. */
function arcFrom(at: Point<'section'>, headingRad: number, to: Point<'section'>) {
  const chordRad = Math.atan2(to.y - at.y, to.x - at.x);
  const sweepRad = 2 * wrapAngle(chordRad - headingRad);
  return {
    sweepRad,
    radiusMm: Math.hypot(to.x - at.x, to.y - at.y) / (2 * Math.abs(Math.sin(sweepRad / 2))),
  };
}
