import type { Box } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import { CHECK_BAR_MM, type PageLine, type PageText, type PrinterMeasure } from './page.ts';
import { PAPERS, type PaperName } from './paper.ts';

/** mm. A border that home printers may leave blank is 3 to 5 mm; twice that is safe. Common practice. */
const UNPRINTABLE_MM = 10;

/** mm. Strip under the pieces: ruler, sentence, title. */
const FOOT_MM = 20;
/** mm. Strip beside the pieces for the upright ruler. */
const SIDE_MM = 11;
const BAR_INSET_MM = 1;
const TEXT_MM = 2.5;
const TITLE_MM = 3.6;

const CHECK_SENTENCE =
  'Both bars must measure 150 mm. If not, do not cut: print again at actual size (100 %), or give the two lengths and print the corrected pages.';

/** One orientation of a paper: the whole page, and the window that is left for pieces. */
export interface SheetFrame {
  readonly landscape: boolean;
  readonly widthMm: number;
  readonly heightMm: number;
  /** All that may be printed on. */
  readonly printable: Box<'page'>;
  readonly window: Box<'page'>;
}

/**
 * The page of a paper, upright or lying. Where the printer draws small, pages are written larger, so the
 * printable part shrinks by the same scale.
 */
export function sheetFrame(
  paper: PaperName,
  landscape: boolean,
  scale: { readonly x: number; readonly y: number },
): SheetFrame {
  const upright = PAPERS[paper];
  const widthMm = landscape ? upright.heightMm : upright.widthMm;
  const heightMm = landscape ? upright.widthMm : upright.heightMm;
  const halfWidth = (widthMm / 2 - UNPRINTABLE_MM) / Math.max(1, scale.x);
  const halfHeight = (heightMm / 2 - UNPRINTABLE_MM) / Math.max(1, scale.y);
  const printable: Box<'page'> = {
    min: { x: widthMm / 2 - halfWidth, y: heightMm / 2 - halfHeight },
    max: { x: widthMm / 2 + halfWidth, y: heightMm / 2 + halfHeight },
  };
  return {
    landscape,
    widthMm,
    heightMm,
    printable,
    window: { min: { x: printable.min.x + SIDE_MM, y: printable.min.y + FOOT_MM }, max: printable.max },
  };
}

/** The two check bars of a page, which share their corner: a ruler along the foot and one up the side. */
export function checkBars(frame: SheetFrame): { readonly lines: PageLine[]; readonly texts: PageText[] } {
  const corner = { x: frame.printable.min.x + BAR_INSET_MM, y: frame.printable.min.y + BAR_INSET_MM };
  const lines: PageLine[] = [
    bar([
      [corner.x, corner.y],
      [corner.x + CHECK_BAR_MM, corner.y],
    ]),
    bar([
      [corner.x, corner.y],
      [corner.x, corner.y + CHECK_BAR_MM],
    ]),
  ];
  for (let mm = 5; mm <= CHECK_BAR_MM; mm += 5) {
    const tick = mm % 50 === 0 ? 4 : mm % 10 === 0 ? 2.5 : 1.5;
    lines.push(
      bar([
        [corner.x + mm, corner.y],
        [corner.x + mm, corner.y + tick],
      ]),
    );
    lines.push(
      bar([
        [corner.x, corner.y + mm],
        [corner.x + tick, corner.y + mm],
      ]),
    );
  }
  const numbers = [50, 100, CHECK_BAR_MM].flatMap((mm): PageText[] => {
    const text = mm === CHECK_BAR_MM ? `${mm} mm` : `${mm}`;
    return [
      { ...smallText(text, corner.x + mm - 0.8, corner.y + 2.2), anchor: 'end' },
      { ...smallText(text, corner.x + 3.9, corner.y + mm - 0.8), anchor: 'end', turnRad: Math.PI / 2 },
    ];
  });
  return { lines, texts: numbers };
}

/** What a foot depends on: the printer that pages are corrected for, and their language. */
interface FootOptions {
  readonly printer?: PrinterMeasure;
  readonly say?: (text: string) => string;
}

/** Title, page number and what to do about the bars, between the ruler and the pieces. */
export function footText(
  frame: SheetFrame,
  title: string,
  pageText: string,
  { printer, say = (text) => text }: FootOptions,
): PageText[] {
  const left = frame.window.min.x;
  const foot = frame.printable.min.y + BAR_INSET_MM;
  const corrected =
    printer === undefined
      ? ''
      : say(
          `Corrected for a printer that drew the bars ${printer.xMeasuredMm} mm across and ${printer.yMeasuredMm} mm up.`,
        );
  const texts: PageText[] = [
    { ...smallText(say(CHECK_SENTENCE), left, foot + 7.2), tone: 'black' },
    { ...smallText(title, left, foot + 12), sizeMm: TITLE_MM, bold: true, tone: 'black' },
    { ...smallText(pageText, frame.window.max.x, foot + 12), anchor: 'end' },
  ];
  if (corrected !== '')
    texts.push({ ...smallText(corrected, frame.window.max.x, foot + 15.6), anchor: 'end', tone: 'black' });
  return texts;
}

export function smallText(text: string, x: number, y: number): PageText {
  return {
    text,
    at: { x, y },
    sizeMm: TEXT_MM,
    tone: 'grey',
    bold: false,
    anchor: 'start',
    turnRad: 0,
  };
}

export function polyline(points: readonly (readonly [number, number])[], closed = false): Chain<'page'> {
  return { closed, vertices: points.map(([x, y]) => ({ x, y, bulge: 0 })) };
}

function bar(points: readonly (readonly [number, number])[]): PageLine {
  return { pen: 'bar', chain: polyline(points) };
}
