import fc from 'fast-check';
import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { arcOf, headingOn, nearestOn, segments, wrapAngle } from '../../curve/index.ts';
import { crownArcs } from './crownArcs.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const at = (x: number, y: number) => point<'section'>(x, y);

test('a crown passes its places without a kink and ends where it is asked to', () => {
  fc.assert(
    fc.property(real(0, 1), real(0, 1), real(-1, 1), (left, right, tilt) => {
      const places = [at(-16, tilt), at(-5, 3 + left), at(5, 3 + right), at(16, -tilt)];
      const crown = crownArcs(places, -18, 18);
      for (const place of places) expect(nearestOn(crown, place).distanceMm).toBeLessThan(0.000_001);
      const arcs = segments(crown);
      for (const [index, arc] of arcs.slice(1).entries()) {
        const before = arcs[index];
        if (before) expect(wrapAngle(headingOn(arc, 0) - headingOn(before, 1))).toBeCloseTo(0, 6);
      }
      expect(crown.vertices[0]?.x).toBe(-18);
      expect(crown.vertices.at(-1)?.x).toBe(18);
    }),
  );
});

test('through places of one circle the crown is that circle', () => {
  const on = (x: number) => at(x, Math.sqrt(42 ** 2 - x ** 2));
  for (const segment of segments(crownArcs([on(-16), on(-6), on(5), on(16)], -19, 19)))
    expect(arcOf(segment)?.radiusMm).toBeCloseTo(42, 6);
});

test('no other start makes its curvatures differ less', () => {
  const places = [at(-16.75, 29.9), at(-5.58, 32.4), at(5.58, 31.5), at(16.75, 27.6)];
  const spread = (turnRad: number): number => {
    let heading = turnRad;
    const bends = places.slice(1).map((to, index) => {
      const from = places[index] as (typeof places)[number];
      const chord = Math.atan2(to.y - from.y, to.x - from.x);
      const bend = (2 * (chord - heading)) / Math.hypot(to.x - from.x, to.y - from.y);
      heading = 2 * chord - heading;
      return bend;
    });
    const mean = bends.reduce((sum, bend) => sum + bend, 0) / 3;
    return bends.reduce((sum, bend) => sum + (bend - mean) ** 2, 0);
  };
  const crown = crownArcs(places, -16.75, 16.75);
  const [first] = segments(crown);
  if (!first) throw new Error('no arc');
  const best = headingOn(first, 0);
  for (const off of [-0.02, -0.001, 0.001, 0.02]) expect(spread(best + off)).toBeGreaterThan(spread(best));
});
