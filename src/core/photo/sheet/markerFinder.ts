import type { Point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';

/** A square code as found: corners clockwise from the code's own upper left, good to about a pixel. */
export interface FoundMarker {
  readonly id: number;
  readonly corners: readonly [Point<'photo'>, Point<'photo'>, Point<'photo'>, Point<'photo'>];
  /** The code reads only as in a mirror; its corners then have no order. */
  readonly isMirrored?: boolean;
}

/** What finds square codes; the host brings one. It holds on to nothing of the picture, which is let go of afterwards. */
export type MarkerFinder = (picture: GrayPicture) => readonly FoundMarker[];
