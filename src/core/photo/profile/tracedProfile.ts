import type { Finding, Point } from '../../base/index.ts';
import type { Rectified } from '../camera/rectify.ts';
import type { ShapeGround } from '../paper/sheetGround.ts';

/** A square-on picture of what lies on the sheet, and where paper and squares show in it. */
export interface ProfileScene {
  readonly rectified: Rectified;
  readonly ground: ShapeGround;
}

/** What is looked for: the bowed edge of a card, or a dark line drawn on white paper. */
export type ProfileKind = 'edge' | 'line';

export interface ProfileOptions {
  readonly kind: ProfileKind;
  /** Both ends of the profile, where the maker points at them; else they are found. */
  readonly ends?: readonly [Point<'scene'>, Point<'scene'>];
  /** `face`: heights count from the card's straight edge, which was laid to the gluing face; `ends`: from end to end. */
  readonly base: 'face' | 'ends';
}

/** A place of a profile in its own frame, with its spread across the profile (one standard deviation). */
export interface ProfilePlace extends Point<'section'> {
  readonly sigmaMm: number;
}

/**
 * A profile in a frame of its own: x along the base line from the middle between its ends, heights above the base line. As seen in the
 * photograph with the profile upright; never mirrored. `endsInScene` are its ends on the paper, for the ± of its scale.
 */
export interface TracedProfile {
  readonly kind: ProfileKind;
  readonly base: 'face' | 'ends';
  readonly places: readonly ProfilePlace[];
  readonly endsInScene: readonly [Point<'scene'>, Point<'scene'>];
  readonly findings: readonly Finding[];
}
