import { expect, test } from 'vitest';
import { fairSpline } from './fairSpline.ts';
import { type Loft, loftAt, loftHeight, loftRow, loftShape } from './loft.ts';
import { longArch } from './longArch.ts';

function loft(crestMm = 170): Loft {
  const along = longArch(0, 340, 12, { kind: 'circle', filletMm: 40 }, 'test', crestMm);
  const width = fairSpline(
    {
      from: 0,
      to: 340,
      spans: 18,
      values: [
        { at: 0, value: 0 },
        { at: 70, value: 96 ** 2 },
        { at: 180, value: 50 ** 2 },
        { at: 270, value: 77 ** 2 },
        { at: 340, value: 0 },
      ],
      stiffness: 1,
    },
    'test',
  );
  const fullness = fairSpline(
    {
      from: 0,
      to: 340,
      spans: 12,
      values: [
        { at: 0, value: 0 },
        { at: 120, value: -0.08 },
        { at: 340, value: 0 },
      ],
      stiffness: 1,
    },
    'test',
  );
  if (!along.ok || !width.ok || !fullness.ok) throw new Error('no loft');
  return { longArch: along.value, squaredHalfWidth: width.value, fullness: fullness.value };
}

test('its slopes agree with differences of its height, across and along', () => {
  const surface = loft();
  const step = 1e-4;
  for (let y = 15; y < 330; y += 8.3)
    for (let x = 0.5; x < 45; x += 3.7) {
      const at = loftAt(surface, x, y);
      const across = (loftAt(surface, x + step, y).zMm - loftAt(surface, x - step, y).zMm) / (2 * step);
      const along = (loftAt(surface, x, y + step).zMm - loftAt(surface, x, y - step).zMm) / (2 * step);
      expect(at.slopeX).toBeCloseTo(across, 6);
      expect(at.slopeY).toBeCloseTo(along, 6);
    }
});

test('it is even across, and flat beyond the brim of the body width and beyond the ends', () => {
  const surface = loft();
  expect(loftAt(surface, -20, 150).zMm).toBe(loftAt(surface, 20, 150).zMm);
  expect(loftAt(surface, -20, 150).slopeX).toBe(-loftAt(surface, 20, 150).slopeX);
  expect(loftAt(surface, 50 * 1.1001, 180).zMm).toBe(0);
  expect(loftAt(surface, 0, -1).zMm).toBe(0);
  expect(loftAt(surface, 0, 341).zMm).toBe(0);
});

test('across its lowest line slopes and bends are continuous, and the brim beyond stands a few hundredths high at most', () => {
  const surface = loft();
  for (const yMm of [40, 110, 180, 260]) {
    const row = loftRow(surface, yMm);
    for (const share of [1, 1.1]) {
      const [inner, outer] = [-1e-7, 1e-7].map((mm) => loftShape(surface, share * row.widthMm + mm, yMm));
      for (const name of ['zMm', 'slopeX', 'slopeY', 'bendXX', 'bendXY', 'bendYY'] as const)
        expect(Math.abs(inner[name] - outer[name])).toBeLessThan(1e-6);
    }
    for (let u = 1; u < 1.1; u += 0.01)
      expect(loftHeight(row, u * row.widthMm)).toBeLessThan(0.003 * row.riseMm);
  }
});

test('bends are how the slopes change, with the crest off the middle and width, rise and fullness all in motion', () => {
  const moved = loft(200);
  for (const [x, y] of [
    [12, 60],
    [-33, 120],
    [5, 199],
    [61, 240],
    [-70, 300],
    [51, 180],
    [-53, 180],
  ] as const) {
    const shape = loftShape(moved, x, y);
    const step = 1e-4;
    const [right, left] = [loftAt(moved, x + step, y), loftAt(moved, x - step, y)];
    const [up, down] = [loftAt(moved, x, y + step), loftAt(moved, x, y - step)];
    const plain = loftAt(moved, x, y);
    expect(shape.zMm).toBe(plain.zMm);
    expect(shape.slopeX).toBeCloseTo(plain.slopeX, 14);
    expect(shape.slopeY).toBeCloseTo(plain.slopeY, 14);
    expect(shape.bendXX).toBeCloseTo((right.slopeX - left.slopeX) / (2 * step), 7);
    expect(shape.bendXY).toBeCloseTo((right.slopeY - left.slopeY) / (2 * step), 7);
    expect(shape.bendYY).toBeCloseTo((up.slopeY - down.slopeY) / (2 * step), 7);
    expect(loftHeight(loftRow(moved, y), x)).toBe(shape.zMm);
  }
});
