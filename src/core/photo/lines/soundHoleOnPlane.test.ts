import { expect, test } from 'vitest';
import { type Point, point } from '../../base/index.ts';
import { soundHoleOnPlane, usualHoleHeight } from './soundHoleOnPlane.ts';
import type { SoundHole } from './soundHoleTrace.ts';

/** A camera straight above the origin, 1000 mm over the ground, 1000 px focal length. */
function toFrame(at: Point<'photo'>, heightMm: number): Point<'scene'> {
  const share = (1000 - heightMm) / 1000;
  return point(at.x * share, -at.y * share);
}

const HOLE: SoundHole = {
  side: 'bass',
  contour: [
    { x: -40, y: 0, state: 'seen' },
    { x: -50, y: 0, state: 'seen' },
    { x: -50, y: -30, state: 'bridged' },
  ],
  upperEye: { centre: point(-40, -20), diameterPx: 7, turnShare: 0.7, roughPx: 0 },
  lowerEye: null,
  innerNick: { place: point(-40, 0), depthPx: 1 },
  outerNick: null,
  seenShare: 0.6,
  darkness: 0.1,
};

test('a hole higher than the edge is brought to its own height, and the height’s ± is told in millimetres', () => {
  const placed = soundHoleOnPlane(HOLE, toFrame, { heightMm: 50, plusMinusMm: 10 });
  expect(placed.contour[0]).toMatchObject({ x: -38, y: -0, state: 'seen' });
  expect(placed.contour[2]).toMatchObject({ x: -47.5, y: 28.5, state: 'bridged' });
  expect(placed.upperEye?.diameterMm).toBeCloseTo(7 * 0.95, 9);
  expect(placed.innerNick?.x).toBeCloseTo(-38, 9);
  expect(placed.heightEffect.movesMm).toBeCloseTo(Math.hypot(50, 30) / 100, 9);
  expect(placed.heightEffect.sizeShare).toBeCloseTo(0.01 / 0.95, 9);
});

test('the usual height follows the body: 5 mm over the edge of a violin, twice that on a body twice as long', () => {
  const [violin, large] = [usualHoleHeight(36, 355), usualHoleHeight(36, 710)];
  expect([violin.heightMm, large.heightMm]).toEqual([41, 46]);
  expect(violin.plusMinusMm).toBeCloseTo(3, 9);
  expect(large.plusMinusMm).toBeCloseTo(6, 9);
});
