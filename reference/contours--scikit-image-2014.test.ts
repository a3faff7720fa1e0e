/**
 * Contours against an independent contour library, and against the surface itself.
 *
 * Program: S. van der Walt and others, scikit-image: image processing in Python (2014), skimage.measure.find_contours
 * (marching squares), run by Debian's python3.
 * Claimed: on the same grid of heights both draw the same number of lines, closed and open, and every place of either lies
 * within 0.005 mm of the other's line (in fact both interpolate between neighbours, and only rounding parts them). The lines of
 * a plate, brought on to its surface, leave the surface's own lines by 0.005 mm at most, between their places too.
 */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { outlineChain } from '../src/core/curve/index.ts';
import { plateArch, plateField, plateHeight } from '../src/core/instrument/index.ts';
import { plateContours } from '../src/core/judging/index.ts';
import {
  type ContourLine,
  contourLevels,
  contourLines,
  type HeightField,
  heightField,
  placesOf,
} from '../src/core/surface/index.ts';
import { archValues } from '../test/fixtures/archValues.ts';
import { violinHalf } from '../test/fixtures/violinHalf.ts';

const BOUND_MM = 0.005;

const SCRIPT = `
import json, sys
import numpy as np
from skimage.measure import find_contours
task = json.load(sys.stdin)
z = np.array([np.nan if v is None else v for v in task['z']]).reshape(task['rows'], task['columns'])
out = []
for level in task['levels']:
    out.append([[[task['x'] + task['step'] * c, task['y'] + task['step'] * r] for r, c in line] for line in find_contours(z, level)])
print(json.dumps(out))
`;

type Place = readonly [number, number];

function peerLines(field: HeightField, levels: readonly number[]): readonly (readonly Place[])[][] {
  const run = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify({
      z: Array.from(field.zMm, (z) => (Number.isNaN(z) ? null : z)),
      rows: field.rows,
      columns: field.columns,
      x: field.fromXMm,
      y: field.fromYMm,
      step: field.stepMm,
      levels,
    }),
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  expect(run.stderr).toBe('');
  return JSON.parse(run.stdout);
}

const half = violinHalf();
const made = plateArch(archValues(), half, 'back');
if (!made.ok) throw new Error('the usual back is refused');
const back = made.value;

/** Two hills of unequal height with a pass between them and a hollow beside it, on a slope. */
const hills = heightField({ fromXMm: -60, fromYMm: -40, stepMm: 0.5, columns: 241, rows: 161 }, (x, y) => {
  const hill = (cx: number, cy: number, wide: number) =>
    Math.exp(-((x - cx) ** 2 + (y - cy) ** 2) / wide ** 2);
  return 9 * hill(-25, 3, 22) + 6 * hill(24, -6, 18) - 4 * hill(2, 30, 14) + 0.01 * x;
});

test.each([
  [
    'the back of a violin, heights every millimetre', // The crest of the edge is narrower than the grid is wide: its beads are joined by chance.
    () => plateField(back, 'finished', 1),
    4,
  ],
  ['two hills, a pass and a hollow', () => hills, -9],
] as const)('%s: both draw the same lines', (_name, fieldOf, fromMm) => {
  const field = fieldOf();
  const levels = contourLevels(field, 0.5)
    .map((level) => level + 0.137)
    .filter((level) => level > fromMm);
  const peers = peerLines(field, levels);
  const ours = contourLines(field, levels);
  let places = 0;
  for (const [index, level] of levels.entries()) {
    const mine = ours.filter(({ levelMm }) => levelMm === level);
    const theirs = peers[index] ?? [];
    expect(mine.length, `lines at ${level}`).toBe(theirs.length);
    expect(mine.filter(({ closed }) => closed).length).toBe(theirs.filter(isClosed).length);
    const myPlaces = mine.map(roundTrip);
    places += myPlaces.flat().length;
    expect(farthestFrom(myPlaces, theirs)).toBeLessThan(BOUND_MM);
    expect(farthestFrom(theirs, myPlaces)).toBeLessThan(BOUND_MM);
  }
  expect(places).toBeGreaterThan(3000);
});

test('the lines of a plate leave the lines of its surface by less than the bound, and are the same on both sides', () => {
  const { lines, unsettled } = plateContours(back, outlineChain(half), 'finished', 2.6, 1);
  expect(unsettled).toBe(0);
  expect(new Set(lines.map(({ levelMm }) => levelMm))).toEqual(new Set([2.6, 5.2, 7.8, 10.4, 13]));
  const z = (x: number, y: number) => plateHeight(back, x, y, 'finished');
  let worst = 0;
  for (const line of lines.filter(({ levelMm }) => levelMm > 5)) {
    const places = roundTrip(line);
    for (const [index, [x, y]] of places.slice(1).entries()) {
      const [fromX, fromY] = places[index] as Place;
      for (const share of [0, 0.5]) {
        const [px, py] = [fromX + share * (x - fromX), fromY + share * (y - fromY)];
        const slope =
          Math.hypot(z(px + 0.01, py) - z(px - 0.01, py), z(px, py + 0.01) - z(px, py - 0.01)) / 0.02;
        worst = Math.max(worst, Math.abs(z(px, py) - line.levelMm) / slope);
      }
    }
  }
  expect(worst).toBeLessThan(BOUND_MM);
  const mirrored = lines.map((line) => roundTrip(line).map(([x, y]): Place => [-x, y]));
  expect(farthestFrom(mirrored, lines.map(roundTrip))).toBeLessThan(BOUND_MM);
});

function isClosed(line: readonly Place[]): boolean {
  const [first, last] = [line[0], line.at(-1)];
  return first !== undefined && first[0] === last?.[0] && first[1] === last[1];
}

/** Places of a line with the first once more at the end of a closed one. */
function roundTrip(line: ContourLine): readonly Place[] {
  const places = placesOf(line);
  return line.closed ? [...places, places[0] as Place] : places;
}

/** How far the farthest place of some lines lies from others. */
function farthestFrom(lines: readonly (readonly Place[])[], others: readonly (readonly Place[])[]): number {
  const cells = new Map<string, [Place, Place][]>();
  for (const other of others)
    for (const [index, to] of other.slice(1).entries()) {
      const from = other[index] as Place;
      const key = cellOf((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
      cells.set(key, [...(cells.get(key) ?? []), [from, to]]);
    }
  let farthest = 0;
  for (const [x, y] of lines.flat()) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const dx of [-2, 0, 2])
      for (const dy of [-2, 0, 2])
        for (const [a, b] of cells.get(cellOf(x + dx, y + dy)) ?? [])
          nearest = Math.min(nearest, distanceTo(a, b, x, y));
    farthest = Math.max(farthest, nearest);
  }
  return farthest;
}

function cellOf(x: number, y: number): string {
  return `${Math.floor(x / 2)} ${Math.floor(y / 2)}`;
}

function distanceTo([ax, ay]: Place, [bx, by]: Place, x: number, y: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square)) : 0;
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
