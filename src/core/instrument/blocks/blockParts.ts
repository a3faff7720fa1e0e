import { accept, type Box, type Checked, refuse } from '../../base/index.ts';
import { boundsOf, type Chain } from '../../curve/index.ts';
import type { PlanValues } from '../planValues.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import { type CornerBlock, cornerBlock } from './cornerBlock.ts';
import { type EndBlock, endBlock } from './endBlock.ts';

/** The piece of wood a block is made from. */
export interface BlockBlank {
  /** Closed rectangle in plan round the finished block, allowance on the sides that are shaped. Body frame. */
  readonly outline: Chain<'body'>;
  /** Across the body, along the centre line, and along the grain. */
  readonly acrossMm: number;
  readonly alongMm: number;
  readonly heightMm: number;
  /** The grain stands upright, along the height of the ribs, so that every glued face is side grain. */
  readonly grain: 'along the rib height';
}

/** One of the blocks with its blank. */
export interface BlockPart {
  readonly name: 'lower block' | 'lower corner block' | 'upper corner block' | 'upper block';
  /** Corner blocks are given for the treble side; their mirror images are the bass ones. */
  readonly count: 1 | 2;
  readonly outline: Chain<'body'>;
  /** The part of the outline that is shaped to the ribs, open; its ends lie on the sides of the blank. */
  readonly shaped: Chain<'body'>;
  /** The finished block's box. */
  readonly acrossMm: number;
  readonly alongMm: number;
  readonly blank: BlockBlank;
}

/** The blocks of the treble half and the end blocks, each with its blank. Body frame, mm. */
export interface BlockParts {
  readonly lower: EndBlock;
  readonly lowerCorner: CornerBlock;
  readonly upperCorner: CornerBlock;
  readonly upper: EndBlock;
  /** Lower block, lower corner, upper corner, upper block. */
  readonly parts: readonly BlockPart[];
}

/** mm of wood left on the sides of a blank that are shaped to the ribs later; common practice. */
const SHAPING_ALLOWANCE_MM = 3;

/** mm that a blank stands higher than the ribs, to be planed off with them; common practice. */
const HEIGHT_ALLOWANCE_MM = 1;

/** The six blocks. Faults: `blocks.corner-reach`, `blocks.end-block`, all that apply. */
export function blockParts(
  ribs: Pick<RibLines, 'inner'>,
  values: Pick<
    PlanValues,
    | 'upperBlockWidth'
    | 'upperBlockDepth'
    | 'lowerBlockWidth'
    | 'lowerBlockDepth'
    | 'lowerCornerBlockAlongWaist'
    | 'lowerCornerBlockAlongBout'
    | 'upperCornerBlockAlongWaist'
    | 'upperCornerBlockAlongBout'
    | 'ribHeightNeck'
    | 'ribHeightTail'
  >,
): Checked<BlockParts> {
  const { inner } = ribs;
  const lower = endBlock(inner, 'lower', values.lowerBlockWidth, values.lowerBlockDepth);
  const upper = endBlock(inner, 'upper', values.upperBlockWidth, values.upperBlockDepth);
  const lowerCorner = cornerBlock(
    inner,
    'lower',
    values.lowerCornerBlockAlongWaist,
    values.lowerCornerBlockAlongBout,
  );
  const upperCorner = cornerBlock(
    inner,
    'upper',
    values.upperCornerBlockAlongWaist,
    values.upperCornerBlockAlongBout,
  );
  if (!lower.ok || !upper.ok || !lowerCorner.ok || !upperCorner.ok)
    return refuse(
      ...[lower, lowerCorner, upperCorner, upper].flatMap((each) => (each.ok ? [] : each.faults)),
    );
  const heightMm = Math.max(values.ribHeightNeck, values.ribHeightTail) + HEIGHT_ALLOWANCE_MM;
  const more = SHAPING_ALLOWANCE_MM;
  return accept({
    lower: lower.value,
    lowerCorner: lowerCorner.value,
    upperCorner: upperCorner.value,
    upper: upper.value,
    parts: [
      blockPart('lower block', 1, lower.value, heightMm, { right: 0, up: 0, down: more }),
      blockPart('lower corner block', 2, lowerCorner.value, heightMm, {
        right: more,
        up: more,
        down: 0,
      }),
      blockPart('upper corner block', 2, upperCorner.value, heightMm, {
        right: more,
        up: 0,
        down: more,
      }),
      blockPart('upper block', 1, upper.value, heightMm, { right: 0, up: more, down: 0 }),
    ],
  });
}

function blockPart(
  name: BlockPart['name'],
  count: 1 | 2,
  block: { readonly outline: Chain<'body'>; readonly shaped: Chain<'body'> },
  heightMm: number,
  more: { readonly right: number; readonly up: number; readonly down: number },
): BlockPart {
  const box = boundsOf(block.outline);
  const blank: Box<'body'> = {
    min: { x: box.min.x, y: box.min.y - more.down },
    max: { x: box.max.x + more.right, y: box.max.y + more.up },
  };
  return {
    name,
    count,
    outline: block.outline,
    shaped: block.shaped,
    acrossMm: box.max.x - box.min.x,
    alongMm: box.max.y - box.min.y,
    blank: {
      outline: rectangle(blank),
      acrossMm: blank.max.x - blank.min.x,
      alongMm: blank.max.y - blank.min.y,
      heightMm,
      grain: 'along the rib height',
    },
  };
}

function rectangle({ min, max }: Box<'body'>): Chain<'body'> {
  const corners = [
    [min.x, min.y],
    [max.x, min.y],
    [max.x, max.y],
    [min.x, max.y],
  ] as const;
  return { closed: true, vertices: corners.map(([x, y]) => ({ x, y, bulge: 0 })) };
}
