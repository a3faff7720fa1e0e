import { expect, test } from 'vitest';
import { FAMILIES } from './family.ts';
import { outlineHabit } from './outlineHabit.ts';
import { ordinarySize } from './sizes.ts';

test.each(FAMILIES)('a usual %s lies inside its own limits', (family) => {
  const habit = outlineHabit(family);
  const { bodyLengthMm, lowerBoutMm, waistMm, upperBoutMm } = habit.usualSizes;
  const inside = (value: number, limits: typeof habit.shareLimits.waist) => {
    expect(limits.least).toBeLessThan(limits.usualLeast);
    expect(value).toBeGreaterThan(limits.usualLeast);
    expect(value).toBeLessThan(limits.usualMost);
    expect(limits.usualMost).toBeLessThan(limits.most);
  };
  expect(bodyLengthMm).toBeGreaterThan(habit.bodyLengthLimitsMm.least);
  expect(bodyLengthMm).toBeLessThan(habit.bodyLengthLimitsMm.most);
  inside(lowerBoutMm / bodyLengthMm, habit.shareLimits.lowerBout);
  inside(waistMm / bodyLengthMm, habit.shareLimits.waist);
  inside(upperBoutMm / bodyLengthMm, habit.shareLimits.upperBout);
});

test.each(FAMILIES)('a usual %s is as long and wide as the ordinary size of the trade, to 3 %%', (family) => {
  const sizes = outlineHabit(family).usualSizes;
  const { values } = ordinarySize(family);
  for (const name of ['bodyLength', 'upperBout', 'waist', 'lowerBout'] as const)
    expect(Math.abs(sizes[`${name}Mm`] / (values[name]?.value ?? 0) - 1)).toBeLessThan(0.03);
});

test.each(FAMILIES)('every figure of a usual %s comes with a spread above zero', (family) => {
  const spreads: unknown[] = [];
  JSON.stringify(outlineHabit(family), (key, value) => {
    if (key === 'spread') spreads.push(value);
    return value;
  });
  expect(spreads.length).toBe(13 + 14 + 2 + 5 + 2);
  for (const spread of spreads) expect(spread).toBeGreaterThan(0);
});
