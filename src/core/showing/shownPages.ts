import {
  type DrawnLine,
  letteringStrokes,
  marginTextWidthMm,
  type Page,
  type PagePen,
  type PageSet,
  type PlacedDrawing,
  placedChain,
} from '../drawing/index.ts';
import { svgPath } from '../files/index.ts';

/** How a line of a page is drawn: what it means on a piece, or what it is on the page itself. */
export type SheetPen = PagePen | 'centre' | 'text';

/** All lines of one pen, as the `d` of one SVG path. */
export interface SheetInk {
  readonly pen: SheetPen;
  readonly path: string;
}

/** A sheet of paper as it prints: true millimetres, y down from its upper edge. */
export interface ShownPage {
  readonly number: number;
  readonly title: string;
  /** Row letter and column number of a tile, such as B2. */
  readonly tile?: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Pieces; only what lies in the window (x, y, width, height) of each shows. */
  readonly pieces: readonly {
    readonly name: string;
    readonly window: readonly [number, number, number, number];
    readonly ink: readonly SheetInk[];
  }[];
  /** Bars, marks and rules of the page itself. */
  readonly own: readonly SheetInk[];
  readonly texts: readonly {
    readonly text: string;
    readonly at: readonly [number, number];
    readonly sizeMm: number;
    /** How wide it prints, whatever letters the one who looks at it has. */
    readonly widthMm: number;
    readonly isBold: boolean;
    readonly isGrey: boolean;
    readonly anchor: 'start' | 'middle' | 'end';
    readonly turnRad: number;
  }[];
}

/** The pages of a print file, in order; `scale` is what the printer's own error is undone by, across and up. */
export interface ShownPages {
  readonly pages: readonly ShownPage[];
  readonly scale: { readonly x: number; readonly y: number };
}

/** Every page to be looked at before it is printed: the same pages that are written. */
export function shownPages({ pages, scale }: PageSet): ShownPages {
  return { pages: pages.map(shownPage), scale };
}

function shownPage({ number, title, tile, widthMm, heightMm, placements, lines, texts }: Page): ShownPage {
  return {
    number,
    title,
    ...(tile !== undefined && { tile }),
    widthMm,
    heightMm,
    pieces: placements.map((placed) => {
      const { min, max } = placed.window;
      return {
        name: placed.drawing.name,
        window: [min.x, heightMm - max.y, max.x - min.x, max.y - min.y] as const,
        ink: pieceInk(placed, heightMm),
      };
    }),
    own: inked(lines.map(({ pen, chain }) => [pen, svgPath(chain, 0, heightMm)] as const)),
    texts: texts.map(({ text, at, sizeMm, tone, bold, anchor, turnRad }) => ({
      text,
      at: [at.x, heightMm - at.y] as const,
      sizeMm,
      widthMm: marginTextWidthMm(text, sizeMm, bold),
      isBold: bold,
      isGrey: tone === 'grey',
      anchor,
      turnRad,
    })),
  };
}

function pieceInk(placed: PlacedDrawing, heightMm: number): readonly SheetInk[] {
  const { drawing } = placed;
  const pathOf = (chain: Parameters<typeof placedChain>[1]) =>
    svgPath(placedChain(placed, chain), 0, heightMm);
  return inked([
    ...drawing.lines.map((line) => [penOf(line), pathOf(line.chain)] as const),
    ...drawing.lettering.flatMap((lettering) =>
      letteringStrokes(lettering).map((chain) => ['text', pathOf(chain)] as const),
    ),
  ]);
}

function penOf({ meaning, centreLine }: DrawnLine): SheetPen {
  return centreLine === true ? 'centre' : meaning;
}

function inked(lines: readonly (readonly [SheetPen, string])[]): readonly SheetInk[] {
  const paths = new Map<SheetPen, string[]>();
  for (const [pen, path] of lines) {
    const parts = paths.get(pen);
    if (parts) parts.push(path);
    else paths.set(pen, [path]);
  }
  return [...paths].map(([pen, parts]) => ({ pen, path: parts.join('') }));
}
