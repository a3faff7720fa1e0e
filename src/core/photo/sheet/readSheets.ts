import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { HeightCard } from './heightCard.ts';
import type { MarkerFinder } from './markerFinder.ts';
import { type MeasuredPair, photoSaddles } from './photoSaddles.ts';
import { seenPatterns } from './seenPatterns.ts';
import {
  enclosedBy,
  isEnough,
  misplaced,
  noSheet,
  readingOf,
  type SheetReading,
  tooLittle,
} from './sheetReading.ts';
import { sheetName } from './sheetTrouble.ts';

/** One height card as it was measured in one photograph. */
export interface CardReading {
  readonly card: HeightCard;
  readonly pairs: readonly MeasuredPair[];
}

/** All sheets and height cards that one photograph shows. */
export interface SheetsReading {
  readonly sheets: readonly [SheetReading, ...SheetReading[]];
  readonly cards: readonly CardReading[];
}

/** Several sheets hold a camera together; each must still show where it lies itself. */
const LEAST_ENCLOSED = 0.25;
const LEAST_SADDLES = 12;
/** A card with fewer of its eight saddles in view does not say how high it stands. */
const LEAST_ON_A_CARD = 4;

/**
 * The saddles of every sheet and every height card in the photograph, sheets with the most codes first.
 *
 * A single sheet must be seen as {@link readAnySheet} asks; of several each must show a quarter of itself, and those
 * that show less are left out. Faults: as there.
 */
export function readSheets(picture: Picture, finder: MarkerFinder): Checked<SheetsReading> {
  const seen = seenPatterns(picture, finder);
  if (seen.sheets.length === 0) return refuse(noSheet(picture, seen));
  const faults = [
    ...seen.sheets.map(({ sheet, markers }) => misplaced(sheetName(sheet), sheet, markers)),
    ...seen.cards.map(({ card, markers }) => misplaced(`height card ${card.number}`, card, markers)),
  ].filter((fault): fault is Fault => fault !== null);
  if (faults.length > 0) return refuse(...faults);
  const all = seen.sheets.map((one) => readingOf(picture, one));
  const placed = all.filter(
    ({ sheet, pairs }) => pairs.length >= LEAST_SADDLES && enclosedBy(sheet, pairs) >= LEAST_ENCLOSED,
  );
  const [first, ...rest] = placed;
  if (!first || (rest.length === 0 && !isEnough(first))) return refuse(...all.map(tooLittle));
  const cards = seen.cards
    .map(({ card, markers }) => ({ card, pairs: photoSaddles(picture, card, markers) }))
    .filter(({ pairs }) => pairs.length >= LEAST_ON_A_CARD);
  return accept({ sheets: [first, ...rest], cards });
}
