import type { Box, Finding, Point } from '../base/index.ts';
import { type Chain, placeChain } from '../curve/index.ts';
import type { Drawing, Meaning } from './drawing.ts';
import type { PaperName } from './paper.ts';

/** What a line of the page itself is for, as against the lines of the pieces on it; meanings stand in the legend only. */
export type PagePen = Meaning | 'bar' | 'mark' | 'trim' | 'rule' | 'map';

export interface PageLine {
  readonly pen: PagePen;
  readonly chain: Chain<'page'>;
}

/** Margin text in the page's own type; `sizeMm` is the size of the type, about 1.4 times its capitals. */
export interface PageText {
  readonly text: string;
  readonly at: Point<'page'>;
  readonly sizeMm: number;
  readonly tone: 'black' | 'grey';
  readonly bold: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turnRad: number;
}

/** A drawing laid on a page at true size: turned about its origin, then shifted; only what lies in `window` shows. */
export interface PlacedDrawing {
  readonly drawing: Drawing;
  readonly turnRad: number;
  readonly shift: Point<'page'>;
  readonly window: Box<'page'>;
}

/** A sheet of paper, true millimetres as they must stand on the printed sheet. */
export interface Page {
  readonly number: number;
  readonly title: string;
  /** Row letter and column number of a tile, such as B2. */
  readonly tile?: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly placements: readonly PlacedDrawing[];
  readonly lines: readonly PageLine[];
  readonly texts: readonly PageText[];
}

/** What a maker measured on the two bars that should be {@link CHECK_BAR_MM} long. */
export interface PrinterMeasure {
  readonly xMeasuredMm: number;
  readonly yMeasuredMm: number;
}

/** The pages of one print file. `scale` is what a writer multiplies by, about the page's middle, to undo the printer's error. */
export interface PageSet {
  readonly title: string;
  readonly paper: PaperName;
  readonly pages: readonly Page[];
  readonly scale: { readonly x: number; readonly y: number };
  readonly findings: readonly Finding[];
}

/** mm. Length of the bars on every page: the longest round length that fits every paper both ways. */
export const CHECK_BAR_MM = 150;

/** A chain of a placed drawing, on its page. */
export function placedChain(placed: PlacedDrawing, chain: Chain<'drawing'>): Chain<'page'> {
  return placeChain(chain, { turnRad: placed.turnRad, shift: [placed.shift.x, placed.shift.y] });
}
