import type { Point } from '../../base/index.ts';
import type { StationName } from '../../instrument/index.ts';
import type { Picture } from '../../photo/index.ts';

/** A photograph of one thing on the calibration sheet, to be traced by its side. */
export interface ProfileRequest {
  /** What the photograph is called in words and documents. */
  readonly name: string;
  readonly picture: Picture;
  /** What the two bars of the printed sheet measure. */
  readonly sheetBarMm?: { readonly xMm?: number; readonly yMm?: number };
  /** Height of what is traced above the paper: the thickness of a card, half the width of a scroll; 0 for a drawn line. */
  readonly heightMm?: number;
}

/** A photograph of an arch: a card cut to it, or a line drawn along it. */
export interface ArchProfileRequest extends ProfileRequest {
  readonly of: 'crossArch' | 'longArch';
  readonly kind: 'edge' | 'line';
  /** `face`: heights count from the card's straight edge, which was laid to the gluing face; `ends`: from end to end. */
  readonly base: 'face' | 'ends';
  /** Both ends of the profile in the photograph, where the maker points at them. */
  readonly ends?: readonly [Point<'photo'>, Point<'photo'>];
  readonly face?: 'top' | 'back';
  readonly station?: StationName;
  /** What lies at the right of the profile as it is photographed, upright; without it no side is named after post or bar. */
  readonly rightIs?: 'treble' | 'bass' | 'neck' | 'lower-end';
  /** Leave stretches where post, bar or load moved the wood out of the fit. */
  readonly leaveOut?: boolean;
}
