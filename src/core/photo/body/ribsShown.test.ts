import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from './bodyTrace.ts';
import { ribsShown } from './ribsShown.ts';

const [SIDE, PX_PER_MM, RADIUS_MM] = [300, 2, 60] as const;
const MIDDLE = SIDE / 2;

/** A light round plate on a white ground; on the side that faces `towardsRad` a dark band of `ribsMm` lies inside its edge. */
function plate(ribsMm: number, towardsRad: number) {
  const lightness = new Float32Array(SIDE * SIDE);
  for (let i = 0; i < lightness.length; i++) {
    const [x, y] = [(i % SIDE) - MIDDLE, Math.floor(i / SIDE) - MIDDLE];
    const inside = RADIUS_MM - Math.hypot(x, y) / PX_PER_MM;
    const isRibs = inside < ribsMm * Math.cos(Math.atan2(y, x) - towardsRad);
    lightness[i] = inside < 0 ? 90 : isRibs ? 20 : 45;
  }
  const none = new Float32Array(SIDE * SIDE);
  return { factor: 1, lab: { widthPx: SIDE, heightPx: SIDE, lightness, a: none, b: none } };
}

const edge = Array.from({ length: 360 }, (_, i): EdgePoint => {
  const turn = (2 * Math.PI * i) / 360;
  const normal = point<'photo'>(Math.cos(turn), Math.sin(turn));
  const reach = RADIUS_MM * PX_PER_MM;
  return {
    point: point<'photo'>(MIDDLE + reach * normal.x, MIDDLE + reach * normal.y),
    normal,
    side: i < 180 ? 'treble' : 'bass',
    section: 'lowerBout',
    along: i,
    state: 'seen',
    sigmaPx: 0.1,
  };
});

test.each([0, 1.2, 4])('ribs on one side are seen there, in any direction: %s rad', (towardsRad) => {
  const found = ribsShown(plate(7, towardsRad), edge, PX_PER_MM);
  expect(found?.share).toBeGreaterThan(0.9);
  expect(found?.darker).toBeLessThan(-0.4);
  const { x, y } = found?.towards ?? { x: 0, y: 0 };
  expect(x * Math.cos(towardsRad) + y * Math.sin(towardsRad)).toBeGreaterThan(0.9);
});

test('ribs that fill the rim as far in as the purfling are told from the plate beyond them', () => {
  const found = ribsShown(plate(12, 1.2), edge, PX_PER_MM);
  expect(found?.share).toBeGreaterThan(0.9);
  expect(found?.darker).toBeLessThan(-0.4);
});

test('a plate seen from straight above shows none', () => {
  expect(ribsShown(plate(0, 0), edge, PX_PER_MM)).toMatchObject({ share: 0, darker: 0 });
});

test('a band too narrow to carry the outline away is not taken for ribs', () => {
  expect(ribsShown(plate(1.5, 0), edge, PX_PER_MM)?.share).toBeLessThan(0.1);
});

test('too few places to compare tell nothing', () => {
  expect(ribsShown(plate(7, 0), edge.slice(0, 60), PX_PER_MM)).toBeNull();
});
