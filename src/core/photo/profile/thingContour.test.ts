import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { farthestPath, pathBetween } from './linePath.ts';
import { evenOpen, outerBoundary } from './thingContour.ts';

/** A mask from rows of text: # is inside. */
function maskOf(rows: readonly string[]) {
  const widthPx = rows[0]!.length;
  return {
    widthPx,
    heightPx: rows.length,
    inside: Uint8Array.from(rows.join(''), (cell) => (cell === '#' ? 1 : 0)),
  };
}

function area(line: readonly { x: number; y: number }[]): number {
  return line.reduce((sum, a, i) => {
    const b = line[(i + 1) % line.length]!;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

test('the boundary of a piece goes round it on the cracks, holes ignored, smaller pieces left out', () => {
  const boundary = outerBoundary(maskOf(['......', '.###.#', '.#.#..', '.###..', '......']));
  expect(boundary[0]).toEqual({ x: 0.5, y: 0.5 });
  expect(boundary.length).toBe(12);
  expect(area(boundary)).toBe(9);
});

test('a boundary encloses as many pixels as the piece and its holes have, for any picture', () => {
  fc.assert(
    fc.property(fc.array(fc.boolean(), { minLength: 64, maxLength: 64 }), (cells) => {
      const inside = Uint8Array.from(cells, Number);
      const boundary = outerBoundary({ widthPx: 8, heightPx: 8, inside });
      if (!inside.includes(1)) expect(boundary).toEqual([]);
      else {
        expect(area(boundary)).toBeGreaterThan(0);
        expect(Number.isInteger(area(boundary))).toBe(true);
        expect(area(boundary)).toBeLessThanOrEqual(64);
      }
    }),
  );
});

test('the way along a line runs from end to end, and between two places where they are given', () => {
  const mask = maskOf(['..####.', '.#....#', '#......']);
  const path = farthestPath(mask);
  expect(path.length).toBe(7);
  expect([path[0], path.at(-1)]).toContainEqual({ x: 0, y: 2 });
  expect([path[0], path.at(-1)]).toContainEqual({ x: 6, y: 1 });
  expect(pathBetween(mask, 2, 5).map(({ x }) => x)).toEqual([5, 4, 3, 2]);
  expect(pathBetween(maskOf(['#.#']), 0, 2)).toEqual([]);
});

test('an even line keeps its ends and its step', () => {
  const line = evenOpen(
    [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 10, y: 0 },
    ],
    2,
  );
  expect(line.map(({ x }) => x)).toEqual([0, 2, 4, 6, 8, 10]);
});
