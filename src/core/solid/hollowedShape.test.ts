import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { containsPoint, lengthOf, nearestOn, offsetChain, segments } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, type HollowPlate, insideHeight } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { splinePatchAt, splineSurfaceAt } from '../surface/index.ts';
import { hollowedShape, INSIDE_MM, RAMP_EDGE_MM } from './hollowedShape.ts';

function topOf(values: Readonly<Record<string, number>>, thickness = {}): HollowPlate {
  const given = Object.entries({ bodyLength: 355, ...values }).map(([name, value]) => [
    name,
    { value, unit: 'mm', origin: chosen('test') },
  ]);
  const drafted = draftDesign({
    family: 'violin',
    name: 'violin',
    values: Object.fromEntries(given),
    thickness,
  });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error(derived.faults.map(({ code }) => code).join());
  return derived.value.hollows.top;
}

const plate = topOf({}, { top: { bar: { extra: 0.4 }, points: [[30, 120, 3.1]] } });
const made = hollowedShape(plate);
if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
const shape = made.value;

test('floor and ramps keep to the tolerance at random places, with a bar on one half and a point asked for', () => {
  const random = seededRandom(5);
  const [foot] = offsetChain(plate.line, -plate.rampMm, { join: 'round' });
  if (!foot) throw new Error('no foot');
  let most = 0;
  for (let count = 0; count < 3000; count++) {
    const [x, y] = [100 * (2 * random() - 1), 355 * random()];
    if (!containsPoint(foot, point<'body'>(x, y))) continue;
    most = Math.max(most, Math.abs(splineSurfaceAt(shape.floor, x, y).zMm - insideHeight(plate, x, y)));
  }
  for (const ramp of shape.ramps)
    for (let count = 0; count < 60; count++) {
      const [x, y, zMm] = splinePatchAt(ramp, random(), random());
      most = Math.max(most, Math.abs(zMm - insideHeight(plate, x, y)));
    }
  expect(most).toBeLessThan(INSIDE_MM);
  expect(most).toBeGreaterThan(0);
  expect(shape.offMm).toBeLessThan(INSIDE_MM);
});

test('each ramp runs from its side of the border to the floor, from where the one before ends', () => {
  const sides = segments(shape.border);
  expect(shape.ramps.length).toBe(sides.length);
  for (const [k, ramp] of shape.ramps.entries()) {
    const next = shape.ramps[(k + 1) % shape.ramps.length] ?? ramp;
    for (let step = 0; step <= 50; step++) {
      const [x, y, zMm] = splinePatchAt(ramp, 0, step / 50);
      expect(Math.hypot(nearestOn(plate.line, point<'body'>(x, y)).distanceMm, zMm)).toBeLessThan(
        RAMP_EDGE_MM,
      );
      const [footX, footY, footZ] = splinePatchAt(ramp, 1, step / 50);
      const offFloor = Math.abs(splineSurfaceAt(shape.floor, footX, footY).zMm - footZ);
      expect(offFloor).toBeLessThan(RAMP_EDGE_MM);
      const [end, start] = [splinePatchAt(ramp, step / 50, 1), splinePatchAt(next, step / 50, 0)];
      for (const axis of [0, 1, 2] as const) expect(end[axis]).toBeCloseTo(start[axis], 5);
    }
  }
});

test('the ramp leaves the floor with less of a break than fingers feel', () => {
  let most = 0;
  for (const ramp of shape.ramps) {
    const [x, y, zMm] = splinePatchAt(ramp, 1, 0.4);
    const [beforeX, beforeY, beforeZ] = splinePatchAt(ramp, 1 - 1e-4, 0.4);
    const { slopeX, slopeY } = splineSurfaceAt(shape.floor, x, y);
    const way = Math.hypot(x - beforeX, y - beforeY);
    const slope = (zMm - beforeZ) / way;
    const floorSlope = (slopeX * (x - beforeX) + slopeY * (y - beforeY)) / way;
    most = Math.max(most, Math.abs(Math.atan(slope) - Math.atan(floorSlope)));
  }
  expect(most).toBeLessThan(0.002);
});

test('the border has no corner and is as long as linings and blocks make it, but for their rounding', () => {
  expect(lengthOf(shape.border)).toBeGreaterThan(800);
  const [foot] = offsetChain(shape.border, -plate.rampMm, { join: 'round' });
  expect(foot && segments(foot).length).toBe(segments(shape.border).length);
});

test.each([
  ['a channel so low that the inside goes through the gluing face', { scoopDepthTop: 2.4 }, 'solid.hollow'],
  ['wood at the bar that ends too suddenly for a spline', {}, 'solid.inside'],
])('%s has no true surfaces, in words', (_what, values, code) => {
  const thickness = code === 'solid.inside' ? { top: { bar: { extra: 0.15, reach: 0.4 } } } : {};
  const refused = hollowedShape(topOf(values, thickness));
  expect(refused.ok ? [] : refused.faults.map((fault) => fault.code)).toEqual([code]);
});
