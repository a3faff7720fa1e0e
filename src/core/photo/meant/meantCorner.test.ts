import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { seenEnd } from './meantCorner.ts';

const HEADING_RAD = (114 * Math.PI) / 180;
const SPREAD_RAD = (4 * Math.PI) / 180;

/** A corner end of 7 mm through (90, 140), turned from the usual direction. */
const turned = (byDeg: number) => {
  const heading = HEADING_RAD + (byDeg * Math.PI) / 180;
  return seenEnd({
    headingRad: HEADING_RAD,
    headingSpreadRad: SPREAD_RAD,
    usualWidthMm: 6.7,
    usualSpreadMm: 0.6,
    endSigmaMm: 0.05,
    end: Array.from({ length: 13 }, (_, i) => {
      const t = 7 * (i / 12 - 0.5);
      return point<'body'>(90 + t * Math.cos(heading), 140 + t * Math.sin(heading));
    }),
  });
};

test('a corner end that runs a little aslant is believed, its direction leaning on the usual one', () => {
  const turnDeg = (((turned(5)?.headingRad ?? 0) - HEADING_RAD) * 180) / Math.PI;
  expect(turnDeg).toBeGreaterThan(2);
  expect(turnDeg).toBeLessThan(5);
});

test('what runs in no direction that a corner end takes is not believed to be one', () => {
  expect(turned(14)).toBeDefined();
  expect(turned(20)).toBeUndefined();
  expect(turned(-29)).toBeUndefined();
});
