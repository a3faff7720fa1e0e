import { expect, test } from 'vitest';
import { type Chain, circleChain } from '../../curve/index.ts';
import { insideLine } from './insideLine.ts';

const SQUARE: Chain<'body'> = {
  closed: true,
  vertices: [
    { x: 0, y: 0, bulge: 0 },
    { x: 100, y: 0, bulge: 0 },
    { x: 100, y: 100, bulge: 0 },
    { x: 0, y: 100, bulge: 0 },
  ],
};

function spans(y: number, holes: readonly Chain<'body'>[] = []): number[][] {
  return insideLine({ x: -50, y }, { x: 150, y }, SQUARE, holes).map((piece) =>
    piece.vertices.map((vertex) => vertex.x),
  );
}

test('a line is kept from edge to edge', () => {
  expect(spans(50)).toEqual([[expect.closeTo(0, 9), expect.closeTo(100, 9)]]);
});

test('a hole takes its width out of the line', () => {
  expect(spans(50, [circleChain({ x: 30, y: 50 }, 10, true)])).toEqual([
    [expect.closeTo(0, 9), expect.closeTo(20, 9)],
    [expect.closeTo(40, 9), expect.closeTo(100, 9)],
  ]);
});

test('a hole that is only touched does not break the line', () => {
  expect(spans(50, [circleChain({ x: 30, y: 60 }, 10, true)])).toEqual([
    [expect.closeTo(0, 9), expect.closeTo(100, 9)],
  ]);
});

test('a line beside the piece leaves nothing', () => {
  expect(spans(120)).toEqual([]);
});
