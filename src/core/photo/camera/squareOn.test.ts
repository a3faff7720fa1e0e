import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { squareOn } from './squareOn.ts';
import type { ScaleView } from './view.ts';

const picture = { widthPx: 60, heightPx: 40, rgb: new Uint8Array(3 * 60 * 40) };
const view: ScaleView = { kind: 'scale', mmPerPixel: 0.5, plusMinus: 0 };
const area = { min: point<'scene'>(5, -15), max: point<'scene'>(25, -5) };

test('an area is seen with what lies beside it, in the pixels of the photograph', () => {
  const seen = squareOn(picture, view, area, 2);
  expect(seen.mmPerPixel).toBeCloseTo(0.5, 9);
  expect([seen.picture.widthPx, seen.picture.heightPx]).toEqual([48, 28]);
});

test('where the photograph ends, so does what is seen; pixels are no finer than a tenth of a millimetre', () => {
  expect(squareOn(picture, view, area, 500).picture).toMatchObject({ widthPx: 59, heightPx: 39 });
  expect(squareOn(picture, { ...view, mmPerPixel: 0.01 }, area, 2).mmPerPixel).toBe(0.1);
});
