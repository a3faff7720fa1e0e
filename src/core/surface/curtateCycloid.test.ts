import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type CurtateCycloid,
  curtateCycloid,
  cycloidCurvature,
  cycloidHeight,
  cycloidSlope,
} from './curtateCycloid.ts';

function made(widthMm: number, riseMm: number): CurtateCycloid {
  const checked = curtateCycloid(widthMm, riseMm);
  if (!checked.ok) throw new Error(checked.faults[0]?.found);
  return checked.value;
}

const width = fc.double({ min: 40, max: 450, noNaN: true });
const loopShare = fc.double({ min: 0, max: 0.98, noNaN: true });
const place = fc.double({ min: 0, max: 1, noNaN: true });

test('half the rise is reached half the rise short of half way out', () => {
  // ψ = π/2: x = a π/2 + b, a quarter of the width and half the rise from the crest.
  expect(cycloidHeight(made(140, 14.5), 140 / 4 + 14.5 / 2)).toBeCloseTo(14.5 / 2, 12);
});

test('crest and channel are met and level', () => {
  fc.assert(
    fc.property(width, loopShare, (w, share) => {
      const arch = made(w, (share * w) / Math.PI);
      expect(cycloidHeight(arch, 0)).toBeCloseTo(arch.riseMm, 12);
      expect(cycloidHeight(arch, w / 2)).toBeCloseTo(0, 12);
      expect(cycloidSlope(arch, 0)).toBe(0);
      expect(cycloidSlope(arch, w / 2)).toBeCloseTo(0, 9);
    }),
  );
});

test('both sides are the same to the last bit, and the arch falls all the way out', () => {
  fc.assert(
    fc.property(width, loopShare, place, place, (w, share, u, v) => {
      const arch = made(w, (share * w) / Math.PI);
      const [near, far] = [Math.min(u, v) * (w / 2), Math.max(u, v) * (w / 2)];
      expect(cycloidHeight(arch, -near)).toBe(cycloidHeight(arch, near));
      expect(cycloidHeight(arch, far)).toBeLessThanOrEqual(cycloidHeight(arch, near) + 1e-12);
    }),
  );
});

test('slope and curvature agree with differences of the height', () => {
  fc.assert(
    fc.property(width, fc.double({ min: 0.05, max: 0.7, noNaN: true }), place, (w, share, u) => {
      const arch = made(w, (share * w) / Math.PI);
      const x = (u * 0.96 + 0.02) * (w / 2);
      const step = 1e-3;
      const slope = (cycloidHeight(arch, x + step) - cycloidHeight(arch, x - step)) / (2 * step);
      const bend = (cycloidSlope(arch, x + step) - cycloidSlope(arch, x - step)) / (2 * step);
      expect(cycloidSlope(arch, x)).toBeCloseTo(slope, 5);
      expect(cycloidCurvature(arch, x)).toBeCloseTo(bend / (1 + slope * slope) ** 1.5, 5);
      expect(Math.abs(cycloidSlope(arch, x))).toBeLessThanOrEqual(Math.abs(arch.steepest.slope) + 1e-12);
    }),
  );
});

test('the area is the sum of thin strips', () => {
  const arch = made(140, 14.5);
  let sum = 0;
  for (let index = 0; index < 14000; index++) sum += cycloidHeight(arch, -70 + (index + 0.5) / 100) / 100;
  expect(arch.areaMm2).toBeCloseTo(sum, 4);
});

test('a rise of the width divided by π is refused as a loop, a little less is drawn', () => {
  const refused = curtateCycloid(100, 100 / Math.PI + 1e-9);
  expect(refused.ok ? [] : refused.faults.map(({ code }) => code)).toEqual(['arch.loop']);
  expect(curtateCycloid(100, 31.8).ok).toBe(true);
});

test.each([
  [0, 10, 'arch.width'],
  [Number.NaN, 10, 'arch.width'],
  [100, -1, 'arch.rise'],
  [100, Number.NaN, 'arch.rise'],
])('a width of %d mm with a rise of %d mm is refused', (w, h, code) => {
  const refused = curtateCycloid(w, h);
  expect(refused.ok ? [] : refused.faults.map((fault) => fault.code)).toEqual([code]);
});
