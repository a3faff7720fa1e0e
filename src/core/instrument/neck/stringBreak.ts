import { accept, atan, type Checked, refuse } from '../../base/index.ts';
import type { NeckSet } from './neckSet.ts';

/** How the strings break over the bridge. Angles in radians. */
export interface StringBreak {
  /** How far the strings slope down from the bridge toward the saddle. */
  readonly rearAngleRad: number;
  /** Between both parts of the strings over the bridge. */
  readonly breakAngleRad: number;
  /** How far the bridge must lean toward the tail to halve the break angle. */
  readonly halvingLeanRad: number;
}

/** Where the tailgut leaves the saddle: along the body from the bridge, and over the plane of the edge. */
export interface SaddlePlace {
  readonly fromBridgeMm: number;
  readonly overEdgeMm: number;
}

/** The break of the strings over the bridge of a set neck. Fault: `neck.saddle` (strings that do not come down to it). */
export function stringBreak(
  { bridgeOverEdgeMm, frontAngleRad }: Pick<NeckSet, 'bridgeOverEdgeMm' | 'frontAngleRad'>,
  saddle: SaddlePlace,
): Checked<StringBreak> {
  const { fromBridgeMm, overEdgeMm } = saddle;
  if (!(fromBridgeMm > 0 && overEdgeMm > 0 && bridgeOverEdgeMm > overEdgeMm))
    return refuse({
      code: 'neck.saddle',
      at: 'saddleHeight',
      found: `a saddle ${overEdgeMm.toFixed(1)} mm over the edge, ${fromBridgeMm.toFixed(0)} mm behind a bridge whose top is ${bridgeOverEdgeMm.toFixed(1)} mm over it`,
      need: 'strings that come down from the bridge to the saddle',
      remedy: 'check the height of the saddle, the projection and the body stop',
    });
  const rearAngleRad = atan((bridgeOverEdgeMm - overEdgeMm) / fromBridgeMm);
  return accept({
    rearAngleRad,
    breakAngleRad: Math.PI - frontAngleRad - rearAngleRad,
    halvingLeanRad: (rearAngleRad - frontAngleRad) / 2,
  });
}
