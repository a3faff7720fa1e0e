import { expect, test } from 'vitest';
import {
  acos,
  asin,
  atan,
  atan2,
  cbrt,
  cos,
  exp,
  expm1,
  hypot,
  log,
  norm,
  power,
  sin,
  tan,
  tanh,
} from './index.ts';

test('places that are known exactly', () => {
  expect([sin(0), cos(0), tan(0), exp(0), log(1), atan(0), power(7, 0)]).toEqual([0, 1, 0, 1, 0, 0, 1]);
  expect(atan(1)).toBe(Math.PI / 4);
  expect(exp(1)).toBeCloseTo(Math.E, 14);
  expect(log(2)).toBe(Math.LN2);
  expect(cbrt(-27)).toBe(-3);
  expect(hypot(-3, 4)).toBe(5);
  expect(hypot(2, -3, 6)).toBe(7);
  expect(norm([1, -1, 1, 1])).toBe(2);
  expect(power(10, 6)).toBe(1_000_000);
  expect(power(2, 0.5)).toBeCloseTo(Math.SQRT2, 15);
  expect(power(2, -3)).toBe(1 / 8);
  expect(power(-2, 3)).toBe(-8);
  expect(power(4, 1.5)).toBe(8);
});

test('what is left of e to the x beside its 1 keeps its places where x is small', () => {
  expect(expm1(2e-12) / 2e-12).toBeCloseTo(1 + 1e-12, 15);
});

test('half turns come out as the halves of the nearest number to pi do', () => {
  expect(sin(Math.PI)).toBe(1.2246467991473532e-16);
  expect(cos(Math.PI / 2)).toBe(6.123233995736766e-17);
  expect(sin(Math.PI / 2)).toBe(1);
  expect(cos(Math.PI)).toBe(-1);
});

test('directions in all quarters, and signs of zeros, as the language has them', () => {
  const values = [-Infinity, -2, -1, -0, 0, 1, 2, Infinity];
  for (const y of values)
    for (const x of values)
      if (Number.isFinite(x) || Number.isFinite(y))
        expect([y, x, atan2(y, x)]).toEqual([y, x, Math.atan2(y, x)]);
  expect(asin(-1)).toBe(-Math.PI / 2);
  expect(acos(-1)).toBe(Math.PI);
  expect(acos(1)).toBe(0);
  for (const odd of [asin, atan, cbrt]) expect(odd(-0)).toBe(-0);
});

test('ends of the range, and what is no number', () => {
  expect([exp(800), exp(-800), log(0), exp(-Infinity), tanh(40), tanh(-Infinity)]).toEqual([
    Infinity,
    0,
    -Infinity,
    0,
    1,
    -1,
  ]);
  expect(exp(709.7)).toBeCloseTo(1.654984e308, -303);
  expect(exp(-740) / 4.199558e-322).toBeCloseTo(1, 1);
  expect(log(Number.MIN_VALUE)).toBeCloseTo(-744.44007, 5);
  expect(log(Number.MAX_VALUE)).toBeCloseTo(709.782713, 6);
  for (const none of [
    sin(Infinity),
    cos(Number.NaN),
    log(-1),
    asin(1.1),
    acos(-2),
    atan(Number.NaN),
    exp(Number.NaN),
  ])
    expect(none).toBeNaN();
  for (const none of [
    power(-1, 0.5),
    atan2(Number.NaN, 1),
    atan2(1, Number.NaN),
    tanh(Number.NaN),
    cbrt(Number.NaN),
  ])
    expect(none).toBeNaN();
});

test('far round, angles lose no more than their own last place', () => {
  for (const turns of [3, 1000, 150_000]) {
    const angle = turns * 2 * Math.PI + 0.5;
    expect(sin(angle)).toBeCloseTo(Math.sin(angle), 13);
    expect(cos(angle)).toBeCloseTo(Math.cos(angle), 13);
  }
  expect(Math.abs(sin(1e300))).toBeLessThanOrEqual(1);
});
