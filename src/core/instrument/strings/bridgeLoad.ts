import { cos, sin } from '../../base/index.ts';

/** What the strings do to the bridge. Newtons. */
export interface BridgeLoad {
  /** Along the bridge, down on the top. */
  readonly downN: number;
  /** Across the bridge, toward the fingerboard where positive: 0 where it halves the break angle. */
  readonly towardBoardN: number;
}

/**
 * Load on a bridge from the pull of the strings and the angles (rad) that they make with it before and behind. The
 * strings slide over the bridge without friction, so that they pull alike on both sides.
 */
export function bridgeLoad(tensionN: number, frontRad: number, behindRad: number): BridgeLoad {
  return {
    downN: tensionN * (cos(frontRad) + cos(behindRad)),
    towardBoardN: tensionN * (sin(frontRad) - sin(behindRad)),
  };
}
