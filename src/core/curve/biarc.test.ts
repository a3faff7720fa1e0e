import fc from 'fast-check';
import { expect, test } from 'vitest';
import { point } from '../base/index.ts';
import { biarc } from './biarc.ts';
import { headingOn, segments, wrapAngle } from './segment.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('two arcs leave and arrive as asked and meet without a kink', () => {
  fc.assert(
    fc.property(
      real(-1.2, 1.2),
      real(-1.2, 1.2),
      real(5, 80),
      real(-20, 20),
      real(0.3, 3),
      (leave, arrive, x, y, ratio) => {
        const [one, two] = segments(biarc(point<'drawing'>(1, 2), leave, point(1 + x, 2 + y), arrive, ratio));
        if (!one || !two) throw new Error('no arcs');
        expect(wrapAngle(headingOn(one, 0) - leave)).toBeCloseTo(0, 6);
        expect(wrapAngle(headingOn(two, 0) - headingOn(one, 1))).toBeCloseTo(0, 6);
        expect(wrapAngle(headingOn(two, 1) - arrive)).toBeCloseTo(0, 6);
        expect(two.end.x).toBe(1 + x);
      },
    ),
  );
});

test('on one circle both arcs are parts of it, and on a line they are straight', () => {
  const half = biarc(point<'drawing'>(0, 0), 0, point(10, 10), Math.PI / 2);
  for (const { bulge } of half.vertices.slice(0, 2)) expect(bulge).toBeCloseTo(Math.tan(Math.PI / 16), 12);
  for (const { bulge } of biarc(point<'drawing'>(0, 0), 0, point(10, 0), 0).vertices) expect(bulge).toBe(0);
});
