import type { Point } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { LiningParts } from '../linings/lining.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import type { BarAndPost } from '../plates/index.ts';
import type { DividerRule } from './dividerRule.ts';
import type { DraftedHole, HoleSizes } from './draftHole.ts';

/** What lies round the sound holes. */
export interface HoleSurroundings {
  readonly outline: BodyOutline;
  readonly blocks: BlockParts;
  readonly linings: LiningParts;
  readonly barAndPost: BarAndPost;
}

/** An eye on the body. */
export interface PlacedEye {
  readonly centre: Point<'body'>;
  readonly diameterMm: number;
  /** Rim to the nearest place of the edge of the top. */
  readonly toEdgeMm: number;
}

/** Sound holes in their place on a top; the bass one is the mirror image of the treble one. Body frame, mm. */
export interface PlacedHoles {
  readonly sizes: HoleSizes;
  /** In its own frame. */
  readonly hole: DraftedHole;
  /** By how much it is turned about its inner nick from how it is drawn: positive takes the lower eye to the edge. */
  readonly turnRad: number;
  /** Both openings with their nicks, closed, anticlockwise. */
  readonly treble: Chain<'body'>;
  readonly bass: Chain<'body'>;
  readonly stopMm: number;
  /** Height of the bridge line, and of the inner nicks, over the lower end of the body. */
  readonly bridgeLineMm: number;
  readonly nickLineMm: number;
  readonly upperEye: PlacedEye;
  readonly lowerEye: PlacedEye;
  /** Points of the inner and the outer nick, treble side. */
  readonly innerNick: Point<'body'>;
  readonly outerNick: Point<'body'>;
  /** Across the stem from its edge at the inner nick, treble side. */
  readonly stem: { readonly inner: Point<'body'>; readonly outer: Point<'body'> };
  /** The place of the hole that lies nearest to the edge of the top, and how near. */
  readonly nearestEdge: { readonly at: Point<'body'>; readonly distanceMm: number };
  /** How far the lower corner block, as it stands in the form, reaches under the hole. */
  readonly cornerBlockUnderMm: number;
  /** Where a published rule of dividers would set the eyes. */
  readonly rule: DividerRule;
}
