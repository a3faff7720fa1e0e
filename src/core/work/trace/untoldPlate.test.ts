import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from '../../photo/index.ts';
import { untoldPlateFindings } from './untoldPlate.ts';

/** Both halves of a C bout and an upper corner, a millimetre from station to station; states as told. */
function edge(
  stateOf: (side: 'bass' | 'treble', section: string, along: number) => EdgePoint['state'],
): readonly EdgePoint[] {
  return (['bass', 'treble'] as const).flatMap((side) =>
    Array.from({ length: 40 }, (_, along): EdgePoint => {
      const section = along < 30 ? 'cBout' : 'upperCorner';
      return {
        point: point(0, along),
        normal: point(1, 0),
        side,
        section,
        along,
        state: stateOf(side, section, along),
        sigmaPx: 1,
      };
    }),
  );
}

const SEEN = edge(() => 'seen');

test('what neither half tells is asked about, by its stretch and how many places', () => {
  const near = edge((_, section) => (section === 'upperCorner' ? 'doubtful' : 'seen'));
  const found = untoldPlateFindings(SEEN, near);
  expect(found.map(({ code, at }) => [code, at])).toEqual([['trace.which-plate', 'upper corner']]);
  expect(found[0].found).toContain('over 10 places');
});

const HALVES = ['bass', 'treble'] as const;

test.each(HALVES)('where the half other than %s tells, nothing is asked', (half) => {
  const oneHalf = edge((side, section) => (side === half && section === 'upperCorner' ? 'doubtful' : 'seen'));
  expect(untoldPlateFindings(SEEN, oneHalf)).toEqual([]);
});

test('over a speck nothing is asked', () => {
  const speck = edge((_, __, along) => (along > 10 && along < 14 ? 'doubtful' : 'seen'));
  expect(untoldPlateFindings(SEEN, speck)).toEqual([]);
});

test('what a neck covers on both halves is not put down to the plates', () => {
  const covered = edge((_, section) => (section === 'upperCorner' ? 'bridged' : 'seen'));
  const near = edge((_, section) => (section === 'upperCorner' ? 'doubtful' : 'seen'));
  expect(untoldPlateFindings(covered, near)).toEqual([]);
});

test.each(HALVES)('what is covered on %s alone is asked about where the other half does not tell', (half) => {
  const covered = edge((side, section) => (side === half && section === 'upperCorner' ? 'bridged' : 'seen'));
  const near = edge((_, section) => (section === 'upperCorner' ? 'doubtful' : 'seen'));
  expect(untoldPlateFindings(covered, near).map(({ at }) => at)).toEqual(['upper corner']);
});
