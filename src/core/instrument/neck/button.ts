import { asin } from '../../base/index.ts';
import { bulgeOfSweep, type Chain, intersections, subChain } from '../../curve/index.ts';

/** The button of the back, over the upper end of the body. */
export interface Button {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Its edge from the treble side of the outline round to the bass side. Body frame, open. */
  readonly edge: Chain<'body'>;
  readonly radiusMm: number;
}

/**
 * A button of a width, standing out beyond the upper end of the outline by a height in the middle: straight sides and a half
 * circle, or one arc where it is lower than half its width.
 *
 * @param upperBout treble half of the outline's upper bout, running up to the centre line
 * @returns null where the outline is nowhere so wide
 */
export function buttonOf(
  upperBout: Chain<'body'>,
  bodyLengthMm: number,
  widthMm: number,
  heightMm: number,
): Button | null {
  const half = widthMm / 2;
  const topMm = bodyLengthMm + heightMm;
  const upright: Chain<'body'> = {
    closed: false,
    vertices: [bodyLengthMm / 2, topMm].map((y) => ({ x: half, y, bulge: 0 })),
  };
  const foot = intersections(upperBout, upright)
    .map(({ point: at }) => at)
    .sort((a, b) => b.y - a.y)[0];
  if (!foot) return null;
  const radiusMm = heightMm >= half ? half : (half ** 2 + heightMm ** 2) / (2 * heightMm);
  const shoulderMm = topMm - Math.min(half, heightMm);
  const sweepRad = heightMm >= half ? Math.PI : 2 * asin(half / radiusMm);
  const feet = shoulderMm > foot.y ? [{ x: foot.x, y: foot.y, bulge: 0 }] : [];
  const edge: Chain<'body'> = {
    closed: false,
    vertices: [
      ...feet,
      { x: half, y: shoulderMm, bulge: bulgeOfSweep(sweepRad) },
      { x: -half, y: shoulderMm, bulge: 0 },
      ...feet.map(({ y }) => ({ x: -half, y, bulge: 0 })),
    ],
  };
  return { widthMm, heightMm, edge, radiusMm };
}

/**
 * The upper end of the outline between two distances from the centre line on the treble side, from the outer to the inner
 * one; null where it is not so wide. Body frame.
 */
export function upperEdge(
  upperBout: Chain<'body'>,
  bodyLengthMm: number,
  outerMm: number,
  innerMm: number,
): Chain<'body'> | null {
  const at = (xMm: number) => {
    const upright: Chain<'body'> = {
      closed: false,
      vertices: [bodyLengthMm / 2, bodyLengthMm + 1].map((y) => ({ x: xMm, y, bulge: 0 })),
    };
    return intersections(upperBout, upright).toSorted((a, b) => b.point.y - a.point.y)[0];
  };
  const [outer, inner] = [at(outerMm), at(innerMm)];
  return outer && inner ? subChain(upperBout, outer.a, inner.a) : null;
}
