import { accept, type Checked, KEEP_NOTHING, type Keeper } from '../../base/index.ts';
import type { MarkerFinder, Picture } from '../../photo/index.ts';
import { sheetsIn } from './sheetsIn.ts';

/** What a photograph shows of the printed sheet, before anything is traced in it. */
export interface SheetInPhotograph {
  readonly paper: string;
  /** Corners of squares that were measured, of those that the sheet has. */
  readonly found: number;
  readonly of: number;
  /** How many sheets and how many height cards lie there. */
  readonly sheets: number;
  readonly cards: number;
}

/**
 * What is to be seen of the printed sheet; null where there is none. Faults: those of reading one that is there but folded,
 * mirrored, or hidden.
 */
export function sheetInPhotograph(
  picture: Picture,
  finder: MarkerFinder,
  keeper: Keeper = KEEP_NOTHING,
): Checked<SheetInPhotograph | null> {
  const read = sheetsIn(picture, finder, keeper);
  if (!read.ok || read.value === null) return read.ok ? accept(null) : read;
  const { sheets, cards } = read.value;
  return accept({
    paper: sheets[0].sheet.paper,
    found: sheets.reduce((sum, { pairs }) => sum + pairs.length, 0),
    of: sheets.reduce((sum, { sheet }) => sum + sheet.saddles.length, 0),
    sheets: sheets.length,
    cards: cards.length,
  });
}
