import { cos, hypot, type Point, point, sin } from '../base/index.ts';
import { arcOf, headingOn, type Segment } from '../curve/index.ts';
import { cubicKnots, type SpaceCurve, spaceCurve } from '../surface/index.ts';

/** Newton's steps to a place on a mitre: from the corner, a few depths away at most, the sixth is past a double's last digit. */
const NEWTON_STEPS = 10;

/** The place beside a corner that lies as deep inside both of its sides, mm. */
export function mitrePlace(before: Segment<'body'>, after: Segment<'body'>, depthMm: number): Point<'body'> {
  let { x, y } = after.start;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const [a, b] = [depthIn(before, x, y), depthIn(after, x, y)];
    const turn = a.x * b.y - a.y * b.x;
    const [missA, missB] = [depthMm - a.mm, depthMm - b.mm];
    x += (missA * b.y - missB * a.y) / turn;
    y += (a.x * missB - b.x * missA) / turn;
  }
  return point(x, y);
}

/** How deep a place lies inside a side of an anticlockwise line, mm, and the direction in which it lies deeper. */
function depthIn(side: Segment<'body'>, x: number, y: number) {
  const arc = arcOf(side);
  if (arc) {
    const [fromX, fromY] = [x - arc.centre.x, y - arc.centre.y];
    const away = hypot(fromX, fromY);
    const inward = arc.sweepRad > 0 ? -1 : 1;
    return { mm: inward * (away - arc.radiusMm), x: (inward * fromX) / away, y: (inward * fromY) / away };
  }
  const headingRad = headingOn(side, 0);
  const [inX, inY] = [-sin(headingRad), cos(headingRad)];
  return { mm: (x - side.start.x) * inX + (y - side.start.y) * inY, x: inX, y: inY };
}

/** rad of the round between two knots of the curve over a mitre: met there to less than a ten-thousandth of a millimetre. */
const KNOT_RAD = Math.PI / 24;

/** A round of the edge: how deep it goes inside the line, and from what height it goes up or down, 1 or −1, so far as well. */
export interface EdgeRound {
  readonly radiusMm: number;
  readonly wallMm: number;
  readonly way: 1 | -1;
}

/** The curve in which the rounds over both sides of a corner meet, from the wall to the level place inside it, or back. */
export function mitreCurve(
  before: Segment<'body'>,
  after: Segment<'body'>,
  { radiusMm, wallMm, way }: EdgeRound,
): SpaceCurve {
  return spaceCurve(cubicKnots([0, Math.PI / 2], KNOT_RAD), (at) => {
    // A round below is run along from its foot up, as a round above is from the wall.
    const turnRad = way === 1 ? at : Math.PI / 2 - at;
    const { x, y } = mitrePlace(before, after, radiusMm * (1 - cos(turnRad)));
    return [x, y, wallMm + way * radiusMm * sin(turnRad)];
  });
}
