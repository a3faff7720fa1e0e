import { atan, hypot } from '../../base/index.ts';
import { type BarAndPost, barHeightAt, type HollowPlate, insideHeight } from '../plates/index.ts';

/** A place along the middle of the bar, from its lower end. Heights over the gluing face of the top, mm. */
export interface BarPlace {
  readonly alongMm: number;
  /** Inside of the top there, and the face of the bar before it is pressed on: lower by what is left of the spring. */
  readonly insideMm: number;
  readonly faceMm: number;
  /** Of the trimmed bar. */
  readonly heightMm: number;
  /** How much lower the inside is at the outer face of the bar than at the inner one. */
  readonly fallMm: number;
}

/** The bar as it is fitted: along it, from the lower end to the upper. */
export interface BarShape {
  readonly lengthMm: number;
  readonly thicknessMm: number;
  readonly springMm: number;
  /** Along it, where the bridge stands. */
  readonly bridgeMm: number;
  readonly places: readonly BarPlace[];
  /** From the centre line to its inner face, at both ends. */
  readonly lowerInMm: number;
  readonly upperInMm: number;
  /** Above the lower end of the body. */
  readonly lowerEndMm: number;
  readonly upperEndMm: number;
}

/** mm between two places. */
const STEP_MM = 1.5;

/**
 * The bar under the inside of the top: its glue face follows the inside along the bar's own middle, its height falls from the
 * bridge to both ends. With spring it touches in the middle and stands off at both ends by the spring, along a parabola.
 *
 * @param bridgeMm height of the bridge line above the lower end of the body
 */
export function barShape(
  { bar, ...sizes }: BarAndPost,
  top: HollowPlate,
  bridgeMm: number,
  springMm: number,
): BarShape {
  const half = bar.halfWidthMm;
  const [fromY, toY] = [bar.from.y - half, bar.to.y + half];
  const slant = (bar.to.x - bar.from.x) / (bar.to.y - bar.from.y);
  const perY = hypot(1, slant);
  const side = Math.sign(bar.from.x);
  const lengthMm = (toY - fromY) * perY;
  const at = (yMm: number): number => bar.from.x + slant * (yMm - bar.from.y);
  const count = Math.ceil(lengthMm / STEP_MM);
  const places = Array.from({ length: count + 1 }, (_, index): BarPlace => {
    const share = index / count;
    const yMm = fromY + (toY - fromY) * share;
    const insideMm = insideHeight(top, at(yMm), yMm);
    const shareToBridge =
      yMm < bridgeMm ? (yMm - fromY) / (bridgeMm - fromY) : (toY - yMm) / (toY - bridgeMm);
    const [inner, outer] = [-1, 1].map((way) => insideHeight(top, at(yMm) + side * way * half, yMm));
    return {
      alongMm: lengthMm * share,
      insideMm,
      faceMm: insideMm - springMm * (2 * share - 1) ** 2,
      heightMm: barHeightAt(sizes, shareToBridge),
      fallMm: (inner ?? 0) - (outer ?? 0),
    };
  });
  const inAt = (yMm: number): number => Math.abs(at(yMm)) - half;
  return {
    lengthMm,
    thicknessMm: 2 * half,
    springMm,
    bridgeMm: (bridgeMm - fromY) * perY,
    places,
    lowerInMm: inAt(fromY),
    upperInMm: inAt(toY),
    lowerEndMm: fromY,
    upperEndMm: toY,
  };
}

/** The bevel of the glue face across the bar at a place along it: it falls away outward by this angle where positive. */
export function bevelRad({ places, thicknessMm }: BarShape, alongMm: number): number {
  const near = places.reduce((best, place) =>
    Math.abs(place.alongMm - alongMm) < Math.abs(best.alongMm - alongMm) ? place : best,
  );
  return atan(near.fallMm / thicknessMm);
}
