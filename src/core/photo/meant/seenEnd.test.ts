import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { beyondEndMm, seenEnd } from './seenEnd.ts';

const RAD = Math.PI / 180;
const HEADING_RAD = 114 * RAD;
const MIDDLE = point<'body'>(90, 140);

/** A corner end of 7 mm, turned from the usual direction; its places stand so far outside the line. */
function seen(turnedDeg: number, outsideMm: (i: number) => number = () => 0) {
  const heading = HEADING_RAD + turnedDeg * RAD;
  const [c, s] = [Math.cos(heading), Math.sin(heading)];
  return seenEnd({
    headingRad: HEADING_RAD,
    headingSpreadRad: 4 * RAD,
    end: Array.from({ length: 13 }, (_, i) => {
      const [t, out] = [7 * (i / 12 - 0.5), outsideMm(i)];
      return point<'body'>(MIDDLE.x + t * c + out * s, MIDDLE.y + t * s - out * c);
    }),
  });
}
const turnDeg = (end: ReturnType<typeof seen>) => ((end?.headingRad ?? Number.NaN) - HEADING_RAD) / RAD;

test('a corner end that runs a little aslant is believed, its direction leaning on the usual one', () => {
  expect(turnDeg(seen(5))).toBeGreaterThan(2);
  expect(turnDeg(seen(5))).toBeLessThan(5);
});

test('what runs in no direction that a corner end takes is not believed to be one', () => {
  expect(seen(14)).toBeDefined();
  expect(seen(20)).toBeUndefined();
  expect(seen(-29)).toBeUndefined();
});

test('two places that stand elsewhere turn and move the end by next to nothing', () => {
  const end = seen(5, (i) => (i === 3 || i === 8 ? 0.8 : 0));
  expect(Math.abs(turnDeg(end) - turnDeg(seen(5)))).toBeLessThan(0.2);
  expect(Math.abs(beyondEndMm(end!, MIDDLE))).toBeLessThan(0.02);
});

test('places that scatter a little tell a direction; a crumbled end tells its place only', () => {
  // Alike to both sides of the middle, so that nothing turns the line itself.
  const crumbled = (mm: number) => (i: number) => mm * ([0, 1, -1, 0.6][Math.abs(i - 6)] ?? 0);
  expect(turnDeg(seen(5, crumbled(0.05)))).toBeCloseTo(turnDeg(seen(5)), 1);
  const end = seen(5, crumbled(0.5));
  expect(turnDeg(end)).toBe(0);
  expect(Math.abs(beyondEndMm(end!, MIDDLE))).toBeLessThan(0.5);
});
