import { expect, test, vi } from 'vitest';

// What a browser tells of itself, where there is none.
vi.stubGlobal('navigator', { language: 'en-GB' });
const { language } = await import('../words/words.ts');
const { numberText, spreadText } = await import('./numberText.ts');
vi.unstubAllGlobals();

test.each([
  [{ value: 6.57, unit: 'mm', plusMinus: 1.3 }, '6.6 ± 1.3', '6,6 ± 1,3'],
  [{ value: 355.48, unit: 'mm', plusMinus: 0.4 }, '355.5 ± 0.4', '355,5 ± 0,4'],
  [{ value: 355.48, unit: 'mm', plusMinus: 0.12 }, '355.48 ± 0.12', '355,48 ± 0,12'],
  [{ value: 36, unit: 'mm', plusMinus: 2 }, '36 ± 2', '36 ± 2'],
  [{ value: 0.0521, unit: 'ratio', plusMinus: 0.0034 }, '0.052 ± 0.003', '0,052 ± 0,003'],
  [{ value: -6.25, unit: 'deg', plusMinus: 0.5 }, '−6.3° ± 0.5', '−6,3° ± 0,5'],
] as const)('%o is written to the decimal of its ±', (one, english, german) => {
  const text = () => `${numberText(one)} ${spreadText(one.plusMinus)}`;
  language.value = 'en';
  expect(text()).toBe(english);
  language.value = 'de';
  expect(text()).toBe(german);
});

test.each([
  [{ value: 355.48, unit: 'mm' }, '355,5'],
  [{ value: 6.57, unit: 'mm' }, '6,57'],
  [{ value: 6.57, unit: 'mm', plusMinus: 0 }, '6,57'],
  [{ value: 4, unit: 'count' }, '4'],
] as const)('%o, typed or exact, keeps its own decimals', (one, german) => {
  language.value = 'de';
  expect(numberText(one)).toBe(german);
});
