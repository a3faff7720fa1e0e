import type { Point } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { SizeMisfit } from './rigidPlace.ts';
import type { ShapeSeat } from './shapeSeat.ts';

/** A made thing as the design expects it, and whether it would lie with its other face up. */
export interface ExpectedShape {
  readonly name: string;
  /** Closed, anticlockwise. */
  readonly chain: Chain<'body'>;
  readonly mirrored: boolean;
}

/**
 * Seen: measured on the upper edge. By its foot: the camera looks down on the wall, and its foot on the paper was
 * measured instead. Hidden: something covers it, or no plain edge shows. Corner: too near to a corner to be measured.
 */
export type PlaceState = 'seen' | 'by-foot' | 'hidden' | 'corner';

/** One place of the edge, in order along the expected edge. */
export interface ShapePlace {
  readonly expected: Point<'body'>;
  /** Unit, out of the material. */
  readonly normal: Point<'body'>;
  readonly state: PlaceState;
  /** Where the edge was measured, mm outward of the expected one; 0 where it was not. */
  readonly missMm: number;
  /** One standard deviation across the edge. */
  readonly sigmaMm: number;
}

/** A made thing measured in a photograph, laid over the expected shape without changing its size. */
export interface TracedShape {
  readonly shape: ExpectedShape;
  readonly seat: ShapeSeat;
  readonly places: readonly ShapePlace[];
  readonly size: SizeMisfit;
  /** Share of the places away from corners that were measured. */
  readonly seenShare: number;
}
