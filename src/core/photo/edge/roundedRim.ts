import { hypot } from '../../base/index.ts';

/**
 * Half the thickness of a plate's edge that is not rounded, and the radius of its rounding, mm: an edge is about 4 mm
 * thick and rounded to 1.2 to 2 mm on both sides (common practice).
 */
const UPRIGHT_MM = 0.4;
const ROUND_MM = 1.6;
/** mm. How high over the middle of the edge the purfling lies: half the edge's thickness less the begun channel. */
export const PURFLING_OVER_MM = 1.7;

/**
 * How far outside the widest line of a rounded edge, at the height of its middle, a sight line passes that leans by
 * `lean` millimetres sideways for each of height and just touches the edge: it touches a shoulder above or below.
 */
export function silhouetteBeyondMm(lean: number): number {
  return UPRIGHT_MM * Math.abs(lean) + ROUND_MM * (hypot(1, lean) - 1);
}

/** How far outwards the purfling is seen from its true place by a sight line that leans outwards by `lean`; mm. */
export function purflingSeenOutMm(lean: number): number {
  return PURFLING_OVER_MM * lean;
}
