import type { BlockParts } from '../blocks/blockParts.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import type { SetNeck } from './neckOfDesign.ts';
import type { NeckRoot } from './neckShape.ts';

/** What the neck is let into. */
export interface NeckBody {
  readonly outline: BodyOutline;
  readonly blocks: BlockParts;
  readonly ribs: RibLines;
}

/** What the mortise leaves of the upper block, mm. */
export interface BlockWood {
  /** How deep the root goes into the block itself, beyond overhang and rib, at the top's edge and at the back. */
  readonly intoAtTopMm: number;
  readonly intoAtBackMm: number;
  /** Wood between the floor of the mortise and the inside of the body, where it is least. */
  readonly behindMm: number;
  /** Wood on either side of the mortise at the edge of the top. */
  readonly besideMm: number;
}

export function blockWood(
  { mortise }: SetNeck,
  root: NeckRoot,
  { outline, blocks, ribs }: NeckBody,
): BlockWood {
  // Edge of the plate to the inside of the ribs.
  const innerInsetMm = ribs.inner.insetMm;
  const fromEdgeMm = outline.bodyLengthMm - blocks.upper.faceStationMm;
  return {
    intoAtTopMm: mortise.depthAtTopMm - innerInsetMm,
    intoAtBackMm: mortise.depthAtBackMm - innerInsetMm,
    behindMm: fromEdgeMm - Math.max(mortise.depthAtTopMm, mortise.depthAtBackMm),
    besideMm: blocks.upper.halfWidthMm - root.edgeWidthMm / 2,
  };
}
