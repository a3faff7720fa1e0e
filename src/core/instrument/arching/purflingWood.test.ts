import { expect, test } from 'vitest';
import { archValues } from '../../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { plateArch } from './plateArch.ts';
import { purflingWood } from './purflingWood.ts';

const made = plateArch(archValues(), violinHalf(), 'back');
if (!made.ok) throw new Error('refused');
const arch = made.value;

test.each([
  [1.8, 2, []],
  [2.5, 1.3, ['caution']],
  [4, -0.2, ['contradiction']],
] as const)('a groove %s mm deep in an edge of 3.8 mm leaves %s mm', (depth, left, weights) => {
  const { entries, findings } = purflingWood(archValues({ purflingDepth: depth }), arch);
  expect(entries[0]?.value).toBeCloseTo(left, 9);
  expect(findings.map(({ weight }) => weight)).toEqual(weights);
});

test('without a depth nothing is said', () => {
  expect(purflingWood(archValues(), arch)).toEqual({ entries: [], findings: [] });
});
