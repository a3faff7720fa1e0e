import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgeSpot, FoundEdge } from './foundEdge.ts';
import { joinedEdges } from './joinedEdges.ts';

/** Two straight halves 100 mm to either side of the centre line, `outMm` farther out; some places may not be seen. */
function edgeAt(outMm: number, sigmaMm = 0.1, unseen: (y: number) => boolean = () => false) {
  const half = (side: 1 | -1): EdgeSpot<'scene'>[] =>
    Array.from({ length: 41 }, (_, i) => ({
      ...point<'scene'>(side * (100 + outMm), 2 * i),
      section: 'lowerBout' as const,
      alongMm: 2 * i,
      seen: !unseen(2 * i),
      sigmaMm,
    }));
  return { left: half(-1), right: half(1) } as FoundEdge<'scene'>;
}

const widthAt = ({ left, right }: FoundEdge<'scene'>, i: number) =>
  (right[i] as { x: number }).x - (left[i] as { x: number }).x;

test('one edge is given back as it is', () => {
  const edge = edgeAt(0);
  expect(joinedEdges([edge])).toEqual({ edge, apart: null });
});

test('two edges seen equally well are joined half way, and how far they lay apart is told', () => {
  const { edge, apart } = joinedEdges([edgeAt(0), edgeAt(0.4)]);
  expect(widthAt(edge, 20)).toBeCloseTo(200.4, 9);
  expect(apart?.rmsMm).toBeCloseTo(0.4, 9);
  expect(edge.right[20]?.sigmaMm).toBeLessThan(0.1);
});

test('the surer edge counts for more', () => {
  const { edge } = joinedEdges([edgeAt(0, 0.05), edgeAt(0.4, 0.5)]);
  expect(widthAt(edge, 20)).toBeLessThan(200.05);
});

test('an edge too far off to be the same line leaves the first alone', () => {
  expect(widthAt(joinedEdges([edgeAt(0), edgeAt(3)]).edge, 20)).toBeCloseTo(200, 9);
});

test('what the first does not see is taken from the other', () => {
  const { edge } = joinedEdges([edgeAt(0, 0.1, (y) => y > 30 && y < 50), edgeAt(0.4)]);
  expect(edge.right[20]).toMatchObject({ x: 100.4, seen: true, alongMm: 40 });
});
