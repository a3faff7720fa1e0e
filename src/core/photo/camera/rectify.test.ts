import { expect, test } from 'vitest';
import { type Lens, lensMap, photographSheet, trueMarkers } from '../../../../test/render/sheetPhotograph.ts';
import { point } from '../../base/index.ts';
import { grayOf } from '../picture/grayPicture.ts';
import { calibrationSheet } from '../sheet/calibrationSheet.ts';
import { refineSaddle } from '../sheet/saddle.ts';
import { readSheet } from '../sheet/sheetReading.ts';
import { cameraView } from './cameraView.ts';
import { rectifiedToScene, rectify, sceneBounds, sceneToRectified } from './rectify.ts';
import { solveCamera } from './solveCamera.ts';
import { type ScaleView, sheetPlaceInScene, viewMap } from './view.ts';

const upright: ScaleView = { kind: 'scale', mmPerPixel: 1, plusMinus: 0 };

/** Brightness equal to a plane over the picture: resampling keeps it exactly. */
function slope(widthPx: number, heightPx: number) {
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) rgb.fill(x + 2 * y, 3 * (y * widthPx + x), 3 * (y * widthPx + x) + 3);
  return { widthPx, heightPx, rgb };
}

test('a scan rectified at its own scale is itself', () => {
  const picture = slope(40, 30);
  const box = { min: point<'scene'>(-0.5, -29.5), max: point<'scene'>(39.5, 0.5) };
  const rectified = rectify(picture, upright, { mmPerPixel: 1, box });
  expect(rectified.picture).toEqual(picture);
  expect(rectified.origin).toEqual({ x: 0, y: 0 });
});

test('shrinking averages, and the scene place of a pixel stays the place of what it shows', () => {
  const picture = slope(60, 60);
  const box = { min: point<'scene'>(9.5, -49.5), max: point<'scene'>(49.5, -9.5) };
  const rectified = rectify(picture, upright, { mmPerPixel: 4, box });
  expect([rectified.picture.widthPx, rectified.picture.heightPx]).toEqual([10, 10]);
  for (const [x, y] of [
    [0, 0],
    [3, 7],
    [9, 9],
  ] as const) {
    const place = rectifiedToScene(rectified, point(x, y));
    expect(rectified.picture.rgb[3 * (y * 10 + x)]).toBe(Math.round(place.x - 2 * place.y));
    const again = sceneToRectified(rectified, place);
    expect([again.x, again.y]).toEqual([x, y]);
  }
});

test('a stretched view undoes itself and lengthens only along its direction', () => {
  const view: ScaleView = {
    ...upright,
    stretch: { alongRad: Math.PI / 2, along: 1.02, across: 0.99, alongPlusMinus: 0, acrossPlusMinus: 0 },
  };
  const map = viewMap(view);
  const place = map.toScene(point(100, 50));
  expect(place.x).toBeCloseTo(99, 9);
  expect(place.y).toBeCloseTo(-51, 9);
  const again = map.toPhoto(place);
  expect(again.x).toBeCloseTo(100, 9);
  expect(again.y).toBeCloseTo(50, 9);
});

test('a photographed sheet rectified at its own height shows its saddles where they are printed, to 0.03 mm', () => {
  const sheet = calibrationSheet('A3');
  const lens: Lens = {
    widthPx: 1800,
    heightPx: 1350,
    focalPx: 3200,
    centreOffsetPx: [-5, 6],
    k1: -0.1,
    k2: 0.02,
    eye: [140, 190, 900],
    target: [208, 150, 0],
    rollRad: -0.06,
  };
  const picture = photographSheet(sheet, lens, { blurPx: 0.8, noise: 2, seed: 5 });
  const reading = readSheet(picture, sheet, () => trueMarkers(sheet, lens, 2));
  if (!reading.ok) throw new Error(reading.faults[0]!.found);
  const solved = solveCamera(reading.value, picture, {
    sheetBarMm: { xMm: 150, yMm: 150, plusMinusMm: 0 },
    flatPlusMinusMm: 0,
  });
  if (!solved.ok) throw new Error();
  const made = cameraView(solved.value, sheet, { heightMm: 0, plusMinusMm: 0 });
  if (!made.ok) throw new Error();
  const { view } = made.value;
  const box = { min: point<'scene'>(0, 0), max: point<'scene'>(sheet.widthMm, sheet.heightMm) };
  const rectified = rectify(picture, view, { mmPerPixel: 0.2, box });
  const gray = grayOf(rectified.picture);
  const misses = sheet.saddles.flatMap((saddle) => {
    const guess = { at: sceneToRectified(rectified, point(saddle.x, saddle.y)), armPx: 18, sidePx: 5 };
    const seen = refineSaddle(gray, {
      ...guess,
      edges: [
        { x: 1, y: 0 },
        { x: 0, y: 1 },
      ],
    });
    if (!seen) return [];
    const place = rectifiedToScene(rectified, seen.at);
    return [Math.hypot(place.x - saddle.x, place.y - saddle.y)];
  });
  expect(misses.length).toBe(sheet.saddles.length);
  expect(Math.max(...misses)).toBeLessThan(0.03);
  expect(Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / misses.length)).toBeLessThan(0.015);
  const place = sheetPlaceInScene(view, point(50, 60));
  expect(Math.hypot(place.x - 50, place.y - 60)).toBeLessThan(1e-6);
  const bounds = sceneBounds(picture, view);
  expect(bounds.min.x).toBeLessThan(0);
  expect(bounds.max.y).toBeGreaterThan(sheet.heightMm);
  expect(lensMap(lens).toPhoto(bounds.min.x, 0, 0)).toBeDefined();
});
