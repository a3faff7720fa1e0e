import { accept, type Box, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { coverPages } from './coverPages.ts';
import type { Drawing } from './drawing.ts';
import { boxAround, printedChains } from './drawingExtent.ts';
import { letteringFindings } from './lettering.ts';
import { isMarginCharacter } from './marginText.ts';
import { CHECK_BAR_MM, type Page, type PageSet, type PrinterMeasure } from './page.ts';
import { inEnglish, type PageGroup, type PageOptions, type Piece } from './pageGroup.ts';
import { sharedPages } from './sharedPages.ts';
import { type SheetFrame, sheetFrame } from './sheetFrame.ts';
import { tiledPages } from './tiledPages.ts';

/** A printer further off than this is not misadjusted but set to fit the page: the cure is the setting. */
const LARGEST_PRINTER_ERROR = 0.15;

/**
 * The pages that print every drawing at true size on one paper: a cover with the map and the list of pieces, then
 * the pages. Drawings that fit a page share pages, larger ones are tiled; each way of laying the paper is tried
 * and the one with the fewest pages taken. Every page carries check bars both ways.
 *
 * Faults: `pages.nothing` (no drawing has a line), `pages.not-finite` (a coordinate is no number),
 * `pages.printer` (the measured bars are more than 15 % off).
 */
export function layoutPages(drawings: readonly Drawing[], options: PageOptions): Checked<PageSet> {
  const faults = [...printerFaults(options.printer), ...drawings.flatMap(notFinite)];
  if (faults.length > 0) return refuse(...faults);
  const pieces = drawings.flatMap((drawing, index): Piece[] => {
    const box = boxAround(printedChains(drawing));
    return box === null ? [] : [{ number: index + 1, drawing, box }];
  });
  if (pieces.length === 0) return refuse(nothingToPrint());
  const scale = printerScale(options.printer);
  const frames = [false, true].map((landscape) => sheetFrame(options.paper, landscape, scale));
  const { groups, tooLarge } = sharedPages(pieces, frames, options.say ?? inEnglish);
  const all = [
    ...tooLarge.map((piece) => tiledPages(piece, frames, options.say ?? inEnglish)),
    ...groups,
  ].sort(byFirstPiece);
  return accept({
    title: options.title,
    paper: options.paper,
    pages: coverPages(all, frames[0] as SheetFrame, options),
    scale,
    findings: textFindings(drawings, options.title),
  });
}

/**
 * One drawing that is the whole sheet, such as the calibration sheet: its origin is the lower left corner of the
 * paper, it lies as it is larger, and it brings its own bars. Faults as {@link layoutPages}.
 */
export function layoutWholeSheet(drawing: Drawing, options: PageOptions): Checked<PageSet> {
  const faults = [...printerFaults(options.printer), ...notFinite(drawing)];
  if (faults.length > 0) return refuse(...faults);
  const box = boxAround(printedChains(drawing));
  if (box === null) return refuse(nothingToPrint());
  const scale = printerScale(options.printer);
  const frame = sheetFrame(options.paper, box.max.x - box.min.x > box.max.y - box.min.y, scale);
  const { widthMm, heightMm } = frame;
  const window: Box<'page'> = { min: { x: 0, y: 0 }, max: { x: widthMm, y: heightMm } };
  const page: Page = {
    number: 1,
    title: drawing.title,
    widthMm,
    heightMm,
    placements: [{ drawing, turnRad: 0, shift: { x: 0, y: 0 }, window }],
    lines: [],
    texts: [],
  };
  return accept({
    title: options.title,
    paper: options.paper,
    pages: [page],
    scale,
    findings: textFindings([drawing], options.title),
  });
}

function printerScale(printer: PrinterMeasure | undefined): { readonly x: number; readonly y: number } {
  if (printer === undefined) return { x: 1, y: 1 };
  return { x: CHECK_BAR_MM / printer.xMeasuredMm, y: CHECK_BAR_MM / printer.yMeasuredMm };
}

function byFirstPiece(a: PageGroup, b: PageGroup): number {
  return (a.pieces[0]?.number ?? 0) - (b.pieces[0]?.number ?? 0);
}

function printerFaults(printer: PrinterMeasure | undefined): Fault[] {
  if (printer === undefined) return [];
  const measured = [
    ['the bar across', printer.xMeasuredMm],
    ['the upright bar', printer.yMeasuredMm],
  ] as const;
  return measured
    .filter(([, mm]) => !(Math.abs(mm / CHECK_BAR_MM - 1) <= LARGEST_PRINTER_ERROR))
    .map(([at, mm]) => ({
      code: 'pages.printer',
      at,
      found: `${mm} mm where the sheet says ${CHECK_BAR_MM} mm`,
      need: 'a length within 15 % of it',
      remedy: 'print at actual size (100 %) with no fitting to the page, and measure again',
    }));
}

function textFindings(drawings: readonly Drawing[], title: string): Finding[] {
  const margins = [title, ...drawings.flatMap((drawing) => [drawing.title, ...drawing.notes])];
  const lost = margins.flatMap((text) => {
    const characters = [...text.normalize('NFC')].filter((one) => !isMarginCharacter(one) && !/\s/.test(one));
    return characters.slice(0, 1).map((character) => ({ text, character }));
  });
  return [
    ...letteringFindings(drawings.flatMap((drawing) => drawing.lettering)),
    ...lost.map(({ text, character }) => ({
      code: 'pages.unknown-character',
      weight: 'remark' as const,
      at: text,
      found: `the character "${character}", which the type in the margins does not hold`,
      need: 'letters of western Europe and common signs',
      remedy: 'it prints without its accent or as a question mark; nothing on the piece changes',
    })),
  ];
}

function nothingToPrint(): Fault {
  return {
    code: 'pages.nothing',
    at: 'the drawings',
    found: 'no line to print',
    need: 'at least one drawing with a line',
    remedy: 'choose other parts',
  };
}

function notFinite(drawing: Drawing): Fault[] {
  const odd = printedChains(drawing).some((chain) =>
    chain.vertices.some((vertex) => !Number.isFinite(vertex.x + vertex.y + vertex.bulge)),
  );
  if (!odd) return [];
  return [
    {
      code: 'pages.not-finite',
      at: drawing.title,
      found: 'a coordinate that is not a number',
      need: 'finite millimetres',
      remedy: 'check the values that this piece is drawn from',
    },
  ];
}
