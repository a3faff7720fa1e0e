import { type Chain, closeChain, joinChains, type Place, reverseChain, subChain } from '../../curve/index.ts';
import { type FlatPlace, flatPlace } from './flatPlace.ts';

/** How one end of a bent strip is trimmed: where the cut leaves its outer and its inner face. */
export interface EndCut {
  /** Along the middle of the thickness, in the measure of the strip laid flat. */
  readonly outerMm: number;
  readonly innerMm: number;
  /** The place of the cut that reaches farthest out. */
  readonly farthestMm: number;
}

/** A rib as it stands in the garland, with both ends trimmed. */
export interface RibPiece {
  /** In plan: closed, anticlockwise; treble half of a rib that crosses the centre line. Body frame. */
  readonly plan: Chain<'body'>;
  /** Toward the lower end of the body, and toward the neck. */
  readonly from: EndCut;
  readonly to: EndCut;
}

/** What bounds a rib in plan: its faces, running up the treble side, and its ends, each from outer to inner face. */
export interface RibBounds {
  readonly outer: Chain<'body'>;
  readonly inner: Chain<'body'>;
  readonly fromEnd: Chain<'body'>;
  readonly toEnd: Chain<'body'>;
  /** Part of the outer face that the rib keeps. */
  readonly kept: readonly [from: Place, to: Place];
}

/** The rib between two faces and two ends. */
export function ribPiece({ outer, inner, fromEnd, toEnd, kept }: RibBounds, thicknessMm: number): RibPiece {
  return {
    plan: closeChain(joinChains(subChain(outer, ...kept), toEnd, reverseChain(inner), reverseChain(fromEnd))),
    from: endCut(outer, fromEnd, thicknessMm, -1),
    to: endCut(outer, toEnd, thicknessMm, 1),
  };
}

/** An end from the outer to the inner face, on the strip laid flat. `outward` tells which way the strip ends. */
export function endCut(
  outer: Chain<'body'>,
  end: Chain<'body'>,
  thicknessMm: number,
  outward: 1 | -1,
): EndCut {
  const places = end.vertices.map((vertex): FlatPlace => flatPlace(outer, thicknessMm, vertex));
  const along = places.map(({ alongMm }) => alongMm);
  return {
    outerMm: along[0] ?? 0,
    innerMm: along.at(-1) ?? 0,
    farthestMm: outward * Math.max(...along.map((mm) => outward * mm)),
  };
}
