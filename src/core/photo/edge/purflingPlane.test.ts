import { expect, test } from 'vitest';
import { STRAIGHT_DOWN } from '../../../../test/fixtures/straightDown.ts';
import { type Camera, projection } from '../camera/camera.ts';
import { type CameraView, type View, viewMap } from '../camera/view.ts';
import { purflingPlane } from './purflingPlane.ts';

/** A metre over the paper and 250 mm to the left of the body: its sight lines lean. */
const CAMERA: Camera = { ...STRAIGHT_DOWN, focalPx: 4000, shiftMm: [250, 0, 1000] };
const EDGE_MM = 36;
const VIEW: CameraView = {
  kind: 'camera',
  camera: CAMERA,
  printScale: { x: 1, y: 1 } as CameraView['printScale'],
  planeHeightMm: EDGE_MM,
  planeHeightPlusMinusMm: 0.3,
  trust: { covariance: [], printPlusMinus: 0 },
};
/** mm. Purflings of both halves beside an axis at x = 0, and how high they lie over the edge (common practice). */
const [HALF_MM, HIGHER_MM] = [100, 1.7];

test('purflings of both halves lie as far from the axis as they are, seen from one side', () => {
  const across = (view: View) => {
    const { toScene } = viewMap(view);
    const at = (x: number) => toScene(projection(CAMERA).toPhoto(x, 0, EDGE_MM + HIGHER_MM)).x;
    return at(HALF_MM) + at(-HALF_MM);
  };
  expect(Math.abs(across(purflingPlane(VIEW)))).toBeLessThan(0.001);
  // In the edge's own plane both would lie 0.45 mm to one side.
  expect(Math.abs(across(VIEW))).toBeGreaterThan(0.8);
});

test('a scan has one plane for all', () => {
  const scan: View = { kind: 'scale', mmPerPixel: 0.1, plusMinus: 0.001 };
  expect(purflingPlane(scan)).toBe(scan);
});
