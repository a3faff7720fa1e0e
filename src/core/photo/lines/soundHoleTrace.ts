import type { Finding, Point } from '../../base/index.ts';

/** Seen: measured. Doubtful: unlike the other hole there. Bridged: something crosses it, and a straight stretch stands in. */
export type HoleState = 'seen' | 'doubtful' | 'bridged';

export interface HolePoint extends Point<'photo'> {
  readonly state: HoleState;
}

export interface HoleEye {
  readonly centre: Point<'photo'>;
  readonly diameterPx: number;
  /** Share of the full turn that shows as a circle, and how far its points lie off it, rms. */
  readonly turnShare: number;
  readonly roughPx: number;
}

export interface HoleNick {
  /** Where the middle of the nick meets the stem's edge carried on over it. */
  readonly place: Point<'photo'>;
  readonly depthPx: number;
}

/** One sound hole as it is seen. It lies on the arch, above the edge: its places are the photograph's own. */
export interface SoundHole {
  readonly side: 'bass' | 'treble';
  /** Closed, first point not repeated, running from the lower end up the edge that faces the body's outline. */
  readonly contour: readonly HolePoint[];
  readonly upperEye: HoleEye | null;
  readonly lowerEye: HoleEye | null;
  readonly innerNick: HoleNick | null;
  readonly outerNick: HoleNick | null;
  /** Share of the contour's length that is seen. */
  readonly seenShare: number;
  /** Light of the hole as a share of the wood's. */
  readonly darkness: number;
}

export interface SoundHolesTrace {
  readonly bass: SoundHole | null;
  readonly treble: SoundHole | null;
  /** The hole to draw from: the bass one unless the other is plainly better seen; null where there is none. */
  readonly clearer: 'bass' | 'treble' | null;
  /** Through the two inner nicks, bass first; null where either is not found. */
  readonly stopLine: readonly [Point<'photo'>, Point<'photo'>] | null;
  /** How far the mirrored treble hole lies off the bass one when laid on it, px. */
  readonly difference: { readonly rmsPx: number; readonly mostPx: number } | null;
  readonly findings: readonly Finding[];
}
