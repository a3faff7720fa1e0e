import { pieceSizeMm } from './drawingExtent.ts';
import type { Page, PageLine, PageText } from './page.ts';
import { breakBlocks, moveBlock, type PageBlock, stackBlocks, textBlock } from './pageBlock.ts';
import type { PageGroup, PageOptions, Piece } from './pageGroup.ts';
import { type NumberedGroup, pageMap } from './pageMap.ts';
import { checkBars, footText, polyline, type SheetFrame, smallText } from './sheetFrame.ts';

const TITLE = { sizeMm: 7, tone: 'black', bold: true } as const;
const HEADING = { sizeMm: 3.6, tone: 'black', bold: true } as const;
const BODY = { sizeMm: 3, tone: 'black', bold: false } as const;
const NOTE = { sizeMm: 2.6, tone: 'grey', bold: false } as const;
const INDENT_MM = 6;
const MAP_SHARE = 0.45;

const STEPS = [
  'Print at actual size (100 %), with no fitting to the page.',
  'Measure both bars on every page before you trim it: each must be 150 mm between its end lines, to a quarter of a millimetre.',
  'Trim tiled pages along the dashed line at their left and at their foot. Lay each over its left and its lower neighbour so that the crosses meet, seen against the light or pricked through, and tape them.',
  'Glue the sheet to card, plywood or sheet metal, and cut on the line. Cut away from the hand; with a saw, router or laser keep to its manual and guard eyes, ears and lungs.',
];

const LEGEND = [
  ['cut', 'cut'],
  ['score', 'score, do not cut through'],
  ['draw', 'for reference'],
  ['trim', 'trim the paper'],
] as const;

/** All pages in order with numbers, titles and check bars: first the cover, with the map and the list of pieces. */
export function coverPages(groups: readonly PageGroup[], frame: SheetFrame, options: PageOptions): Page[] {
  const room = {
    widthMm: frame.window.max.x - frame.window.min.x,
    heightMm: frame.window.max.y - frame.window.min.y,
  };
  // How many covers there are moves the page numbers, not the other way round: one rebuild settles it.
  const guess = coverColumns(groups, 1, room, options).length;
  const covers = coverColumns(groups, guess, room, options);
  const total = covers.length + groups.reduce((sum, group) => sum + group.pages.length, 0);
  const pageText = (number: number, tile?: string): string =>
    `${tile === undefined ? '' : `tile ${tile}  ·  `}page ${number} of ${total}`;
  const coverSheets = covers.map((column, index): Page => {
    const placed = moveBlock(column, frame.window.min.x, frame.window.max.y);
    const title = index === 0 ? 'Map and pieces' : 'Pieces, continued';
    return finished(
      { frame, title, placements: [], lines: placed.lines, texts: placed.texts },
      index + 1,
      pageText(index + 1),
      options,
    );
  });
  const drafts = groups.flatMap((group) => group.pages);
  const sheets = drafts.map((draft, index) => {
    const number = covers.length + index + 1;
    return finished(draft, number, pageText(number, draft.tile), options);
  });
  return [...coverSheets, ...sheets];
}

function finished(
  draft: PageGroup['pages'][number],
  number: number,
  pageText: string,
  options: PageOptions,
): Page {
  const { frame, title, tile } = draft;
  const bars = checkBars(frame);
  return {
    number,
    title,
    ...(tile === undefined ? {} : { tile }),
    widthMm: frame.widthMm,
    heightMm: frame.heightMm,
    placements: draft.placements,
    lines: [...draft.lines, ...bars.lines],
    texts: [...draft.texts, ...bars.texts, ...footText(frame, title, pageText, options.printer)],
  };
}

function coverColumns(
  groups: readonly PageGroup[],
  covers: number,
  room: { readonly widthMm: number; readonly heightMm: number },
  options: PageOptions,
): PageBlock[] {
  const { widthMm } = room;
  let next = covers + 1;
  const numbered = groups.map((group): NumberedGroup => {
    const firstPage = next;
    next += group.pages.length;
    return { group, firstPage };
  });
  const printed = next - 1;
  const subtitle = `Templates at true size  ·  ${options.paper}  ·  ${printed} pages`;
  return breakBlocks(
    [
      textBlock(options.title, TITLE, widthMm, 0, 0.5),
      textBlock(subtitle, { ...BODY, tone: 'grey' }, widthMm, 0, 5),
      ...STEPS.map((step, index) => numberedStep(index + 1, step, widthMm)),
      space(1.5),
      legend(),
      space(4),
      withHeading('Map', pageMap(numbered, widthMm, room.heightMm * MAP_SHARE), widthMm),
      ...pieceList(numbered, widthMm),
    ],
    room.heightMm,
  );
}

function numberedStep(number: number, step: string, widthMm: number): PageBlock {
  const words = textBlock(step, BODY, widthMm, INDENT_MM, 1.2);
  const figure = textBlock(`${number}`, { ...BODY, bold: true }, widthMm);
  return { ...words, texts: [...words.texts, ...figure.texts] };
}

function legend(): PageBlock {
  let x = INDENT_MM;
  const lines: PageLine[] = [];
  const texts: PageText[] = [];
  for (const [pen, words] of LEGEND) {
    lines.push({
      pen,
      chain: polyline([
        [x, -2.2],
        [x + 12, -2.2],
      ]),
    });
    texts.push(smallText(words, x + 14, -3));
    x += 14 + 3 + words.length * 1.25 + 6;
  }
  return { heightMm: 4, lines, texts };
}

function withHeading(heading: string, rows: readonly PageBlock[], widthMm: number): PageBlock {
  return stackBlocks([textBlock(heading, HEADING, widthMm, 0, 2), ...rows]);
}

function pieceList(groups: readonly NumberedGroup[], widthMm: number): PageBlock[] {
  const rows = groups
    .flatMap(({ group, firstPage }) =>
      group.pieces.map((piece) => ({ piece, firstPage, lastPage: firstPage + group.pages.length - 1 })),
    )
    .sort((a, b) => a.piece.number - b.piece.number)
    .map(({ piece, firstPage, lastPage }) => pieceRow(piece, firstPage, lastPage, widthMm));
  const [first, ...rest] = rows;
  return first === undefined ? [] : [withHeading('Pieces', [first], widthMm), ...rest];
}

function pieceRow(piece: Piece, firstPage: number, lastPage: number, widthMm: number): PageBlock {
  const { drawing } = piece;
  const size = pieceSizeMm(drawing);
  const columns = { size: widthMm - 72, make: widthMm - 32, page: widthMm };
  const title = textBlock(drawing.title, BODY, columns.size - 4, INDENT_MM, 0.6);
  const cell = (text: string, x: number, anchor: 'start' | 'end'): PageText => ({
    ...smallText(text, x, -BODY.sizeMm),
    sizeMm: BODY.sizeMm,
    tone: 'black',
    anchor,
  });
  const pages = firstPage === lastPage ? `page ${firstPage}` : `pages ${firstPage}–${lastPage}`;
  const head: PageBlock = {
    heightMm: title.heightMm,
    lines: [],
    texts: [
      { ...cell(`${piece.number}`, 0, 'start'), bold: true },
      ...title.texts,
      cell(`${size.widthMm.toFixed(1)} × ${size.heightMm.toFixed(1)} mm`, columns.size, 'start'),
      cell(`make ${drawing.count}`, columns.make, 'start'),
      cell(pages, columns.page, 'end'),
    ],
  };
  const notes = drawing.notes.map((note) => textBlock(note, NOTE, widthMm, INDENT_MM));
  const rule: PageBlock = {
    heightMm: 1.6,
    lines: [
      {
        pen: 'rule',
        chain: polyline([
          [0, -0.6],
          [widthMm, -0.6],
        ]),
      },
    ],
    texts: [],
  };
  return stackBlocks([head, ...notes, rule]);
}

function space(heightMm: number): PageBlock {
  return { heightMm, lines: [], texts: [] };
}
