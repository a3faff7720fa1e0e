import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import { expectedEdge } from './expectedEdge.ts';

/** Two sides running up the picture, 100 px apart, the outward normals away from each other. */
function traced(): readonly EdgePoint[] {
  return (['treble', 'bass'] as const).flatMap((side) =>
    Array.from({ length: 11 }, (_, i): EdgePoint => {
      const sign = side === 'treble' ? 1 : -1;
      return {
        point: point(100 + 50 * sign, 300 - 10 * i),
        normal: point(sign, 0),
        side,
        section: 'cBout',
        along: 200 + i,
        state: 'seen',
        sigmaPx: 0.1,
      };
    }),
  );
}

test('stations move to their share of the expected line, with its outward normals, and are bridged until looked at', () => {
  const edge = traced();
  // Leaning to the right by a quarter on either side.
  const placeOf = (side: EdgePoint['side'], _: string, share: number) =>
    point<'photo'>(100 + (side === 'treble' ? 40 : -40) + 25 * share, 300 - 100 * share);
  const expected = expectedEdge(edge, placeOf, 4);
  expected.forEach((place, i) => {
    expect(place.point.x).toBeCloseTo(placeOf(edge[i].side, '', (i % 11) / 10).x, 9);
    expect(place.point.y).toBeCloseTo(edge[i].point.y, 9);
    expect(place.along).toBe(edge[i].along);
    const sign = place.side === 'treble' ? 1 : -1;
    expect(place.normal.x).toBeCloseTo((sign * 100) / Math.hypot(100, 25), 9);
    expect(place.normal.y).toBeCloseTo((sign * 25) / Math.hypot(100, 25), 9);
    expect(place).toMatchObject({ state: 'bridged', sigmaPx: 4 });
  });
});
