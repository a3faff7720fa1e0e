import { expect, test } from 'vitest';
import { distanceBetween } from '../../base/index.ts';
import { markerCellIsWhite } from '../../knowledge/index.ts';
import { calibrationSheet } from './calibrationSheet.ts';
import { CARD_NUMBERS, heightCard } from './heightCard.ts';
import { blackBoxesOfMarker } from './markerBoxes.ts';
import { markerOwners } from './markerOwner.ts';
import { SHEET_PAPERS, sheetNumbers } from './sheetPlans.ts';

const sheets = SHEET_PAPERS.flatMap((paper) =>
  sheetNumbers(paper).map(
    (number) => [`${paper} number ${number}`, calibrationSheet(paper, number)] as const,
  ),
);
const cards = CARD_NUMBERS.map((number) => [`card ${number}`, heightCard(number)] as const);

test.each(sheets)('%s keeps a margin of 7.5 mm or more round the band', (_paper, sheet) => {
  const { min, max } = sheet.band;
  for (const margin of [min.x, min.y, sheet.widthMm - max.x, sheet.heightMm - max.y])
    expect(margin).toBeGreaterThanOrEqual(7.5 - 1e-9);
  expect(min.x).toBeCloseTo(sheet.widthMm - max.x, 9);
  expect(min.y).toBeCloseTo(sheet.heightMm - max.y, 9);
});

test.each(sheets)('%s has bars of 150 mm on the paper, outside the band', (_paper, sheet) => {
  for (const bar of [sheet.bars.x, sheet.bars.y]) {
    expect(distanceBetween(bar.from, bar.to)).toBeCloseTo(150, 9);
    expect(Math.max(bar.to.x, 0)).toBeLessThan(sheet.widthMm);
    expect(bar.to.y).toBeLessThan(sheet.heightMm);
  }
  expect(sheet.bars.x.from.y).toBeLessThan(sheet.band.min.y);
  expect(sheet.bars.y.from.x).toBeLessThan(sheet.band.min.x);
});

test.each([...sheets, ...cards])(
  'every saddle on %s lies between two black squares and two white',
  (_name, sheet) => {
    const inside = (x: number, y: number) =>
      sheet.blackSquares.some(({ min, max }) => x > min.x && x < max.x && y > min.y && y < max.y);
    for (const { x, y } of sheet.saddles) {
      const blackRising = inside(x + 1, y + 1) && inside(x - 1, y - 1);
      const blackFalling = inside(x + 1, y - 1) && inside(x - 1, y + 1);
      expect(blackRising !== blackFalling).toBe(true);
    }
  },
);

test.each(sheets)(
  'a code stands in a square beside every saddle on %s, and there are more than 60 saddles',
  (_name, sheet) => {
    const middles = sheet.markers.map(({ corners: [a, , c] }) => ({
      x: (a.x + c.x) / 2,
      y: (a.y + c.y) / 2,
    }));
    for (const { x, y } of sheet.saddles)
      expect(Math.min(...middles.map((one) => Math.hypot(one.x - x, one.y - y)))).toBeLessThan(
        0.72 * sheet.squareMm,
      );
    expect(sheet.saddles.length).toBeGreaterThan(60);
  },
);

test('a height card is about 6 by 4 cm, with eight saddles inside the hull of its codes', () => {
  const { saddles, markers, widthMm, heightMm } = heightCard(5);
  expect([widthMm, heightMm, saddles.length]).toEqual([66, 44, 8]);
  const xs = markers.flatMap(({ corners }) => corners.map((corner) => corner.x));
  const ys = markers.flatMap(({ corners }) => corners.map((corner) => corner.y));
  for (const { x, y } of saddles)
    expect(x > Math.min(...xs) && x < Math.max(...xs) && y > Math.min(...ys) && y < Math.max(...ys)).toBe(
      true,
    );
});

test('no two codes on any sheet or card are the same, and a code tells what bears it', () => {
  const owners = markerOwners();
  const ids = [...sheets, ...cards].flatMap(([, one]) => one.markers.map((marker) => marker.id));
  expect(new Set(ids).size).toBe(ids.length);
  expect(owners.size).toBe(ids.length);
  expect(Math.max(...ids)).toBeLessThan(1000);
  for (const [, { paper, number, markers }] of sheets)
    for (const { id } of markers) expect(owners.get(id)).toEqual({ kind: 'sheet', paper, number });
  for (const [, { number, markers }] of cards)
    for (const { id } of markers) expect(owners.get(id)).toEqual({ kind: 'card', number });
  expect(owners.get(599)).toEqual({ kind: 'sheet', paper: 'A4', number: 2 });
  expect(owners.get(999)).toBeUndefined();
});

test('sheets that were printed before they had numbers keep their codes', () => {
  const first = SHEET_PAPERS.map((paper) => calibrationSheet(paper).markers.map((marker) => marker.id));
  expect(first.map((ids) => [ids[0], ids[ids.length - 1], ids.length])).toEqual([
    [0, 85, 86],
    [90, 173, 84],
    [180, 295, 116],
    [310, 423, 114],
    [440, 552, 113],
  ]);
});

test('a violin body of 355 by 206 mm lies inside the white of an A3 sheet', () => {
  const { calm, widthMm, heightMm } = calibrationSheet('A3');
  const middle = calibrationSheet('A3').middle;
  expect(middle.max.x - middle.min.x).toBe(360);
  expect(middle.max.y - middle.min.y).toBe(240);
  const atMidHeight = calm
    .filter((corner) => Math.abs(corner.y - heightMm / 2) < 61)
    .map((corner) => corner.x);
  expect(Math.max(...atMidHeight) - Math.min(...atMidHeight)).toBe(380);
  expect(Math.min(...calm.map((corner) => corner.x)) + Math.max(...calm.map((corner) => corner.x))).toBe(
    widthMm,
  );
});

test('the boxes that draw a code cover its black cells and no white one', () => {
  for (const id of [0, 17, 300, 999]) {
    const boxes = blackBoxesOfMarker(id);
    for (let row = 0; row < 7; row++)
      for (let column = 0; column < 7; column++) {
        const covered = boxes.some(
          (box) =>
            column >= box.column &&
            column < box.column + box.columns &&
            row >= box.row &&
            row < box.row + box.rows,
        );
        expect(covered).toBe(!markerCellIsWhite(id, 5 - row, column - 1));
      }
  }
});
