import { expect, test } from 'vitest';
import { boundsOf } from '../curve/index.ts';
import type { Lettering } from './drawing.ts';
import { letteringFindings, letteringStrokes, letteringWidthMm } from './lettering.ts';

const base: Lettering = { text: 'H', at: { x: 10, y: 20 }, heightMm: 14, turnRad: 0, anchor: 'start' };

test('a capital stands on its base line at the height asked for', () => {
  const boxes = letteringStrokes(base).map((stroke) => boundsOf(stroke));
  expect(Math.min(...boxes.map((box) => box.min.x))).toBeCloseTo(10, 9);
  expect(Math.min(...boxes.map((box) => box.min.y))).toBeCloseTo(20, 9);
  expect(Math.max(...boxes.map((box) => box.max.y))).toBeCloseTo(34, 9);
});

test('every letter, figure and sign of the trade has strokes, accents too', () => {
  const text =
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789 .,:;()+-±×/=\'"%°–—·&?!#_ ÄÖÜäöüß éèêëçñåøæœčšžřůőł ½';
  expect(letteringFindings([{ ...base, text }])).toEqual([]);
});

test('an unknown character is written as a box and named', () => {
  expect(letteringStrokes({ ...base, text: '日' })).toHaveLength(1);
  const [finding] = letteringFindings([{ ...base, text: 'a日b日' }]);
  expect(finding?.code).toBe('lettering.unknown-character');
  expect(finding?.found).toContain('日');
});

test('names of things every object has are only text', () => {
  expect(letteringFindings([{ ...base, text: 'constructor __proto__' }])).toEqual([]);
});

test.each([
  ['start', 0],
  ['middle', -0.5],
  ['end', -1],
] as const)('anchored at its %s the ink begins where the width says', (anchor, share) => {
  const lettering = { ...base, text: 'Hin 12 H', anchor };
  const left = Math.min(...letteringStrokes(lettering).map((stroke) => boundsOf(stroke).min.x));
  expect(left).toBeCloseTo(10 + share * letteringWidthMm(lettering), 9);
});

test('turned lettering keeps its size', () => {
  const [level, turned] = [0, Math.PI / 2].map((turnRad) =>
    letteringStrokes({ ...base, text: 'HH', turnRad }).map((s) => boundsOf(s)),
  );
  const width = Math.max(...(level ?? []).map((b) => b.max.x)) - 10;
  expect(Math.max(...(turned ?? []).map((b) => b.max.y)) - 20).toBeCloseTo(width, 9);
});
