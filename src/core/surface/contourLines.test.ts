import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chainThrough } from '../curve/index.ts';
import type { ContourLine } from './contourLine.ts';
import { contourLevels, contourLines } from './contourLines.ts';
import { contourOnSurface, placesOf } from './contourOnSurface.ts';
import { trimContour } from './contourTrim.ts';
import { type HeightField, heightField } from './heightField.ts';

const square = (zMm: readonly number[], columns: number): HeightField => ({
  fromXMm: 0,
  fromYMm: 0,
  stepMm: 1,
  columns,
  rows: zMm.length / columns,
  zMm: Float64Array.from(zMm),
});

test('round one high place the line runs anticlockwise, half way between the heights', () => {
  const [line, ...more] = contourLines(square([0, 0, 0, 0, 2, 0, 0, 0, 0], 3), [1]);
  expect(more).toEqual([]);
  expect(line?.closed).toBe(true);
  expect(placesOf(line as ContourLine).toSorted()).toEqual(
    [
      [0.5, 1],
      [1, 0.5],
      [1, 1.5],
      [1.5, 1],
    ].toSorted(),
  );
  expect(areaOf(line as ContourLine)).toBeCloseTo(0.5, 12);
});

test('a line that meets the end of the field is open, with the higher side on its left', () => {
  const [line] = contourLines(square([0, 4, 0, 4, 0, 4], 2), [1]);
  expect(line?.closed).toBe(false);
  expect(placesOf(line as ContourLine)).toEqual([
    [0.25, 2],
    [0.25, 1],
    [0.25, 0],
  ]);
});

test('no line is drawn where heights are missing, and those beside them end there', () => {
  const nan = Number.NaN;
  const lines = contourLines(square([0, 2, 0, 2, 0, nan, 0, 2, 0, 2], 2), [1]);
  expect(lines.map((line) => placesOf(line))).toEqual([
    [
      [0.5, 1],
      [0.5, 0],
    ],
    [
      [0.5, 4],
      [0.5, 3],
    ],
  ]);
});

test('at a saddle the middle decides: a high middle joins the high corners, a low one parts them', () => {
  const joined = contourLines(square([4, 0, 0, 4], 2), [1.5]);
  const parted = contourLines(square([4, 0, 0, 4], 2), [2.5]);
  const ends = (lines: readonly ContourLine[]) => lines.map((line) => placesOf(line).map(side));
  expect(ends(joined)).toEqual([
    ['lower', 'right'],
    ['upper', 'left'],
  ]);
  expect(ends(parted)).toEqual([
    ['lower', 'left'],
    ['upper', 'right'],
  ]);
});

test('heights that equal a level count as above it: a plateau has one line round it, its peak none', () => {
  const plateau = [0, 0, 0, 0, 0, 1, 1, 0, 0, 1, 1, 0, 0, 0, 0, 0];
  const [line, ...more] = contourLines(square(plateau, 4), [1]);
  expect(more).toEqual([]);
  expect(areaOf(line as ContourLine)).toBeCloseTo(1, 12);
  expect(contourLines(square([0, 0, 0, 0, 1, 0, 0, 0, 0], 3), [1])).toEqual([]);
});

test('levels are whole multiples of the interval within the field', () => {
  expect(contourLevels(square([2.4, 3, 3.05, 2.9], 2), 0.2)).toEqual([2.4, 2.6, 2.8, 3]);
  expect(contourLevels(square([Number.NaN, Number.NaN], 2), 1)).toEqual([]);
});

test('every line of a random field is whole: closed ones come round, open ones end at its rim, none meets another level', () => {
  const heights = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 42, maxLength: 42 });
  fc.assert(
    fc.property(heights, (zMm) => {
      const field = square(zMm, 6);
      for (const line of contourLines(field, [0.5, 1, 2, 3.25, 5])) {
        const places = placesOf(line);
        for (const [x, y] of places) expect(bilinear(field, x, y)).toBeCloseTo(line.levelMm, 9);
        const pairs = places.slice(1).map((to, index) => [places[index], to] as const);
        for (const [from, to] of pairs)
          expect(Math.hypot(to[0] - (from?.[0] ?? 0), to[1] - (from?.[1] ?? 0))).toBeLessThanOrEqual(1.4143);
        if (!line.closed)
          for (const [x, y] of [places[0] ?? [], places.at(-1) ?? []])
            expect(x === 0 || x === 5 || y === 0 || y === 6).toBe(true);
      }
    }),
  );
});

test('lines of a dome are brought on to its circles', () => {
  const dome = (x: number, y: number) => 10 - (x * x + y * y) / 40;
  const field = heightField({ fromXMm: -22, fromYMm: -22, stepMm: 2, columns: 23, rows: 23 }, dome);
  const lines = contourLines(field, [2, 5, 8, 9.9]);
  expect(lines).toHaveLength(4);
  for (const line of lines) {
    const made = contourOnSurface(line, { heightAt: dome, reachMm: 3, chordErrorMm: 0.004 });
    expect(made.unsettled).toBe(0);
    const radius = Math.sqrt(40 * (10 - line.levelMm));
    const places = placesOf(made.line);
    for (const [index, [x, y]] of places.entries()) {
      expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(0.0001);
      const [nextX, nextY] = places[(index + 1) % places.length] ?? [0, 0];
      expect(Math.abs(Math.hypot((x + nextX) / 2, (y + nextY) / 2) - radius)).toBeLessThan(0.004);
    }
    // Chords of equal error need 2π √(r / 8e) places; halving spends up to twice as many.
    expect(places.length).toBeLessThan(2 * 2 * Math.PI * Math.sqrt(radius / (8 * (0.004 / 3))));
  }
});

test('a line is cut where it passes out of an outline and goes on where it comes back', () => {
  const box = chainThrough<'body'>(
    [
      { x: -3, y: -10 },
      { x: 3, y: -10 },
      { x: 3, y: 10 },
      { x: -3, y: 10 },
    ],
    true,
  );
  const circle: ContourLine = {
    levelMm: 1,
    closed: true,
    xyMm: Float64Array.from(
      Array.from({ length: 360 }, (_, degree) => [
        5 * Math.cos((degree * Math.PI) / 180),
        5 * Math.sin((degree * Math.PI) / 180),
      ]).flat(),
    ),
  };
  const pieces = trimContour(circle, box);
  expect(pieces).toHaveLength(2);
  for (const piece of pieces) {
    const places = placesOf(piece);
    expect(piece.closed).toBe(false);
    for (const [x] of [places[0] ?? [0], places.at(-1) ?? [0]])
      expect(Math.abs(x as number)).toBeCloseTo(3, 9);
  }
  const wide = chainThrough<'body'>(
    [
      { x: -9, y: -9 },
      { x: 9, y: -9 },
      { x: 9, y: 9 },
      { x: -9, y: 9 },
    ],
    true,
  );
  expect(trimContour(circle, wide)).toEqual([circle]);
});

function side([x, y]: readonly [number, number]): string {
  if (y === 0) return 'lower';
  if (y === 1) return 'upper';
  return x === 0 ? 'left' : 'right';
}

function areaOf(line: ContourLine): number {
  const places = placesOf(line);
  return places.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = places[(index + 1) % places.length] ?? [0, 0];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** The height between neighbours of one grid line. */
function bilinear(field: HeightField, x: number, y: number): number {
  const at = (column: number, row: number) => field.zMm[row * field.columns + column] ?? Number.NaN;
  const [column, row] = [Math.min(Math.floor(x), field.columns - 2), Math.min(Math.floor(y), field.rows - 2)];
  const [u, v] = [x - column, y - row];
  return (
    (1 - u) * (1 - v) * at(column, row) +
    u * (1 - v) * at(column + 1, row) +
    (1 - u) * v * at(column, row + 1) +
    u * v * at(column + 1, row + 1)
  );
}
