import { expect, test } from 'vitest';
import { parseGaugeChoices } from './gaugeChoices.ts';

test('heights for further gauges are read in millimetres or inches, each once, from the lowest up', () => {
  const read = parseGaugeChoices({ gaugeAt: '150, 95,150 mm,4 in' });
  expect(read.ok && read.value).toEqual({ atMm: [95, 101.6, 150] });
});

test('what is not said stays as it is, and nothing is added for it', () => {
  const read = parseGaugeChoices({});
  expect(read.ok && read.value).toEqual({});
});

test('feet and working edge are chosen by name', () => {
  const read = parseGaugeChoices({ gaugeFeet: 'bench', gaugeEdge: 'square' });
  expect(read.ok && read.value).toEqual({ feet: 'bench', workingEdge: 'square' });
});

test('everything that cannot be read is named at once', () => {
  const read = parseGaugeChoices({ gaugeAt: '95,,150', gaugeFeet: 'table', gaugeEdge: 'round' });
  expect(read.ok ? [] : read.faults.map(({ at }) => at)).toEqual([
    '--gauge-at',
    '--gauge-feet',
    '--gauge-edge',
  ]);
});
