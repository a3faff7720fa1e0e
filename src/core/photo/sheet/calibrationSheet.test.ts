import { expect, test } from 'vitest';
import { distanceBetween } from '../../base/index.ts';
import { markerCellIsWhite } from '../../knowledge/index.ts';
import { blackBoxesOfMarker, calibrationSheet, paperOfMarker, SHEET_PAPERS } from './calibrationSheet.ts';

const sheets = SHEET_PAPERS.map((paper) => [paper, calibrationSheet(paper)] as const);

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

test.each(sheets)('every saddle on %s lies between two black squares and two codes', (_paper, sheet) => {
  const inside = (x: number, y: number) =>
    sheet.blackSquares.some(({ min, max }) => x > min.x && x < max.x && y > min.y && y < max.y);
  for (const { x, y } of sheet.saddles) {
    const blackRising = inside(x + 1, y + 1) && inside(x - 1, y - 1);
    const blackFalling = inside(x + 1, y - 1) && inside(x - 1, y + 1);
    expect(blackRising !== blackFalling).toBe(true);
  }
  expect(sheet.saddles.length).toBeGreaterThan(60);
});

test('no two codes on any of the papers are the same, and a code tells its paper', () => {
  const ids = sheets.flatMap(([, sheet]) => sheet.markers.map((marker) => marker.id));
  expect(new Set(ids).size).toBe(ids.length);
  for (const [paper, sheet] of sheets)
    for (const marker of sheet.markers) expect(paperOfMarker(marker.id)).toBe(paper);
  expect(paperOfMarker(599)).toBeNull();
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
  for (const id of [0, 17, 300, 599]) {
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
