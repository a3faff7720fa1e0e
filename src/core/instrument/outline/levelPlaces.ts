import { type Point, TANGENT_RAD } from '../../base/index.ts';
import { arcOf, type Chain, segments } from '../../curve/index.ts';

/**
 * The places of a chain where it runs parallel to the centre line: where it can be widest or narrowest.
 *
 * Exact on arcs (the centre moved sideways by the radius); the middle of a straight piece that is upright.
 */
export function levelPlaces(chain: Chain<'body'>): readonly Point<'body'>[] {
  return segments(chain).flatMap((segment) => {
    const arc = arcOf(segment);
    if (arc === null)
      return segment.start.x === segment.end.x
        ? [{ x: segment.start.x, y: (segment.start.y + segment.end.y) / 2 }]
        : [];
    return [0, Math.PI]
      .filter((angleRad) => sweepHolds(arc.startAngleRad, arc.sweepRad, angleRad))
      .map((angleRad) => ({
        x: arc.centre.x + (angleRad === 0 ? arc.radiusMm : -arc.radiusMm),
        y: arc.centre.y,
      }));
  });
}

/** Whether the direction `angleRad` lies on an arc, its ends included, so that a place on a joint is never lost. */
function sweepHolds(startAngleRad: number, sweepRad: number, angleRad: number): boolean {
  const turn = 2 * Math.PI;
  const ahead = Math.sign(sweepRad) * (angleRad - startAngleRad);
  const along = ((ahead % turn) + turn) % turn;
  return along <= Math.abs(sweepRad) + TANGENT_RAD || along >= turn - TANGENT_RAD;
}
