import { BODY, INDENT_MM, withHeading } from './coverText.ts';
import type { Page, PageLine, PageText } from './page.ts';
import { breakBlocks, moveBlock, type PageBlock, textBlock } from './pageBlock.ts';
import { inEnglish, type PageGroup, type PageOptions, type Say } from './pageGroup.ts';
import { type NumberedGroup, pageMap } from './pageMap.ts';
import { pieceList } from './pieceList.ts';
import { checkBars, footText, polyline, type SheetFrame, smallText } from './sheetFrame.ts';

const TITLE = { sizeMm: 7, tone: 'black', bold: true } as const;
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
  const { say = inEnglish } = options;
  const room = {
    widthMm: frame.window.max.x - frame.window.min.x,
    heightMm: frame.window.max.y - frame.window.min.y,
  };
  // How many covers there are moves the page numbers, not the other way round: one rebuild settles it.
  const guess = coverColumns(groups, 1, room, options).length;
  const covers = coverColumns(groups, guess, room, options);
  const total = covers.length + groups.reduce((sum, group) => sum + group.pages.length, 0);
  const pageText = (number: number, tile?: string): string =>
    `${tile === undefined ? '' : `${say(`tile ${tile}`)}  ·  `}${say(`page ${number} of ${total}`)}`;
  const coverSheets = covers.map((column, index): Page => {
    const placed = moveBlock(column, frame.window.min.x, frame.window.max.y);
    const title = say(index === 0 ? 'Map and pieces' : 'Map and pieces, continued');
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
    texts: [...draft.texts, ...bars.texts, ...footText(frame, title, pageText, options)],
  };
}

function coverColumns(
  groups: readonly PageGroup[],
  covers: number,
  room: { readonly widthMm: number; readonly heightMm: number },
  options: PageOptions,
): PageBlock[] {
  const { widthMm } = room;
  const { say = inEnglish } = options;
  let next = covers + 1;
  const numbered = groups.map((group): NumberedGroup => {
    const firstPage = next;
    next += group.pages.length;
    return { group, firstPage };
  });
  const printed = next - 1;
  const subtitle = `${say('Templates at true size')}  ·  ${options.paper}  ·  ${say(`${printed} pages`)}`;
  return breakBlocks(
    [
      textBlock(options.title, TITLE, widthMm, 0, 0.5),
      textBlock(subtitle, { ...BODY, tone: 'grey' }, widthMm, 0, 5),
      ...STEPS.map((step, index) => numberedStep(index + 1, say(step), widthMm)),
      space(1.5),
      legend(say),
      space(4),
      ...withHeading(say('Map'), pageMap(numbered, widthMm, room.heightMm * MAP_SHARE, say), widthMm),
      ...pieceList(numbered, widthMm, say),
    ],
    room.heightMm,
  );
}

function numberedStep(number: number, step: string, widthMm: number): PageBlock {
  const words = textBlock(step, BODY, widthMm, INDENT_MM, 1.2);
  const figure = textBlock(`${number}`, { ...BODY, bold: true }, widthMm);
  return { ...words, texts: [...words.texts, ...figure.texts] };
}

function legend(say: Say): PageBlock {
  let x = INDENT_MM;
  const lines: PageLine[] = [];
  const texts: PageText[] = [];
  for (const [pen, means] of LEGEND) {
    const words = say(means);
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

function space(heightMm: number): PageBlock {
  return { heightMm, lines: [], texts: [] };
}
