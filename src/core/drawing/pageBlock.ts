import { placeChain } from '../curve/index.ts';
import { wrapMarginText } from './marginText.ts';
import type { PageLine, PageText } from './page.ts';

/** A stretch of a page that is not broken: drawn with y = 0 at its top edge and downwards negative. */
export interface PageBlock {
  readonly heightMm: number;
  readonly lines: readonly PageLine[];
  readonly texts: readonly PageText[];
}

export interface TextStyle {
  readonly sizeMm: number;
  readonly tone: 'black' | 'grey';
  readonly bold: boolean;
}

const LINE_PITCH = 1.35;

/** Words broken to a width, as a block; `indentMm` from its left edge. */
export function textBlock(
  text: string,
  style: TextStyle,
  widthMm: number,
  indentMm = 0,
  afterMm = 0,
): PageBlock {
  const pitch = style.sizeMm * LINE_PITCH;
  const rows = wrapMarginText(text, style.sizeMm, widthMm - indentMm, style.bold);
  return {
    heightMm: rows.length * pitch + afterMm,
    lines: [],
    texts: rows.map((row, index) => ({
      text: row,
      at: { x: indentMm, y: -style.sizeMm - index * pitch },
      ...style,
      anchor: 'start',
      turnRad: 0,
    })),
  };
}

/** Blocks one on the other as one block. */
export function stackBlocks(blocks: readonly PageBlock[]): PageBlock {
  let down = 0;
  const lines: PageLine[] = [];
  const texts: PageText[] = [];
  for (const block of blocks) {
    const moved = moveBlock(block, 0, -down);
    lines.push(...moved.lines);
    texts.push(...moved.texts);
    down += block.heightMm;
  }
  return { heightMm: down, lines, texts };
}

/** Blocks in order, over as many columns of this height as they need; a block higher than that stands alone. */
export function breakBlocks(blocks: readonly PageBlock[], heightMm: number): PageBlock[] {
  const columns: PageBlock[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    if (used > 0 && used + block.heightMm > heightMm) {
      columns.push([]);
      used = 0;
    }
    columns.at(-1)?.push(block);
    used += block.heightMm;
  }
  return columns.map(stackBlocks);
}

/** The lines and texts of a block with its upper left corner at a place. */
export function moveBlock(block: PageBlock, x: number, y: number): PageBlock {
  return {
    heightMm: block.heightMm,
    lines: block.lines.map((line) => ({
      ...line,
      chain: placeChain<'page', 'page'>(line.chain, { turnRad: 0, shift: [x, y] }),
    })),
    texts: block.texts.map((text) => ({ ...text, at: { x: text.at.x + x, y: text.at.y + y } })),
  };
}
