import { expect, test } from 'vitest';
import { cubicKnots, knotBasis, knotPlaces, knotSolver } from './cubicKnots.ts';

const knots = cubicKnots([-3, 2.5, 7], 1.1);

function valueAt(coefficients: Float64Array, place: number): { value: number; slope: number } {
  const { first, values, slopes } = knotBasis(knots, place);
  const sum = (basis: readonly number[]): number =>
    basis.reduce((total, share, index) => total + share * (coefficients[first + index] as number), 0);
  return { value: sum(values), slope: sum(slopes) };
}

test('a stop in between is a double knot, the ends stand four times, and no step is too wide', () => {
  const times = (value: number): number => knots.filter((knot) => knot === value).length;
  expect([-3, 2.5, 7].map(times)).toEqual([4, 2, 4]);
  const steps = knots.slice(1).map((knot, index) => knot - (knots[index] as number));
  expect(Math.max(...steps)).toBeLessThan(1.1 + 1e-9);
  expect(Math.min(...steps)).toBeGreaterThanOrEqual(0);
});

test('a straight line has its own values at the knot places as coefficients', () => {
  const line = knotPlaces(knots).map((place) => 2 - 3 * place);
  for (let place = -3; place <= 7; place += 0.37) {
    expect(valueAt(line, place).value).toBeCloseTo(2 - 3 * place, 12);
    expect(valueAt(line, place).slope).toBeCloseTo(-3, 12);
  }
});

test('a cubic that bends anew at the stop comes back from its values at the knot places', () => {
  const curve = (place: number): number => place ** 3 / 9 - place + 2 * Math.max(0, place - 2.5) ** 2;
  const slope = (place: number): number => place ** 2 / 3 - 1 + 4 * Math.max(0, place - 2.5);
  const coefficients = knotSolver(knots)(knotPlaces(knots).map(curve));
  for (let place = -3; place <= 7; place += 0.0437) {
    expect(valueAt(coefficients, place).value).toBeCloseTo(curve(place), 10);
    expect(valueAt(coefficients, place).slope).toBeCloseTo(slope(place), 10);
  }
  expect(valueAt(coefficients, 7).value).toBeCloseTo(curve(7), 10);
});
