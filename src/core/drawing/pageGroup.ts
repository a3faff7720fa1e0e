import type { Box } from '../base/index.ts';
import type { Drawing } from './drawing.ts';
import type { Page, PrinterMeasure } from './page.ts';
import type { PaperName } from './paper.ts';
import type { SheetFrame } from './sheetFrame.ts';

export interface PageOptions {
  readonly paper: PaperName;
  /** What stands at the top of the cover: the design's name. */
  readonly title: string;
  readonly printer?: PrinterMeasure;
  /** The pages' own words in the language of the print; as they stand in English where left out. */
  readonly say?: Say;
}

/** A text in the language of the print. */
export type Say = (text: string) => string;

/** The pages' own words as they stand. */
export const inEnglish: Say = (text) => text;

/** A drawing with its number in the list of pieces and the box of all that it prints. */
export interface Piece {
  readonly number: number;
  readonly drawing: Drawing;
  readonly box: Box<'drawing'>;
}

/** Pages that belong together on the map: one large piece in tiles, or one page of small ones. */
export interface PageGroup {
  readonly pieces: readonly Piece[];
  readonly pages: readonly DraftPage[];
  readonly map: GroupMap;
}

/** A page before its number and its foot are known. */
export type DraftPage = Pick<Page, 'title' | 'tile' | 'placements' | 'lines' | 'texts'> & {
  readonly frame: SheetFrame;
};

/** What the map shows of a group: a box at true size, the windows of its pages in it, and how pieces lie in it. */
export interface GroupMap {
  readonly box: Box<'page'>;
  readonly windows: readonly Box<'page'>[];
  readonly placements: Page['placements'];
}
