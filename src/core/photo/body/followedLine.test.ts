import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from './bodyTrace.ts';
import { followedLine } from './followedLine.ts';

const [WIDE, HIGH, PX_PER_MM] = [80, 60, 2];
/** px. Where the left and the right edge are said to run. */
const [LEFT, RIGHT] = [20, 60];

/** A body between LEFT and RIGHT, as light as `ground` or not, with a dark line 1 mm wide along its left edge. */
function pictureOn(ground: number) {
  const lightness = new Float32Array(WIDE * HIGH);
  for (let i = 0; i < lightness.length; i++) {
    const x = i % WIDE;
    lightness[i] = x > LEFT && x < RIGHT ? 40 : ground;
    if (Math.abs(x - LEFT) <= 1) lightness[i] = 10;
  }
  const none = new Float32Array(WIDE * HIGH);
  return { factor: 1, lab: { widthPx: WIDE, heightPx: HIGH, lightness, a: none, b: none } };
}

function side(name: EdgePoint['side'], x: number, out: number): EdgePoint[] {
  return Array.from({ length: 20 }, (_, i) => ({
    point: point<'photo'>(x, 10 + 2 * i),
    normal: point<'photo'>(out, 0),
    side: name,
    section: 'lowerBout' as const,
    along: 20 + i,
    state: 'seen' as const,
    sigmaPx: 0.1,
  }));
}

const edge = [...side('treble', RIGHT, 1), ...side('bass', LEFT, -1)];

test('a dark line with the body’s own colour on either side is no edge', () => {
  expect(followedLine(pictureOn(40), edge, PX_PER_MM).bass).toBe(1);
});

test('a dark line where the colour changes too, and a plain change of colour, are edges', () => {
  expect(followedLine(pictureOn(90), edge, PX_PER_MM)).toEqual({ bass: 0, treble: 0 });
});

test('a place that the hand set answers for 25 mm to either side', () => {
  const hand = [point<'photo'>(LEFT, 30)];
  expect(followedLine(pictureOn(40), edge, PX_PER_MM, hand).bass).toBe(0);
});

test('bridged places are not asked', () => {
  const bridged = edge.map((place) => ({ ...place, state: 'bridged' as const }));
  expect(followedLine(pictureOn(40), bridged, PX_PER_MM)).toEqual({ bass: 0, treble: 0 });
});
