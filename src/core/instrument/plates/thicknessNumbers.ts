import type { Point } from '../../base/index.ts';

/** Thicknesses that a pattern is drawn through, mm, square to the outside. */
export interface ThicknessNumbers {
  /** On the centre line under the bridge. */
  readonly middleMm: number;
  /** At the widest places of the bouts: on the centre line, or half way out where the pattern is longitudinal. */
  readonly boutsMm: number;
  /** In the waist, three quarters of the way from the centre line to the channel. */
  readonly flanksMm: number;
  /** Along the channel. */
  readonly channelMm: number;
}

/** A thickness asked for at one place; the other half has it too. Body frame. */
export interface ThicknessPoint extends Point<'body'> {
  readonly thicknessMm: number;
}
