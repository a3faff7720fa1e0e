import { expect, test } from 'vitest';
import { asymmetryMm, contourFaults } from '../../../../test/laws/parts.ts';
import { FAMILIES, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { type HalfOutline, sampleChain } from '../../curve/index.ts';
import { bodyOutline } from './bodyOutline.ts';

function outlineOf(half: HalfOutline) {
  const outline = bodyOutline(half);
  if (!outline.ok) throw new Error(JSON.stringify(outline.faults));
  return outline.value;
}

test.each(FAMILIES)('the outline of a %s is closed, simple, anticlockwise and symmetric', (family) => {
  const { chain } = outlineOf(sampleHalf(family));
  expect(contourFaults(chain, 'anticlockwise')).toEqual([]);
  expect(asymmetryMm(chain)).toBeLessThan(1e-9);
});

test('a violin of 355 mm shows its widths where they are widest and narrowest', () => {
  const outline = outlineOf(sampleHalf('violin'));
  expect(outline.bodyLengthMm).toBeCloseTo(355, 9);
  expect(outline.lowerBout.widthMm).toBeCloseTo(206, 1);
  expect(outline.waist.widthMm).toBeCloseTo(112, 1);
  expect(outline.upperBout.widthMm).toBeCloseTo(168, 1);
  expect(outline.lowerBout.stationMm).toBeCloseTo(75.7, 1);
  expect(outline.waist.stationMm).toBeCloseTo(198.85, 1);
  expect(outline.upperBout.stationMm).toBeCloseTo(287.32, 1);
});

test.each(FAMILIES)('no point of the outline of a %s lies outside its widths', (family) => {
  const outline = outlineOf(sampleHalf(family));
  const { lowerBout, cBout, upperBout } = outline.half;
  const xs = (chain: HalfOutline['cBout']) => sampleChain(chain, 0.0001).map((point) => 2 * point.x);
  expect(Math.max(...xs(lowerBout))).toBeLessThanOrEqual(outline.lowerBout.widthMm + 1e-9);
  expect(Math.max(...xs(upperBout))).toBeLessThanOrEqual(outline.upperBout.widthMm + 1e-9);
  expect(Math.min(...xs(cBout))).toBeGreaterThanOrEqual(outline.waist.widthMm - 1e-9);
});

test('the corners give their tips, end width and the width over them', () => {
  const { lowerCorner, upperCorner } = outlineOf(sampleHalf('violin'));
  expect(lowerCorner.boutTip.x).toBeCloseTo(92.1, 1);
  expect(lowerCorner.boutTip.y).toBeCloseTo(145.65, 1);
  expect(lowerCorner.endWidthMm).toBeCloseTo(6.7, 1);
  expect(upperCorner.boutTip.x).toBeCloseTo(80.91, 1);
  expect(upperCorner.endWidthMm).toBeCloseTo(6.9, 1);
  expect(upperCorner.overCornersMm).toBe(2 * upperCorner.boutTip.x);
});

test('an outline that leaves the centre line askew is refused by name', () => {
  const half = sampleHalf('violin');
  const [first, ...rest] = half.lowerBout.vertices;
  const askew = {
    ...half,
    lowerBout: { closed: false, vertices: [{ x: 0.5, y: 0, bulge: first!.bulge }, ...rest] },
  };
  const outline = bodyOutline(askew);
  expect(outline.ok).toBe(false);
  if (!outline.ok) expect(outline.faults.map((fault) => fault.code)).toContain('outline.not-a-half');
});

test('a number that is none is refused, not passed on', () => {
  const half = sampleHalf('violin');
  const broken = {
    ...half,
    cBout: {
      closed: false,
      vertices: [
        { x: Number.NaN, y: 1, bulge: 0 },
        { x: 1, y: 2, bulge: 0 },
      ],
    },
  };
  const outline = bodyOutline(broken);
  expect(outline.ok ? [] : outline.faults.map((fault) => fault.at)).toEqual(['outline.cBout']);
});

test('a bout that is widest at its corner is refused', () => {
  const half = sampleHalf('violin');
  const cut = { ...half, lowerBout: { closed: false, vertices: half.lowerBout.vertices.slice(0, 3) } };
  const outline = bodyOutline(cut);
  expect(outline.ok ? [] : outline.faults.map((fault) => fault.code)).toContain('outline.no-widest');
});
