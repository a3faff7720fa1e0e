import { expect, test } from 'vitest';
import { areaOf, boundsOf } from '../curve/index.ts';
import { calibrationSheet, SHEET_PAPERS } from '../photo/index.ts';
import { letteringFindings, letteringStrokes, letteringWidthMm } from './lettering.ts';
import { PAPERS } from './paper.ts';
import { sheetDrawing } from './sheetDrawing.ts';

const sheets = SHEET_PAPERS.map((paper) => [paper, calibrationSheet(paper)] as const);

test.each(sheets)('the %s sheet is drawn on the paper, turned to lie', (paper, sheet) => {
  expect([sheet.widthMm, sheet.heightMm]).toEqual([PAPERS[paper].heightMm, PAPERS[paper].widthMm]);
  const drawing = sheetDrawing(sheet);
  for (const chain of drawing.filled ?? []) {
    const box = boundsOf(chain);
    expect(Math.min(box.min.x, box.min.y)).toBeGreaterThan(4.2);
    expect(box.max.x).toBeLessThan(sheet.widthMm - 4.2);
    expect(box.max.y).toBeLessThan(sheet.heightMm - 4.2);
    expect(areaOf(chain)).toBeGreaterThan(0);
  }
});

test.each(sheets)('the words on the %s sheet stay in its margin, off the band', (_paper, sheet) => {
  const { lettering } = sheetDrawing(sheet);
  expect(letteringFindings(lettering)).toEqual([]);
  for (const one of lettering) {
    expect(letteringWidthMm(one)).toBeLessThan(sheet.widthMm);
    for (const stroke of letteringStrokes(one)) {
      const { min, max } = boundsOf(stroke);
      const { band } = sheet;
      expect(min.x > band.max.x || max.x < band.min.x || min.y > band.max.y || max.y < band.min.y).toBe(true);
      expect(Math.min(min.x, min.y)).toBeGreaterThan(4);
      expect(max.x).toBeLessThan(sheet.widthMm - 4);
      expect(max.y).toBeLessThan(sheet.heightMm - 4);
    }
  }
});

test('both bars are 150 mm from end to end', () => {
  const drawing = sheetDrawing(calibrationSheet('A3'));
  const boxes = (drawing.filled ?? []).map(boundsOf);
  const sizes = boxes.map(({ min, max }) => [max.x - min.x, max.y - min.y]);
  expect(sizes.filter(([width]) => Math.abs(width! - 150) < 1e-9).length).toBe(1);
  expect(sizes.filter(([, height]) => Math.abs(height! - 150) < 1e-9).length).toBe(1);
});
