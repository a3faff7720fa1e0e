import { cos, type Frame, hypot, type Point, point, sin } from '../../base/index.ts';
import type { HoleEye, HoleState, SoundHole } from './soundHoleTrace.ts';

/** How high a sound hole lies, and how well that is known. */
export interface HoleHeight {
  readonly heightMm: number;
  readonly plusMinusMm: number;
}

export interface PlacedPoint<F extends Frame> extends Point<F> {
  readonly state: HoleState;
}

export interface PlacedEye<F extends Frame> {
  readonly centre: Point<F>;
  readonly diameterMm: number;
}

/** A sound hole in millimetres, seen flat at one height. */
export interface PlacedSoundHole<F extends Frame> {
  readonly side: 'bass' | 'treble';
  readonly contour: readonly PlacedPoint<F>[];
  readonly upperEye: PlacedEye<F> | null;
  readonly lowerEye: PlacedEye<F> | null;
  readonly innerNick: Point<F> | null;
  readonly outerNick: Point<F> | null;
  readonly height: HoleHeight;
  /** What the height's own ± does: the farthest that any place moves, and how much the hole grows or shrinks. */
  readonly heightEffect: { readonly movesMm: number; readonly sizeShare: number };
}

/** A violin's holes lie about 5 mm above the edge of the top, 2 to 8 (common practice, from memory); larger bodies in proportion. */
const [RISE_SHARE, RISE_SPREAD_SHARE] = [5 / 355, 3 / 355];

/** The usual height of a sound hole above the scene, from the edge's height and the body's length. */
export function usualHoleHeight(edgeHeightMm: number, bodyLengthMm: number): HoleHeight {
  return {
    heightMm: edgeHeightMm + RISE_SHARE * bodyLengthMm,
    plusMinusMm: RISE_SPREAD_SHARE * bodyLengthMm,
  };
}

/**
 * The hole carried to millimetres at the height given. `toFrame` says where a place of the photograph lies at a
 * height, such as a view at that height followed by the way to the body.
 */
export function soundHoleOnPlane<F extends Frame>(
  hole: SoundHole,
  toFrame: (at: Point<'photo'>, heightMm: number) => Point<F>,
  height: HoleHeight,
): PlacedSoundHole<F> {
  const { heightMm, plusMinusMm } = height;
  const at = (place: Point<'photo'>): Point<F> => toFrame(place, heightMm);
  const contour = hole.contour.map((place): PlacedPoint<F> => {
    const { x, y } = at(place);
    return { ...point<F>(x, y), state: place.state };
  });
  const higher = hole.contour.map((place) => toFrame(place, heightMm + plusMinusMm));
  const moves = contour.map((place, i) => hypot(higher[i].x - place.x, higher[i].y - place.y));
  return {
    side: hole.side,
    contour,
    upperEye: hole.upperEye && placedEye(hole.upperEye, at),
    lowerEye: hole.lowerEye && placedEye(hole.lowerEye, at),
    innerNick: hole.innerNick && at(hole.innerNick.place),
    outerNick: hole.outerNick && at(hole.outerNick.place),
    height,
    heightEffect: {
      movesMm: moves.reduce((a, b) => Math.max(a, b), 0),
      sizeShare: Math.abs(spreadOf(higher) / spreadOf(contour) - 1),
    },
  };
}

const RIM_POINTS = 16;

/** The mean diameter of the circle's image. */
function placedEye<F extends Frame>(
  { centre, diameterPx }: HoleEye,
  at: (place: Point<'photo'>) => Point<F>,
): PlacedEye<F> {
  const middle = at(centre);
  let sum = 0;
  for (let i = 0; i < RIM_POINTS; i++) {
    const turn = (2 * Math.PI * i) / RIM_POINTS;
    const rim = at(point(centre.x + (diameterPx / 2) * cos(turn), centre.y + (diameterPx / 2) * sin(turn)));
    sum += hypot(rim.x - middle.x, rim.y - middle.y);
  }
  return { centre: middle, diameterMm: (2 * sum) / RIM_POINTS };
}

/** Root mean square distance from the middle. */
function spreadOf(points: readonly { readonly x: number; readonly y: number }[]): number {
  const n = points.length;
  const [mx, my] = [points.reduce((s, p) => s + p.x, 0) / n, points.reduce((s, p) => s + p.y, 0) / n];
  return Math.sqrt(points.reduce((s, p) => s + (p.x - mx) ** 2 + (p.y - my) ** 2, 0) / n);
}
