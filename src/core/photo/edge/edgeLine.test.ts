import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { edgeLine } from './edgeLine.ts';
import type { EdgeSpot } from './foundEdge.ts';

/** An upright edge at x = 100, a station each millimetre; places by `yOf`. */
function spots(yOf: (i: number) => number, unseen: (i: number) => boolean = () => false): EdgeSpot<'body'>[] {
  return Array.from({ length: 41 }, (_, i) => ({
    ...point<'body'>(100, yOf(i)),
    section: 'lowerBout',
    alongMm: i,
    seen: !unseen(i),
    sigmaMm: 0.1,
  }));
}

test('a point is told by its way from the edge, outside for more', () => {
  const link = edgeLine(
    spots((i) => i),
    1,
  ).nearest(100.3, 20.4, 20);
  expect(link?.distanceMm).toBeCloseTo(0.3, 12);
  expect([link?.normalX, link?.normalY]).toEqual([1, expect.closeTo(0, 12)]);
});

test('what was not seen over more than four millimetres is not told of', () => {
  const line = edgeLine(
    spots(
      (i) => i,
      (i) => i > 15 && i < 25,
    ),
    1,
  );
  expect(line.nearest(100, 20, 20)).toBeNull();
  expect(line.nearest(100, 15.4, 15)).not.toBeNull();
});

test('nor is a stretch that no station lies in, though its neighbours follow each other', () => {
  const line = edgeLine(
    spots((i) => (i < 20 ? i : i + 12)),
    1,
  );
  expect(line.nearest(100, 25, 20)).toBeNull();
  expect(line.nearest(100, 19.4, 19)).not.toBeNull();
});
