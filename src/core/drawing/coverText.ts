import { type PageBlock, stackBlocks, textBlock } from './pageBlock.ts';

/** Type of the cover's headings, running words and notes. */
const HEADING = { sizeMm: 3.6, tone: 'black', bold: true } as const;
export const BODY = { sizeMm: 3, tone: 'black', bold: false } as const;
export const NOTE = { sizeMm: 2.6, tone: 'grey', bold: false } as const;

/** mm. How far words stand in from the figures and letters before them. */
export const INDENT_MM = 6;

/** Rows under a heading that is never parted from the first of them; the others may stand on the next page. */
export function withHeading(heading: string, rows: readonly PageBlock[], widthMm: number): PageBlock[] {
  const [first, ...others] = rows;
  return [stackBlocks([textBlock(heading, HEADING, widthMm, 0, 2), ...(first ? [first] : [])]), ...others];
}
