import { type Point, point } from '../../base/index.ts';
import { arcOf, type Chain, pointOn, segmentLength, segments } from '../../curve/index.ts';

/** A stretch of a rib that is bent to one radius, between places along the middle of its thickness. */
export interface RibStretch {
  readonly fromMm: number;
  readonly toMm: number;
  /** Which way it bends as seen from the body's middle: round it, hollow to it, or not at all. */
  readonly bends: 'full' | 'hollow' | 'straight';
  /** Radius on the inside of the bend, which the iron gives; null where it is straight. */
  readonly insideRadiusMm: number | null;
  /** Stretch of the fibre on the outside of the bend, a ratio: t / (2R + t). */
  readonly stretch: number;
}

/** A rib laid flat: bent wood keeps its length in the middle of its thickness, and nowhere else. */
export interface DevelopedRib {
  /** From end to end along the middle of the thickness. */
  readonly lengthMm: number;
  readonly stretches: readonly RibStretch[];
  /**
   * The edge that meets the plate which is not level with the other: along the rib, and height there. Its straight
   * pieces keep to it within a thousandth of a millimetre.
   */
  readonly edge: readonly Point<'section'>[];
}

/** mm along a rib between two places of its edge. */
const EDGE_STEP_MM = 5;

/**
 * A rib laid flat along the middle of its thickness, from its outer face in plan and its height at each y of the body.
 * Lengths are exact: of an arc of the face, bent round a radius that is half a thickness smaller (full) or greater
 * (hollow). A plane cut through the garland is no straight line on the flat rib: its height goes with y, not with length.
 *
 * @param outerFace tangent arcs and lines, treble side, running up the body
 */
export function developedRib(
  outerFace: Chain<'body'>,
  thicknessMm: number,
  heightAtMm: (yMm: number) => number,
): DevelopedRib {
  const stretches: RibStretch[] = [];
  const edge: Point<'section'>[] = [];
  let alongMm = 0;
  for (const segment of segments(outerFace)) {
    const arc = arcOf(segment);
    const isHollow = arc !== null && arc.sweepRad < 0;
    const insideRadiusMm = arc === null ? null : isHollow ? arc.radiusMm : arc.radiusMm - thicknessMm;
    const lengthMm =
      insideRadiusMm === null || arc === null
        ? segmentLength(segment)
        : Math.abs(arc.sweepRad) * (insideRadiusMm + thicknessMm / 2);
    const fromMm = alongMm;
    alongMm += lengthMm;
    stretches.push({
      fromMm,
      toMm: alongMm,
      bends: arc === null ? 'straight' : isHollow ? 'hollow' : 'full',
      insideRadiusMm,
      stretch: insideRadiusMm === null ? 0 : thicknessMm / (2 * insideRadiusMm + thicknessMm),
    });
    const count = Math.max(1, Math.ceil(lengthMm / EDGE_STEP_MM));
    for (let step = edge.length === 0 ? 0 : 1; step <= count; step++) {
      const share = step / count;
      edge.push(point(fromMm + share * lengthMm, heightAtMm(pointOn(segment, share).y)));
    }
  }
  return { lengthMm: alongMm, stretches, edge };
}
