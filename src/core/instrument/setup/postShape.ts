import type { Point } from '../../base/index.ts';
import { type HollowPlate, insideHeight, type PlateArea } from '../plates/index.ts';

/** How an end of the post is cut: how much the plate rises there per mm, outward from the centre line and toward the neck. */
export interface PostEnd {
  readonly outward: number;
  readonly toNeck: number;
}

/** The sound post as it fits between the plates, upright to the gluing faces. */
export interface PostShape {
  readonly diameterMm: number;
  /** Along its middle. */
  readonly lengthMm: number;
  readonly top: PostEnd;
  readonly back: PostEnd;
}

/** The body that a post stands in. */
export interface PostBox {
  readonly back: HollowPlate;
  readonly top: HollowPlate;
  readonly ribHeightTailMm: number;
  readonly ribHeightNeckMm: number;
}

/**
 * The post at its place: from the inside of the back to that of the top along its middle, its ends cut to the slopes of both,
 * taken over its own thickness. The taper of the ribs tilts the top against the back and counts with the top's slope.
 */
export function postShape({ from, halfWidthMm }: PlateArea, box: PostBox): PostShape {
  const side = Math.sign(from.x);
  const topAt = (at: Point<'body'>): number => {
    const { ribHeightTailMm: tail, ribHeightNeckMm: neck } = box;
    const ribsMm = tail + ((neck - tail) * at.y) / box.top.arch.bodyLengthMm;
    return ribsMm + insideHeight(box.top, at.x, at.y);
  };
  // The frame of the back looks at its outside: across runs the other way.
  const backAt = (at: Point<'body'>): number => -insideHeight(box.back, -at.x, at.y);
  const endOf = (heightAt: (at: Point<'body'>) => number): PostEnd => {
    const beside = (x: number, y: number): number => heightAt({ x: from.x + x, y: from.y + y });
    const span = 2 * halfWidthMm;
    return {
      outward: (side * (beside(halfWidthMm, 0) - beside(-halfWidthMm, 0))) / span,
      toNeck: (beside(0, halfWidthMm) - beside(0, -halfWidthMm)) / span,
    };
  };
  return {
    diameterMm: 2 * halfWidthMm,
    lengthMm: topAt(from) - backAt(from),
    top: endOf(topAt),
    back: endOf(backAt),
  };
}
