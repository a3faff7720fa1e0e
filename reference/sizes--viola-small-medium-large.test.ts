/**
 * Source: “The viola: small, medium and large”, author not named, no year given; published table.
 * How read: printed values, copied below; where the print gives a range, both ends. Blocks are printed for the
 *   large size only.
 * Claim: every preset value of the three violas equals its printed cell, or lies in its printed range.
 */
import { expect, test } from 'vitest';
import { sizeNamed } from '../src/core/knowledge/index.ts';

const SIZES = ['small', 'medium', 'large'];

type Cell = number | readonly [low: number, high: number] | undefined;

const TABLE: readonly (readonly [string, readonly Cell[]])[] = [
  ['bodyLength', [390, [405, 410], 430]],
  ['upperBout', [188, 193, 200]],
  ['waist', [127, 131, 140]],
  ['lowerBout', [228, 236, 250]],
  ['ribHeightNeck', [36, 38, 40]],
  ['ribHeightTail', [36, 38, 40]],
  ['ribThickness', [1.1, 1.2, 1.2]],
  ['liningThickness', [2, 2, 2]],
  ['liningWidth', [8, 8, 8]],
  ['upperBlockWidth', [undefined, undefined, 55]],
  ['upperBlockDepth', [undefined, undefined, 18]],
  ['lowerBlockWidth', [undefined, undefined, 50]],
  ['lowerBlockDepth', [undefined, undefined, 15]],
  ['archHeightBack', [15, 16, 17]],
  ['archHeightTop', [16, 17, 18]],
  ['edgeHeightBack', [3.9, 4, 4.1]],
  ['edgeHeightTop', [3.9, 4, 4.1]],
  ['overhang', [2.3, 2.3, 2.3]],
  ['purflingToEdge', [3.5, 4, 4.2]],
  ['purflingWidth', [1.2, 1.3, 1.4]],
  ['stop', [219, 225, [225, 230]]],
  ['neckStop', [146, 150, [150, 154]]],
];

const cells = TABLE.flatMap(([name, row]) =>
  row.map((cell, at) => [SIZES[at] as string, name, cell] as const),
);

test.each(cells.filter(([, , cell]) => cell !== undefined))(
  'viola %s has the printed %s, %s',
  (size, name, cell) => {
    const quantity = sizeNamed('viola', size)?.values[name];
    const [low, high] = typeof cell === 'number' ? [cell, cell] : (cell ?? [0, 0]);
    expect(quantity?.value).toBeGreaterThanOrEqual(low);
    expect(quantity?.value).toBeLessThanOrEqual(high);
    expect(quantity?.origin.kind).toBe('published');
  },
);
