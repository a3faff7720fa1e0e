import fc from 'fast-check';
import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { closeChain, containsPoint, nearestOn } from '../../curve/index.ts';
import { type GaugePlace, gaugePlace } from './gaugePlace.ts';
import { type InsideHeight, insideLongEdge, insideStationEdge, insideStuff } from './insideGauge.ts';
import { plateArch } from './plateArch.ts';
import { plateHeight } from './plateHeight.ts';
import { plateShape } from './plateShape.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('refused');
const arch = made.value;

/** A bowl: 10 mm deep in the middle, round the rim on an ellipse. */
const bowl: InsideHeight = (x, y) => Math.max(0, 10 * (1 - (x / 45) ** 2 - ((y - 178) / 160) ** 2));

/** The outside less 3 mm square to it, near enough for a test: over the slope at the same place. */
const evenThickness: InsideHeight = (x, y) => {
  const { slopeX, slopeY } = plateShape(arch, x, y, 'finished');
  return Math.max(0, plateHeight(arch, x, y, 'finished') - 3 * Math.hypot(1, slopeX, slopeY));
};

function placeAt(yMm: number): GaugePlace {
  const place = gaugePlace(arch, yMm);
  if (!place.ok) throw new Error(place.faults[0]?.found);
  return place.value;
}

test('across a bowl the gauge is its parabola, from rim to rim', () => {
  const edge = insideStationEdge(arch, placeAt(178), bowl);
  if (!edge.ok) throw new Error('refused');
  expect(edge.value.rims[1]).toBeCloseTo(45, 2);
  expect(edge.value.rims[0]).toBe(-edge.value.rims[1]);
  expect(edge.value.deepestMm).toBeCloseTo(10, 9);
  for (const { x, y } of edge.value.chain.vertices) expect(y).toBeCloseTo(10 * (1 - (x / 45) ** 2), 1);
});

test('along a bowl the gauge begins and ends at its rims', () => {
  const edge = insideLongEdge(arch, bowl);
  if (!edge.ok) throw new Error('refused');
  expect(edge.value.rims[0]).toBeCloseTo(18, 2);
  expect(edge.value.rims[1]).toBeCloseTo(338, 2);
});

test('where a bowl grows deeper to one side the stuff lies there, and a square edge hardly rides', () => {
  expect(insideStuff(placeAt(80), bowl, 30, 3)).toEqual({ behindMm: 3, rideMm: 0, rideAtMm: 0 });
  expect(insideStuff(placeAt(280), bowl, 30, 3)).toEqual({ behindMm: -3, rideMm: 0, rideAtMm: 0 });
});

function even(from: number, to: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((share) => from + ((to - from) * share) / 1_000_000);
}

test('a square gauge cuts into the wood nowhere within its thickness', () => {
  fc.assert(
    fc.property(
      even(40, 315),
      even(0.8, 5),
      fc.constantFrom(bowl, evenThickness),
      even(0, 0.99),
      even(0, 1),
      (yMm, thicknessMm, inside, across, within) => {
        const place = placeAt(yMm);
        const { behindMm } = insideStuff(place, inside, place.halfWidthMm, thicknessMm);
        const edge = insideStationEdge(arch, place, inside, behindMm);
        if (!edge.ok) throw new Error(edge.faults[0]?.found);
        const x = across * edge.value.rims[1];
        const wood = { x, y: inside(x, yMm + within * behindMm) };
        // The gauge is what lies between the gluing face and its edge.
        const gauge = closeChain(edge.value.chain);
        if (containsPoint(gauge, wood))
          expect(nearestOn(edge.value.chain, wood).distanceMm).toBeLessThan(0.02);
      },
    ),
    { numRuns: 60 },
  );
});

test('a plate that is not hollowed, or has no inside, is refused in words', () => {
  const codes = [() => 0, (x: number) => (x > 20 ? Number.NaN : 5)].map((inside) => {
    const edge = insideStationEdge(arch, placeAt(178), inside);
    return edge.ok ? [] : edge.faults.map(({ code }) => code);
  });
  expect(codes).toEqual([['gauge.inside'], ['gauge.thickness']]);
});
