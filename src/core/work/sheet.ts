import { accept, type Checked } from '../base/index.ts';
import { layoutWholeSheet, sheetDrawing } from '../drawing/index.ts';
import { writePdf } from '../files/index.ts';
import { calibrationSheet, type SheetPaper } from '../photo/index.ts';

/** The calibration sheet for a paper as a print file at true size. Faults: those of the page layout. */
export async function sheet(paper: SheetPaper): Promise<Checked<Uint8Array>> {
  const drawing = sheetDrawing(calibrationSheet(paper));
  const pages = layoutWholeSheet(drawing, { paper, title: drawing.title });
  return pages.ok ? accept(await writePdf(pages.value)) : pages;
}
