import { tan } from '../../base/index.ts';

/** How the root of a neck lies in the upper block. Angles in radians. */
export interface MortiseSlope {
  /** Of the root's face out of the square to the edge's plane; deeper toward the back where positive. */
  readonly leanRad: number;
  readonly depthAtTopMm: number;
  readonly depthAtBackMm: number;
  /** The angle of the root's face to the board's gluing face at which the mortise is as deep all the way. */
  readonly evenRootAngleRad: number;
}

/** The mortise for a root cut at an angle to the board's gluing face, for a body of a height (rib and edge) there. */
export function mortiseSlope(
  neckAngleRad: number,
  rootAngleRad: number,
  depthAtTopMm: number,
  bodyHeightMm: number,
): MortiseSlope {
  const leanRad = neckAngleRad + rootAngleRad - Math.PI / 2;
  return {
    leanRad,
    depthAtTopMm,
    depthAtBackMm: depthAtTopMm + bodyHeightMm * tan(leanRad),
    evenRootAngleRad: Math.PI / 2 - neckAngleRad,
  };
}
