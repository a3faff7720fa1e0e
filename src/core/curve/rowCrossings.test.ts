import { expect, test } from 'vitest';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { point, seededRandom } from '../base/index.ts';
import { circleChain } from './circleChain.ts';
import { containsPoint } from './containsPoint.ts';
import { outlineChain } from './outlineChain.ts';
import { clearRow, rowCrossings, rowEnds, rowSides } from './rowCrossings.ts';

test('a circle is passed where its radius says, and not beyond it', () => {
  const sides = rowSides(circleChain(point<'body'>(2, 3), 5));
  expect(rowCrossings(sides, 6).map((x) => x.toFixed(9))).toEqual(['-2.000000000', '6.000000000']);
  expect(rowCrossings(sides, 8.1)).toEqual([]);
});

test('between odd and even crossings of a row lies the inside, also in rows through the ends of arcs', () => {
  const body = outlineChain(violinHalf());
  const sides = rowSides(body);
  const ends = rowEnds(sides);
  const random = seededRandom(4);
  const rows = [...Array.from({ length: 300 }, () => 354 * random()), ...ends];
  for (const row of rows) {
    const y = clearRow(ends, row);
    const crossings = rowCrossings(sides, y);
    expect(crossings.length % 2).toBe(0);
    for (let at = 0; at + 1 < crossings.length; at++) {
      const [from, to] = [crossings[at]!, crossings[at + 1]!];
      if (to - from > 0.01) expect(containsPoint(body, point<'body'>((from + to) / 2, y))).toBe(at % 2 === 0);
    }
  }
});
