import { expect, test } from 'vitest';
import { followLine } from './followLine.ts';

test('a line is followed through rows in which something else is plainer', () => {
  const chosen = followLine(
    {
      rows: 20,
      columns: 30,
      fill: (row, into) => {
        into.fill(0);
        into[10 + Math.round(row / 4)] = 1;
        if (row % 7 === 3) into[25] = 1.5;
      },
      stepFromBeforeMm: () => 1,
    },
    0.1,
    3,
  );
  expect(Array.from(chosen)).toEqual(Array.from({ length: 20 }, (_, row) => 10 + Math.round(row / 4)));
});

test('where rows are not neighbours the line may start anew', () => {
  const chosen = followLine(
    {
      rows: 6,
      columns: 30,
      fill: (row, into) => {
        into.fill(0);
        into[row < 3 ? 2 : 28] = 1;
      },
      stepFromBeforeMm: (row) => (row === 3 ? 0 : 1),
    },
    0.1,
    3,
  );
  expect(Array.from(chosen)).toEqual([2, 2, 2, 28, 28, 28]);
});
