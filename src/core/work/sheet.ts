import { accept, type Checked } from '../base/index.ts';
import {
  cardsDrawing,
  type Drawing,
  layoutWholeSheet,
  type PaperName,
  sheetDrawing,
  spokenDrawing,
} from '../drawing/index.ts';
import { writePdf } from '../files/index.ts';
import { calibrationSheet, type SheetPaper } from '../photo/index.ts';
import { type Language, speechOf } from '../words/index.ts';

/**
 * Calibration sheets as one print file at true size, a page for each number that the paper comes in. Faults: those of the
 * page layout.
 */
export async function sheet(
  paper: SheetPaper,
  numbers: readonly number[] = [1],
  language: Language = 'en',
): Promise<Checked<Uint8Array>> {
  return wholePages(
    paper,
    numbers.map((number) => sheetDrawing(calibrationSheet(paper, number))),
    language,
  );
}

/** A page of four height cards as a print file at true size; pages 1 and 2 bear different cards. Faults: as {@link sheet}. */
export async function heightCards(
  paper: PaperName,
  page: number,
  language: Language = 'en',
): Promise<Checked<Uint8Array>> {
  return wholePages(paper, [cardsDrawing(paper, page)], language);
}

async function wholePages(
  paper: PaperName,
  drawings: readonly Drawing[],
  language: Language,
): Promise<Checked<Uint8Array>> {
  const speech = speechOf(language);
  const [first, ...rest] = drawings
    .map((drawing) => spokenDrawing(drawing, speech))
    .map((drawing) => layoutWholeSheet(drawing, { paper, title: drawing.title }));
  if (!first?.ok) return first ?? accept(new Uint8Array());
  const pages = [...first.value.pages];
  for (const one of rest) {
    if (!one.ok) return one;
    pages.push(...one.value.pages.map((page) => ({ ...page, number: pages.length + 1 })));
  }
  return accept(await writePdf({ ...first.value, pages }));
}
