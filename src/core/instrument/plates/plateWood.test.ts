import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { areaOf, containsPoint, offsetChain, outlineChain } from '../../curve/index.ts';
import { plateArch } from '../arching/index.ts';
import { boxAir } from './boxAir.ts';
import { hollowPlate } from './hollow.ts';
import { plateWood } from './plateWood.ts';
import { thicknessMap } from './thicknessMap.ts';

const body = outlineChain(violinHalf());
const [formEdge] = offsetChain(body, -3.3, { join: 'mitre' });
if (!formEdge) throw new Error('no form');

function plate(which: 'back' | 'top', more = 0) {
  const arch = plateArch(archValues(), violinHalf(), which);
  if (!arch.ok || !formEdge) throw new Error('refused');
  const numbers = { middleMm: 4.3, boutsMm: 2.5, flanksMm: 2.7, channelMm: 2.3 };
  const raised = Object.fromEntries(Object.entries(numbers).map(([name, value]) => [name, value + more]));
  const map = thicknessMap(arch.value, 160, { ...numbers, ...raised }, 'concentric', [], (at) =>
    containsPoint(body, at),
  );
  if (!map.ok) throw new Error('refused');
  const hollow = hollowPlate(arch.value, map.value, formEdge, 1.8);
  if (!hollow.ok) throw new Error('refused');
  return hollow.value;
}

const back = plate('back');
const wood = plateWood(back, body, 620);

test('a plate weighs what its density and its volume say, near to what makers weigh', () => {
  expect(wood.massG).toBeCloseTo((wood.volumeMm3 * 620) / 1e6, 9);
  expect(wood.massG).toBeGreaterThan(90);
  expect(wood.massG).toBeLessThan(135);
});

test('a tenth of a millimetre more all over adds its area times a tenth, and a little for the slopes', () => {
  const added = plateWood(plate('back', 0.1), body, 620).volumeMm3 - wood.volumeMm3;
  const hollowMm2 = areaOf(back.line);
  expect(added).toBeGreaterThan(0.95 * 0.1 * hollowMm2);
  expect(added).toBeLessThan(1.05 * 0.1 * hollowMm2);
});

test('a plate balances in its middle and is hardest to turn about the line square to it', () => {
  expect(wood.centreYMm).toBeGreaterThan(155);
  expect(wood.centreYMm).toBeLessThan(180);
  expect(wood.aboutSquare).toBeLessThan(wood.aboutAcross + wood.aboutAlong);
  expect(wood.aboutSquare).toBeGreaterThan(wood.aboutAcross);
  expect(wood.aboutAcross).toBeGreaterThan(wood.aboutAlong);
});

test('a millimetre more of ribs adds its area in air', () => {
  const walls = {
    innerFace: formEdge,
    ribHeightTailMm: 30,
    ribHeightNeckMm: 30,
    liningThicknessMm: 1.8,
    liningWidthMm: 6,
  };
  const air = boxAir(2 * wood.hollowMm3, 355, walls);
  const more = boxAir(2 * wood.hollowMm3, 355, { ...walls, ribHeightTailMm: 31, ribHeightNeckMm: 31 });
  expect((more - air) / areaOf(formEdge)).toBeCloseTo(1, 9);
  expect(air / 1e6).toBeGreaterThan(1.8);
  expect(air / 1e6).toBeLessThan(2.3);
});
