import { describe, expect, test } from 'vitest';
import { type Lens, lensMap, photographSheet, trueMarkers } from '../../../../test/render/sheetPhotograph.ts';
import { calibrationSheet } from '../sheet/calibrationSheet.ts';
import { readSheet } from '../sheet/sheetReading.ts';
import { cameraView } from './cameraView.ts';
import { solveCamera } from './solveCamera.ts';
import { toScene } from './view.ts';
import { lengthBetween } from './viewUncertainty.ts';

const sheet = calibrationSheet('A3');

/** A normal lens about 0.9 m over an A3 sheet, 3.4 megapixels. */
const lens: Lens = {
  widthPx: 2128,
  heightPx: 1596,
  focalPx: 3800,
  centreOffsetPx: [4, -3],
  k1: -0.12,
  k2: 0.05,
  eye: [250, 20, 880],
  target: [212, 146, 0],
  rollRad: 0.02,
};

function measured(from: Lens, look = { blurPx: 0.9, noise: 3, seed: 7 }) {
  const picture = photographSheet(sheet, from, look);
  const reading = readSheet(picture, sheet, () => trueMarkers(sheet, from, 3));
  if (!reading.ok) throw new Error(reading.faults.map((fault) => fault.found).join());
  return { picture, reading: reading.value };
}

describe('a sheet photographed 8° from square on', () => {
  const { picture, reading } = measured(lens);
  const truth = lensMap(lens);
  const solved = solveCamera(reading, picture, {
    sheetBarMm: { xMm: 150, yMm: 150, plusMinusMm: 0 },
    flatPlusMinusMm: 0,
  });

  test('shows its saddles within 0.05 px rms and without bias', () => {
    const misses = reading.pairs.map(({ sheet: s, photo }) => {
      const at = truth.toPhoto(s.x, s.y, 0);
      return [photo.x - at.x, photo.y - at.y] as const;
    });
    const mean = (place: 0 | 1) => misses.reduce((sum, miss) => sum + miss[place], 0) / misses.length;
    const rms = Math.sqrt(misses.reduce((sum, [x, y]) => sum + x * x + y * y, 0) / (2 * misses.length));
    expect(misses.length).toBe(sheet.saddles.length);
    expect(rms).toBeLessThan(0.05);
    expect(Math.abs(mean(0))).toBeLessThan(0.02);
    expect(Math.abs(mean(1))).toBeLessThan(0.02);
  });

  test('gives a plane true to 0.03 mm and the length of a body to 0.02 mm on it', () => {
    if (!solved.ok) throw new Error();
    const view = cameraView(solved.value, sheet, { heightMm: 0, plusMinusMm: 0 });
    if (!view.ok) throw new Error();
    const misses = [];
    for (let x = 30; x <= 390; x += 40)
      for (let y = 30; y <= 270; y += 40) {
        const seen = toScene(view.value.view, truth.toPhoto(x, y, 0));
        misses.push(Math.hypot(seen.x - x, seen.y - y));
      }
    const rms = Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / misses.length);
    const length = lengthBetween(view.value.view, truth.toPhoto(32, 148, 0), truth.toPhoto(388, 148, 0));
    expect(rms).toBeLessThan(0.02);
    expect(Math.abs(length.mm - 356)).toBeLessThan(0.02);
  });

  test('gives the length of a body to 0.1 mm on a plane 37.5 mm above the sheet', () => {
    if (!solved.ok) throw new Error();
    const view = cameraView(solved.value, sheet, { heightMm: 37.5, plusMinusMm: 0 });
    if (!view.ok) throw new Error();
    const length = lengthBetween(
      view.value.view,
      truth.toPhoto(32, 148, 37.5),
      truth.toPhoto(388, 148, 37.5),
    );
    expect(Math.abs(length.mm - 356)).toBeLessThan(0.1);
  });
});
