import { expect, test } from 'vitest';
import { fiddleForm, rectangle, sampleDrawings } from '../../../test/laws/sampleDrawings.ts';
import { type Chain, circleChain, reverseChain } from '../curve/index.ts';
import type { Drawing, Meaning } from '../drawing/index.ts';
import { preflight } from './preflight.ts';

test('a sound drawing has no finding', () => {
  for (const drawing of sampleDrawings()) expect(preflight(drawing)).toEqual([]);
});

const outer = rectangle(0, 0, 40, 30);
const hole = circleChain<'drawing'>({ x: 20, y: 15 }, 5, true);
const bow: Chain<'drawing'> = {
  closed: true,
  vertices: [
    { x: 0, y: 0, bulge: 0 },
    { x: 40, y: 30, bulge: 0 },
    { x: 40, y: 0, bulge: 0 },
    { x: 0, y: 40, bulge: 0 },
  ],
};

const planted: readonly (readonly [string, readonly (readonly [Meaning, Chain<'drawing'>])[], string])[] = [
  ['a contour left open', [['cut', { ...outer, closed: false }]], 'preflight.open'],
  [
    'an outer edge drawn twice',
    [
      ['cut', outer],
      ['cut', outer],
    ],
    'preflight.double',
  ],
  [
    'a hole drawn twice, the other way round',
    [
      ['cut', outer],
      ['cut-inside', hole],
      ['cut-inside', reverseChain(hole)],
    ],
    'preflight.double',
  ],
  [
    'two pieces that share part of an edge',
    [
      ['cut', outer],
      ['cut', rectangle(40, 10, 20, 50)],
    ],
    'preflight.overlap',
  ],
  ['a contour that crosses itself', [['cut', bow]], 'preflight.self-crossing'],
  [
    'a hole that breaks through the edge',
    [
      ['cut', outer],
      ['cut-inside', circleChain({ x: 40, y: 15 }, 5, true)],
    ],
    'preflight.crossing',
  ],
  [
    'a hole beside the piece',
    [
      ['cut', outer],
      ['cut-inside', circleChain({ x: 60, y: 15 }, 5, true)],
    ],
    'preflight.hole-outside',
  ],
  [
    'an outer edge inside another',
    [
      ['cut', outer],
      ['cut', rectangle(5, 5, 10, 10)],
    ],
    'preflight.nested',
  ],
  [
    'a hole that runs the wrong way',
    [
      ['cut', outer],
      ['cut-inside', reverseChain(hole)],
    ],
    'preflight.direction',
  ],
  [
    'a vertex given twice',
    [['cut', { closed: true, vertices: [{ x: 0, y: 0, bulge: 0 }, ...outer.vertices] }]],
    'preflight.zero-length',
  ],
  ['a coordinate that is no number', [['cut', rectangle(0, 0, Number.NaN, 5)]], 'preflight.not-finite'],
];

test.each(planted)('%s is found', (_what, lines, code) => {
  expect(preflight(drawingOf(lines)).map((finding) => finding.code)).toContain(code);
});

test('a score that ends on the edge is no fault', () => {
  const score: Chain<'drawing'> = {
    closed: false,
    vertices: [
      { x: 20, y: 0, bulge: 0 },
      { x: 20, y: 9, bulge: 0 },
    ],
  };
  expect(
    preflight(
      drawingOf([
        ['cut', outer],
        ['score', score],
      ]),
    ),
  ).toEqual([]);
});

function drawingOf(lines: readonly (readonly [Meaning, Chain<'drawing'>])[]): Drawing {
  return { ...fiddleForm(), lines: lines.map(([meaning, chain]) => ({ meaning, chain })), lettering: [] };
}
