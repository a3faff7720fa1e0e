import { beforeAll, describe, expect, test } from 'vitest';
import { type Lens, lensMap, photographSheet } from '../../../test/render/sheetPhotograph.ts';
import { distanceBetween } from '../../core/base/index.ts';
import { calibrationSheet, grayOf, type MarkerFinder } from '../../core/photo/index.ts';
import { openMarkerFinder } from '../node/markerFinder.ts';

const lens: Lens = {
  widthPx: 1600,
  heightPx: 1200,
  focalPx: 2900,
  centreOffsetPx: [0, 0],
  k1: -0.1,
  k2: 0,
  eye: [230, 60, 880],
  target: [210, 148, 0],
  rollRad: 0.3,
};

describe('the finder of square codes', () => {
  const sheet = calibrationSheet('A3');
  let find: MarkerFinder;
  beforeAll(async () => {
    find = await openMarkerFinder();
  });

  test('finds nearly all codes of a sheet in a picture of two megapixels, upright or upside down, to 1.6 px', () => {
    for (const rollRad of [0.3, 0.3 + Math.PI]) {
      const turned = { ...lens, rollRad };
      const truth = lensMap(turned);
      const found = find(grayOf(photographSheet(sheet, turned, { blurPx: 0.8, noise: 2, seed: 1 })));
      expect(found.length).toBeGreaterThan(0.95 * sheet.markers.length);
      for (const marker of found) {
        const printed = sheet.markers.find((one) => one.id === marker.id)!;
        printed.corners.forEach((corner, place) => {
          const away = distanceBetween(truth.toPhoto(corner.x, corner.y, 0), marker.corners[place]!);
          expect(away).toBeLessThan(1.6);
        });
      }
    }
  });

  test('finds nothing in plain grey', () => {
    expect(find({ widthPx: 400, heightPx: 300, data: new Uint8Array(120_000).fill(90) })).toEqual([]);
  });
});
