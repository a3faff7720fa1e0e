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

/** The same with two measured sections and a measured long arch. */
function measuredLoft(crestMm?: number): Loft {
  const curve = (to: number, values: readonly (readonly [number, number])[], slopes: readonly number[]) => {
    const made = fairSpline(
      {
        from: 0,
        to,
        spans: 12,
        values: values.map(([at, value]) => ({ at, value })),
        slopes: slopes.map((at) => ({ at, slope: 0 })),
        stiffness: 1,
      },
      'test',
    );
    if (!made.ok) throw new Error('no curve');
    return made.value;
  };
  const across = (height: number, share: number) =>
    curve(
      1,
      [
        [0, 0],
        [share, height],
        [1, 0],
      ],
      [0, 1],
    );
  const along = (lower: number, upper: number) =>
    curve(
      340,
      [
        [80, lower],
        [250, upper],
      ],
      [0, 340],
    );
  return {
    ...loft(crestMm),
    measured: {
      lift: curve(
        340,
        [
          [0, 0],
          [110, 0.5],
          [260, -0.3],
          [340, 0],
        ],
        [0, 340],
      ),
      sections: [
        { across: across(-0.05, 0.5), along: along(1, 0) },
        { across: across(0.04, 0.6), along: along(0, 1) },
      ],
    },
  };
}

const LOFTS = [
  ['of its numbers', loft],
  ['with what was measured', measuredLoft],
] as const;

test('sections stand in their own rows, the lift on the centre line', () => {
  const [plain, measured] = [loft(), measuredLoft()];
  const [before, after] = [loftAt(plain, 0, 110).zMm, loftAt(measured, 0, 110).zMm];
  expect(after - before).toBeCloseTo(0.5, 9);
  const { widthMm, riseMm } = loftRow(measured, 80);
  const lifted = { ...measured, measured: { lift: measured.measured?.lift ?? plain.fullness, sections: [] } };
  const x = 0.5 * widthMm;
  expect(loftAt(measured, x, 80).zMm - loftAt(lifted, x, 80).zMm).toBeCloseTo(-0.05 * riseMm, 9);
});

test.each(LOFTS)('%s: its slopes agree with differences of its height, across and along', (_, made) => {
  const surface = made();
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

test.each(LOFTS)(
  '%s: it is even across, and flat beyond the brim of the body width and beyond the ends',
  (_, made) => {
    const surface = made();
    expect(loftAt(surface, -20, 150).zMm).toBe(loftAt(surface, 20, 150).zMm);
    expect(loftAt(surface, -20, 150).slopeX).toBe(-loftAt(surface, 20, 150).slopeX);
    expect(loftAt(surface, 50 * 1.1001, 180).zMm).toBe(0);
    expect(loftAt(surface, 0, -1).zMm).toBe(0);
    expect(loftAt(surface, 0, 341).zMm).toBe(0);
  },
);

test.each(LOFTS)(
  '%s: across its lowest line slopes and bends are continuous, and the brim beyond stands a few hundredths high at most',
  (_, made) => {
    const surface = made();
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
  },
);

test.each(LOFTS)(
  '%s: bends are how the slopes change, with the crest off the middle and width, rise and fullness all in motion',
  (_, made) => {
    const moved = made(200);
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
  },
);
