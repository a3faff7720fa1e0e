import { atan2, cos, distanceBetween, type Point, point, sin, TANGENT_RAD, tan } from '../../base/index.ts';
import { biarc, type Chain, type Vertex } from '../../curve/index.ts';

/**
 * One end of a sound hole, drafted as the upper one of a treble hole: x away from the centre line, y toward the end. The lower
 * end is drafted the same way, turned by half a turn. Lengths in mm.
 */
export interface HoleEndSizes {
  readonly eye: Point<'section'>;
  readonly eyeRadiusMm: number;
  /** The hook just reaches this level. */
  readonly topMm: number;
  readonly shoulderRadiusMm: number;
  readonly hookFromRad: number;
  readonly eyeFromRad: number;
  readonly tipRad: number;
  readonly taperRad: number;
  readonly tipGapMm: number;
  readonly wingShare: number;
  readonly wingAtEyeRad: number;
  /** Where the edge that becomes the hook turns over, and its heading there, going toward this end. */
  readonly outer: HoleTurn;
  /** Where the edge that becomes the wing turns over, going toward this end. */
  readonly inner: HoleTurn;
}

export interface HoleTurn {
  readonly at: Point<'section'>;
  readonly headingRad: number;
}

/** One end, drafted: arcs from the outer turning point round the eye to the corner, the wing, its edge to the inner one. */
export interface HoleEnd {
  /** Open, from the outer turning point to the inner one, anticlockwise round the opening. */
  readonly chain: Chain<'section'>;
  readonly stemRadiusMm: number;
  readonly stemCentre: Point<'section'>;
  readonly hookRadiusMm: number;
  readonly hookCentre: Point<'section'>;
  /** Where the hook runs into the eye. */
  readonly tip: Point<'section'>;
  readonly eyeCorner: Point<'section'>;
  readonly wingEndMm: number;
}

/** Why an end cannot be drafted. */
export type HoleEndTrouble = 'stem' | 'hook' | 'directions' | 'eye';

const along = (angleRad: number, mm: number, from: Point<'section'> = ORIGIN): Point<'section'> =>
  point(from.x + mm * cos(angleRad), from.y + mm * sin(angleRad));
const ORIGIN = point<'section'>(0, 0);
const FULL_TURN_RAD = 2 * Math.PI;

/**
 * An end in closed form. The hook touches the eye's circle from outside where it runs into it and just reaches the top; the
 * shoulder touches the hook from outside; the stem's edge leaves its turning point in its heading and touches the shoulder:
 * its radius is (r² − m·m) / (2 (n·m + r)), with n the left normal there and m from the shoulder's middle to the point. All
 * turn left with falling radii. The wing's edge is a biarc to the tip, its end a straight line to the eye.
 */
export function holeEnd(sizes: HoleEndSizes): HoleEnd | HoleEndTrouble {
  const { eye, eyeRadiusMm, topMm, shoulderRadiusMm, hookFromRad, eyeFromRad, outer, inner } = sizes;
  if (!(hookFromRad < Math.PI / 2 && eyeFromRad > Math.PI / 2)) return 'directions';
  const sine = sin(eyeFromRad);
  const hookRadiusMm = (topMm - eye.y - eyeRadiusMm * sine) / (1 - sine);
  if (!(hookRadiusMm > eyeRadiusMm)) return 'eye';
  if (!(shoulderRadiusMm > hookRadiusMm)) return 'hook';
  const hookCentre = along(eyeFromRad, -(hookRadiusMm - eyeRadiusMm), eye);
  const shoulderCentre = along(hookFromRad, -(shoulderRadiusMm - hookRadiusMm), hookCentre);
  const [nx, ny] = [-sin(outer.headingRad), cos(outer.headingRad)];
  const [mx, my] = [outer.at.x - shoulderCentre.x, outer.at.y - shoulderCentre.y];
  const stemRadiusMm =
    (shoulderRadiusMm ** 2 - mx * mx - my * my) / (2 * (nx * mx + ny * my + shoulderRadiusMm));
  if (!(stemRadiusMm > shoulderRadiusMm)) return 'stem';
  const stemCentre = point<'section'>(outer.at.x + stemRadiusMm * nx, outer.at.y + stemRadiusMm * ny);
  const startRad = atan2(outer.at.y - stemCentre.y, outer.at.x - stemCentre.x);
  const shoulderRad = atan2(shoulderCentre.y - stemCentre.y, shoulderCentre.x - stemCentre.x);
  // The shoulder must lie ahead on the stem's edge, and before the hook.
  if (!(shoulderRad - startRad > TANGENT_RAD && hookFromRad - shoulderRad > TANGENT_RAD)) return 'stem';
  const eyeCorner = along(sizes.wingAtEyeRad, eyeRadiusMm, eye);
  const tipAtRad = hookFromRad + sizes.tipRad;
  const tip = along(tipAtRad, hookRadiusMm - sizes.tipGapMm, hookCentre);
  const arc = (at: Point<'section'>, sweepRad: number): Vertex<'section'> => ({
    x: at.x,
    y: at.y,
    bulge: tan(sweepRad / 4),
  });
  const edge = biarc(
    inner.at,
    inner.headingRad,
    tip,
    tipAtRad + Math.PI / 2 + sizes.taperRad,
    1 / sizes.wingShare,
  );
  const [from, joint] = edge.vertices;
  if (!from || !joint) return 'stem';
  return {
    chain: {
      closed: false,
      vertices: [
        arc(outer.at, shoulderRad - startRad),
        arc(along(shoulderRad, stemRadiusMm, stemCentre), hookFromRad - shoulderRad),
        arc(along(hookFromRad, hookRadiusMm, hookCentre), eyeFromRad - hookFromRad),
        arc(along(eyeFromRad, eyeRadiusMm, eye), sizes.wingAtEyeRad + FULL_TURN_RAD - eyeFromRad),
        { x: eyeCorner.x, y: eyeCorner.y, bulge: 0 },
        { x: tip.x, y: tip.y, bulge: -joint.bulge },
        { x: joint.x, y: joint.y, bulge: -from.bulge },
        { x: inner.at.x, y: inner.at.y, bulge: 0 },
      ],
    },
    stemRadiusMm,
    stemCentre,
    hookRadiusMm,
    hookCentre,
    tip,
    eyeCorner,
    wingEndMm: distanceBetween(tip, eyeCorner),
  };
}
