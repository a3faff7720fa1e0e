import { expect, test } from 'vitest';
import { areaOf, boundsOf } from '../curve/index.ts';
import { heightCard } from '../photo/index.ts';
import { letteringFindings, letteringStrokes } from './lettering.ts';
import { PAPERS } from './paper.ts';
import { cardsDrawing } from './sheetDrawingCards.ts';

const pages = (['A4', 'Letter'] as const).flatMap((paper) =>
  [1, 2].map((page) => [`${paper} page ${page}`, paper, cardsDrawing(paper, page)] as const),
);

test.each(pages)(
  'the %s of cards has four to cut, 66 by 44 mm, none over another',
  (_name, _paper, drawing) => {
    const cuts = drawing.lines.filter(({ meaning }) => meaning === 'cut').map(({ chain }) => boundsOf(chain));
    expect(cuts.length).toBe(4);
    for (const { min, max } of cuts) {
      expect(max.x - min.x).toBeCloseTo(66, 9);
      expect(max.y - min.y).toBeCloseTo(44, 9);
    }
    for (const [place, one] of cuts.entries())
      for (const other of cuts.slice(place + 1)) {
        const apartX = Math.max(one.min.x, other.min.x) - Math.min(one.max.x, other.max.x);
        const apartY = Math.max(one.min.y, other.min.y) - Math.min(one.max.y, other.max.y);
        expect(Math.max(apartX, apartY)).toBeGreaterThan(10);
      }
  },
);

test.each(pages)('ink and words of the %s stay where home printers print', (_name, paper, drawing) => {
  const [widthMm, heightMm] = [PAPERS[paper].heightMm, PAPERS[paper].widthMm];
  expect(letteringFindings(drawing.lettering)).toEqual([]);
  const chains = [...(drawing.filled ?? []), ...drawing.lettering.flatMap(letteringStrokes)];
  for (const { min, max } of chains.map((chain) => boundsOf(chain))) {
    expect(Math.min(min.x, min.y)).toBeGreaterThan(4.2);
    expect(max.x).toBeLessThan(widthMm - 4.2);
    expect(max.y).toBeLessThan(heightMm - 4.2);
  }
});

test.each(pages)(
  'every card of the %s bears all its squares and codes, and its number',
  (_name, _paper, drawing) => {
    const numbers = drawing.lettering.flatMap(({ text }) => /^Height card (\d)$/.exec(text)?.[1] ?? []);
    const first = Number(numbers[0]);
    expect(numbers.map(Number)).toEqual([first, first + 1, first + 2, first + 3]);
    const cuts = drawing.lines.map(({ chain }) => boundsOf(chain));
    for (const [place, cut] of cuts.entries()) {
      const inside = (drawing.filled ?? [])
        .map((chain) => ({ ...boundsOf(chain), area: areaOf(chain) }))
        .filter(
          ({ min, max }) => min.x > cut.min.x && max.x < cut.max.x && min.y > cut.min.y && max.y < cut.max.y,
        );
      const whole = inside.filter(({ area }) => Math.abs(area - 100) < 1e-9);
      expect(whole.length).toBe(heightCard(first + place).blackSquares.length);
      expect(inside.length).toBeGreaterThan(whole.length + 5 * 4);
      const named = drawing.lettering.find(({ text }) => text === `Height card ${first + place}`);
      expect(named!.at.x > cut.min.x && named!.at.x < cut.max.x).toBe(true);
      expect(named!.at.y > cut.min.y && named!.at.y < cut.max.y).toBe(true);
    }
  },
);

test('both bars of a page of cards are 150 mm, and clear of the cards', () => {
  const drawing = cardsDrawing('A4', 1);
  const boxes = (drawing.filled ?? []).map((chain) => boundsOf(chain));
  const level = boxes.filter(({ min, max }) => Math.abs(max.x - min.x - 150) < 1e-9);
  const upright = boxes.filter(({ min, max }) => Math.abs(max.y - min.y - 150) < 1e-9);
  expect([level.length, upright.length]).toEqual([1, 1]);
  for (const { chain } of drawing.lines) {
    const { min } = boundsOf(chain);
    expect(min.y).toBeGreaterThan(level[0]!.max.y);
    expect(min.x).toBeGreaterThan(upright[0]!.max.x);
  }
});

test('the page tells the maker how to print, mount and lay the cards', () => {
  const words = cardsDrawing('A4', 2)
    .lettering.map(({ text }) => text)
    .join(' ');
  for (const said of [
    'Print at 100 %',
    'Glue',
    'level with the edge of the plate',
    'two or more cards',
    'No two cards of one number',
    'Both bars: 150 mm. If not, tell trace what they measure.',
  ])
    expect(words).toContain(said);
});

test('pages are told apart by their names and by the numbers of their cards', () => {
  expect([1, 2].map((page) => cardsDrawing('A4', page)).map(({ name, title }) => [name, title])).toEqual([
    ['height-cards-a4', 'Height cards 1 to 4'],
    ['height-cards-a4-2', 'Height cards 5 to 8'],
  ]);
});
