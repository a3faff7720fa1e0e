import type { Point } from '../../base/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';

/** What the maker wishes of the outline as meant where it is not the habit. */
export interface MeantWishes {
  /** Which side the slow difference of the halves follows; the average when left out. */
  readonly slow?: 'average' | 'bass' | 'treble';
  /** `keep`: each half is restored for itself as well, so that the asymmetry stays. */
  readonly asymmetry?: 'restore' | 'keep';
  /** Stretches of one side, by heights above the lower end, where the maker rules what the outline takes. */
  readonly overrides?: readonly StretchRule<'bass' | 'treble'>[];
  /** Widths of the corner ends. */
  readonly cornerEndMm?: { readonly upper?: number; readonly lower?: number };
}

/**
 * What the outline takes over a stretch of one side: the outer of both halves, this side as it is found, the other
 * side, or the mean of both.
 */
export interface StretchRule<Side extends string> {
  readonly side: Side;
  readonly fromMm: number;
  readonly toMm: number;
  readonly take: 'outer' | 'asFound' | 'other' | 'mean';
}

/** One place of the purfling's middle line in the scene. */
export interface PurflingSpot extends Point<'scene'> {
  readonly sigmaMm: number;
  readonly section?: OutlineSection;
  readonly alongMm?: number;
}

/** The purfling of both halves where it is seen: a witness of where the edge once stood. */
export interface SeenPurfling {
  readonly bass: readonly PurflingSpot[];
  readonly treble: readonly PurflingSpot[];
}

/** Halves as seen in the scene, the neck up. */
export type SeenSide = 'left' | 'right';

/** Which half as seen is which: on the top the bass half is left, on the back right. */
export function seenSide(side: 'bass' | 'treble', face: 'top' | 'back'): SeenSide {
  return (side === 'bass') === (face === 'top') ? 'left' : 'right';
}

/** The side's name for a half as seen. */
export function namedSide(side: SeenSide, face: 'top' | 'back'): 'bass' | 'treble' {
  return (side === 'left') === (face === 'top') ? 'bass' : 'treble';
}
