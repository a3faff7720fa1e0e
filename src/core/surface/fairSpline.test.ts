import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FairSpline, type FairSplineTask, fairSpline, splineSlope, splineValue } from './fairSpline.ts';

function made(task: FairSplineTask): FairSpline {
  const checked = fairSpline(task, 'test');
  if (!checked.ok) throw new Error(checked.faults[0]?.found);
  return checked.value;
}

test('through two points it is the straight line', () => {
  const line = made({
    from: 0,
    to: 10,
    spans: 7,
    values: [
      { at: 0, value: 1 },
      { at: 10, value: 5 },
    ],
    stiffness: 1,
  });
  fc.assert(
    fc.property(fc.double({ min: 0, max: 10, noNaN: true }), (x) => {
      expect(splineValue(line, x)).toBeCloseTo(1 + 0.4 * x, 9);
      expect(splineSlope(line, x)).toBeCloseTo(0.4, 9);
    }),
  );
});

test('exact values and slopes are taken exactly, whatever the samples say', () => {
  const values = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 5, maxLength: 5 });
  fc.assert(
    fc.property(values, ([a = 0, b = 0, c = 0, d = 0, e = 0]) => {
      const spline = made({
        from: 0,
        to: 100,
        spans: 18,
        values: [
          { at: 0, value: a },
          { at: 37, value: b },
          { at: 80.5, value: c },
        ],
        slopes: [{ at: 100, slope: d }],
        near: [{ at: 50, value: e, weight: 3 }],
        stiffness: 0.1,
      });
      expect(splineValue(spline, 0)).toBeCloseTo(a, 8);
      expect(splineValue(spline, 37)).toBeCloseTo(b, 8);
      expect(splineValue(spline, 80.5)).toBeCloseTo(c, 8);
      expect(splineSlope(spline, 100)).toBeCloseTo(d, 8);
    }),
  );
});

test('a cubic sampled closely with little stiffness comes back', () => {
  const cubic = (x: number): number => 0.01 * x ** 3 - 0.2 * x * x + x;
  const near = Array.from({ length: 101 }, (_, x) => ({ at: x / 5, value: cubic(x / 5), weight: 1e9 }));
  const spline = made({ from: 0, to: 20, spans: 10, values: [{ at: 0, value: 0 }], near, stiffness: 1e-6 });
  for (const { at, value } of near) expect(splineValue(spline, at)).toBeCloseTo(value, 6);
});

test('two different values at one place are refused', () => {
  const checked = fairSpline(
    {
      from: 0,
      to: 10,
      spans: 7,
      values: [
        { at: 3, value: 1 },
        { at: 3, value: 2 },
      ],
      stiffness: 1,
    },
    'stations',
  );
  expect(checked.ok ? [] : checked.faults.map(({ code }) => code)).toEqual(['arch.fair']);
});
