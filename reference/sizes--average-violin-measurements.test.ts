/**
 * Source: “Average violin measurements”, author not named, no year given; published table with the columns
 *   1/4, 1/2, 3/4, 7/8 and 4/4.
 * How read: printed values, copied below; where the print gives a range, both ends.
 * Claim: every preset value of these five sizes equals its printed cell, or lies in its printed range.
 * Tolerance: none. The body stop of 7/8 is cut off in the print and is not compared; at 4/4 it is 195 by two
 *   other published statements. “Uniform” rib height is compared at both ends.
 */
import { expect, test } from 'vitest';
import { sizeNamed } from '../src/core/knowledge/index.ts';

const SIZES = ['1/4', '1/2', '3/4', '7/8', '4/4'];

type Cell = number | readonly [low: number, high: number] | undefined;
const nothing = undefined;

const TABLE: readonly (readonly [string, readonly Cell[]])[] = [
  ['bodyLength', [285, 320, 335, 345, 355]],
  ['upperBout', [133, 145, 156, 162, 168]],
  ['waist', [91, 97, 105, 109, 112]],
  ['lowerBout', [163, 182, 195, 200, 206]],
  ['ribHeightNeck', [26, 28, 29, 29.5, 30]],
  ['ribHeightTail', [26, 28, 29, 29.5, 30]],
  ['ribThickness', [1.0, 1.0, 1.1, 1.1, 1.1]],
  ['liningThickness', [1.5, 1.5, 1.5, 1.7, 1.8]],
  ['liningWidth', [4, 5, 5, 6, 6]],
  ['upperBlockWidth', [41, 44, 47, 48, 50]],
  ['upperBlockDepth', [13, 13, 14, 14, 15]],
  ['lowerBlockWidth', [36, 39, 42, 43, 45]],
  ['lowerBlockDepth', [12, 12, 13, 13, 14]],
  ['archHeightBack', [13.2, 13.7, 14.1, 14.3, 14.5]],
  ['archHeightTop', [13.7, 14.3, 14.9, 15.2, 15.5]],
  ['edgeHeightBack', [3.1, 3.2, 3.4, 3.7, 3.8]],
  ['edgeHeightTop', [3.2, 3.3, 3.5, 3.9, 4.0]],
  ['overhang', [nothing, nothing, nothing, nothing, 2.2]],
  ['upperCornerEnd', [nothing, nothing, nothing, nothing, [7, 7.5]]],
  ['lowerCornerEnd', [nothing, nothing, nothing, nothing, [7, 7.5]]],
  ['purflingToEdge', [3.0, 3.1, 3.2, 3.3, [3.5, 3.8]]],
  ['purflingWidth', [1.1, 1.1, 1.1, 1.1, 1.2]],
  ['stop', [159, 171, 183, nothing, 195]],
];

const cells = TABLE.flatMap(([name, row]) =>
  row.map((cell, at) => [SIZES[at] as string, name, cell] as const),
);

test.each(cells.filter(([, , cell]) => cell !== nothing))(
  'violin %s has the printed %s, %s',
  (size, name, cell) => {
    const quantity = sizeNamed('violin', size)?.values[name];
    const [low, high] = typeof cell === 'number' ? [cell, cell] : (cell ?? [0, 0]);
    expect(quantity?.value).toBeGreaterThanOrEqual(low);
    expect(quantity?.value).toBeLessThanOrEqual(high);
    expect(quantity?.origin.kind).toBe('published');
  },
);
