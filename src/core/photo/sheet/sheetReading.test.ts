import { describe, expect, test } from 'vitest';
import {
  type Lens,
  type Look,
  photographSheet,
  trueMarkers,
} from '../../../../test/render/sheetPhotograph.ts';
import { solveCamera } from '../camera/solveCamera.ts';
import { calibrationSheet } from './calibrationSheet.ts';
import { readAnySheet, readSheet } from './sheetReading.ts';

const sheet = calibrationSheet('A3');
const lens: Lens = {
  widthPx: 1500,
  heightPx: 1125,
  focalPx: 2667,
  centreOffsetPx: [3, 2],
  k1: -0.08,
  k2: 0,
  eye: [260, 60, 860],
  target: [210, 148, 0],
  rollRad: 0.05,
};

/** The truth as a finder, less what lies under the covers. */
function finderFor(look: Look, from = lens) {
  const hidden = (x: number, y: number) =>
    look.covered?.some((box) => x > box.x0 && x < box.x1 && y > box.y0 && y < box.y1) ?? false;
  const visible = new Set(
    sheet.markers
      .filter(({ corners }) => !corners.some((corner) => hidden(corner.x, corner.y)))
      .map((one) => one.id),
  );
  return () => trueMarkers(sheet, from, 4).filter((marker) => visible.has(marker.id));
}

const clear: Look = { blurPx: 0.8, noise: 2, seed: 2 };
const whole = photographSheet(sheet, lens, clear);

describe('a sheet with an instrument on it', () => {
  const look: Look = {
    ...clear,
    covered: [
      { x0: 35, y0: 45, x1: 385, y1: 250 },
      { x0: 380, y0: 120, x1: 430, y1: 180 },
    ],
  };
  const picture = photographSheet(sheet, lens, look);
  const reading = readSheet(picture, sheet, finderFor(look));

  test('is read where it can be seen, and never under the neck', () => {
    if (!reading.ok) throw new Error(reading.faults[0]!.found);
    for (const { sheet: place } of reading.value.pairs)
      expect(place.x > 380 && place.y > 120 && place.y < 180).toBe(false);
    expect(reading.value.pairs.length).toBeGreaterThan(90);
    expect(reading.value.markersSeen).toBeLessThan(reading.value.markersTotal);
  });

  test('still gives the camera', () => {
    if (!reading.ok) throw new Error();
    const solved = solveCamera(reading.value, picture, { sheetBarMm: { xMm: 150, yMm: 150 } });
    if (!solved.ok) throw new Error();
    expect(solved.value.rmsMm).toBeLessThan(0.02);
    expect(Math.abs(solved.value.camera.focalPx / lens.focalPx - 1)).toBeLessThan(0.03);
  });
});

test('the paper is told by its codes', () => {
  const any = readAnySheet(whole, finderFor(clear));
  if (!any.ok) throw new Error();
  expect(any.value.sheet.paper).toBe('A3');
  const wrong = readSheet(whole, calibrationSheet('Tabloid'), finderFor(clear));
  expect(wrong.ok ? [] : wrong.faults.map((fault) => [fault.code, fault.remedy])).toEqual([
    ['sheet.wrongPaper', "give A3 as the sheet's paper"],
  ]);
});

test('a sheet half covered, or half out of the picture, is refused with the sides that are missing', () => {
  const half: Look = { ...clear, covered: [{ x0: 210, y0: -10, x1: 430, y1: 310 }] };
  const covered = readSheet(photographSheet(sheet, lens, half), sheet, finderFor(half));
  expect(covered.ok ? [] : covered.faults.map((fault) => fault.code)).toEqual(['sheet.too-little']);
  if (!covered.ok) expect(covered.faults[0]!.found).toMatch(/right short side/);
  const aside = { ...lens, eye: [460, 60, 860], target: [410, 148, 0] } as const;
  const outside = readSheet(photographSheet(sheet, aside, clear), sheet, finderFor(clear, aside));
  expect(outside.ok ? [] : outside.faults.map((fault) => fault.code)).toEqual(['sheet.too-little']);
});

test('a picture without a sheet is refused, and so are codes scattered at random', () => {
  const picture = { widthPx: 800, heightPx: 600, rgb: new Uint8Array(3 * 800 * 600).fill(128) };
  const none = readSheet(picture, sheet, () => []);
  expect(none.ok ? [] : none.faults.map((fault) => fault.code)).toEqual(['sheet.notFound']);
  const scattered = readSheet(picture, sheet, () =>
    trueMarkers(sheet, lens, 1)
      .slice(0, 6)
      .map((marker, place) => ({ ...marker, id: 180 + ((place * 37) % 120) })),
  );
  expect(scattered.ok ? [] : scattered.faults.map((fault) => fault.code)).toEqual(['sheet.unknown']);
});

test('a misread code does not spoil the reading', () => {
  const swapped = () => {
    const found = [...finderFor(clear)()];
    return [{ ...found[0]!, id: found[70]!.id }, ...found.slice(1, 70), ...found.slice(71)];
  };
  const reading = readSheet(whole, sheet, swapped);
  if (!reading.ok) throw new Error();
  expect(reading.value.markersSeen).toBeLessThanOrEqual(swapped().length);
  const solved = solveCamera(reading.value, whole);
  if (!solved.ok) throw new Error();
  expect(solved.value.rmsMm).toBeLessThan(0.02);
  expect(solved.value.findings.map((one) => one.code)).toEqual(['sheet.unmeasured']);
});
