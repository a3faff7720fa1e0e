import { type Point, point } from '../base/index.ts';
import { CARDS_ON_A_PAGE, heightCard, SHEET_BAR_MM, type SheetBar } from '../photo/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { PAPERS, type PaperName } from './paper.ts';
import { barChains } from './sheetDrawing.ts';
import { boxChain, patternChains } from './sheetDrawingPattern.ts';

/** mm. From the paper's edges to the lines of words and the bars, beyond where home printers stop printing. */
const EDGE_MM = 9;
/** mm. Between the cards, to cut between. */
const BETWEEN_MM = 14;
const LETTER_MM = 2;
const LINE_MM = 4;
const SMALL_LETTER_MM = 1.6;

/** What stands at the head of the page of cards, line by line. */
const HOW_TO = [
  'Print at 100 %, not fitted to the page. Glue the page to stiff board, then cut along the lines.',
  'Glue each card flat on a block, and pack the block up until the card stands level with the edge of the plate',
  'that faces the camera: lay a straightedge across both. Set two or more cards round the body, printed side up,',
  'beside the calibration sheet and not over its squares. No two cards of one number in one photograph.',
];

/**
 * A page of four height cards, one drawing as large as the paper, which lies; origin the paper's lower left corner. Page 1
 * bears cards 1 to 4, page 2 cards 5 to 8. Cut lines have the meaning `cut`; two bars tell what the printer did.
 */
export function cardsDrawing(paper: PaperName, page: number): Drawing {
  const { widthMm, heightMm } = { widthMm: PAPERS[paper].heightMm, heightMm: PAPERS[paper].widthMm };
  const numbers = Array.from(
    { length: CARDS_ON_A_PAGE },
    (_, place) => (page - 1) * CARDS_ON_A_PAGE + place + 1,
  );
  const placed = numbers.map((number, place) => ({
    card: heightCard(number),
    corner: cardCorner(place, widthMm),
  }));
  const bars = pageBars();
  return {
    name: `height-cards-${paper.toLowerCase()}${page === 1 ? '' : `-${page}`}`,
    title: `Height cards ${numbers[0]} to ${numbers[numbers.length - 1]}`,
    part: 'sheet',
    lines: placed.map(
      ({ card, corner }): DrawnLine => ({
        meaning: 'cut',
        chain: boxChain({
          min: corner,
          max: point(corner.x + card.widthMm, corner.y + card.heightMm),
        }),
      }),
    ),
    lettering: [
      ...HOW_TO.map((text, line) =>
        words(text, point(EDGE_MM, heightMm - EDGE_MM - LETTER_MM - line * LINE_MM)),
      ),
      words(`Both bars: ${SHEET_BAR_MM} mm. If not, tell trace what they measure.`, barWords(bars.x)),
      ...placed.flatMap(({ card, corner }) => cardWords(card.number, corner, card)),
    ],
    filled: [
      ...placed.flatMap(({ card, corner }) => patternChains(card, corner)),
      ...barChains(bars.x),
      ...barChains(bars.y),
    ],
    notes: [],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'check bar along the long side', valueMm: SHEET_BAR_MM },
      { name: 'check bar along the short side', valueMm: SHEET_BAR_MM },
    ],
  };
}

/** Two by two, in the middle of the paper's width, over the lower bar. */
function cardCorner(place: number, widthMm: number): Point<'drawing'> {
  const card = heightCard(1);
  const left = (widthMm - 2 * card.widthMm - BETWEEN_MM) / 2;
  const lower = EDGE_MM + BETWEEN_MM;
  return point(
    left + (place % 2) * (card.widthMm + BETWEEN_MM),
    lower + (1 - Math.floor(place / 2)) * (card.heightMm + BETWEEN_MM),
  );
}

function pageBars(): { readonly x: SheetBar; readonly y: SheetBar } {
  const from = point<'sheet'>(EDGE_MM, EDGE_MM);
  return {
    x: { from, to: point(EDGE_MM + SHEET_BAR_MM, EDGE_MM) },
    y: { from, to: point(EDGE_MM, EDGE_MM + SHEET_BAR_MM) },
  };
}

function barWords({ to }: SheetBar): Point<'drawing'> {
  return point(to.x + 2.5, to.y - LETTER_MM * 0.4);
}

function cardWords(
  number: number,
  corner: Point<'drawing'>,
  card: { readonly widthMm: number; readonly heightMm: number },
): readonly Lettering[] {
  const middle = corner.x + card.widthMm / 2;
  const line = (text: string, up: number): Lettering => ({
    text,
    at: point(middle, corner.y + up),
    heightMm: SMALL_LETTER_MM,
    turnRad: 0,
    anchor: 'middle',
  });
  return [
    line(`Height card ${number}`, card.heightMm - 4.2),
    line('glue on a block, level with the edge of the plate', 2.6),
  ];
}

function words(text: string, at: Point<'drawing'>): Lettering {
  return { text, at, heightMm: LETTER_MM, turnRad: 0, anchor: 'start' };
}
