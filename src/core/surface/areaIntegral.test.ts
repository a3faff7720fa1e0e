import { expect, test } from 'vitest';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { point } from '../base/index.ts';
import { areaOf, type Chain, circleChain, momentsOf, outlineChain, reverseChain } from '../curve/index.ts';
import { integrateInside } from './areaIntegral.ts';

function sums(
  chains: readonly Chain<'body'>[],
  panelMm: number,
  of: (x: number, y: number) => number,
): number {
  let sum = 0;
  integrateInside(chains, panelMm, (x, y, areaMm2) => {
    sum += of(x, y) * areaMm2;
  });
  return sum;
}

const square: Chain<'body'> = {
  closed: true,
  vertices: [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ].map(([x, y]) => ({ ...point<'body'>(x ?? 0, y ?? 0), bulge: 0 })),
};

test('powers over a square come out as they are integrated by hand', () => {
  expect(sums([square], 5, () => 1)).toBeCloseTo(4, 12);
  expect(sums([square], 5, (x) => x ** 5)).toBeCloseTo(64 / 3, 10);
  expect(sums([square], 0.1, (x, y) => x ** 5 * y ** 4)).toBeCloseTo((64 / 6) * (32 / 5), 6);
});

test('a disc with a hole holds what its radii say, also of the square of the distance', () => {
  const ring = [circleChain(point<'body'>(3, -2), 10), reverseChain(circleChain(point<'body'>(3, -2), 4))];
  const polar = (Math.PI * (10 ** 4 - 4 ** 4)) / 2;
  expect(sums(ring, 0.5, () => 1) / (Math.PI * 84)).toBeCloseTo(1, 6);
  expect(sums(ring, 0.5, (x, y) => (x - 3) ** 2 + (y + 2) ** 2) / polar).toBeCloseTo(1, 6);
});

test('of what is even, the right half alone is half of it, and no place left of the middle is asked for', () => {
  const [disc, cut] = [10, 5].map((radius) => circleChain(point<'body'>(0, 0), radius));
  let [area, least] = [0, Number.POSITIVE_INFINITY];
  const add = (x: number, _y: number, areaMm2: number): void => {
    area += areaMm2;
    least = Math.min(least, x);
  };
  integrateInside([disc], 1, add, [cut], 0);
  expect(area / (Math.PI * 50)).toBeCloseTo(1, 6);
  expect(least).toBeGreaterThan(0);
});

test('what breaks along a circle is summed rightly with a cut there, and not without', () => {
  const inner = circleChain(point<'body'>(0.3, 0.2), 3);
  const outer = circleChain(point<'body'>(0, 0), 10);
  const step = (x: number, y: number): number => (Math.hypot(x - 0.3, y - 0.2) < 3 ? 5 : 1);
  const true_ = Math.PI * (100 - 9) + 5 * Math.PI * 9;
  const sum = (cuts: readonly Chain<'body'>[]): number => {
    let total = 0;
    integrateInside([outer], 2, (x, y, areaMm2) => (total += step(x, y) * areaMm2), cuts);
    return Math.abs(total / true_ - 1);
  };
  expect(sum([inner])).toBeLessThan(1e-5);
  expect(sum([])).toBeGreaterThan(1e-3);
});

test("a violin's outline has the area and the middle that its arcs have", () => {
  const body = outlineChain(violinHalf());
  const area = sums([body], 4, () => 1);
  expect(Math.abs(area / areaOf(body) - 1)).toBeLessThan(1e-6);
  expect(sums([body], 4, (_x, y) => y) / area).toBeCloseTo(momentsOf(body).centroid.y, 2);
  expect(sums([body], 4, (x) => x) / area).toBeCloseTo(0, 6);
});
