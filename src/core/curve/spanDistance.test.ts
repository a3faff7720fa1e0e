import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { nearestOnSpans } from './nearestOn.ts';
import { spanOf } from './span.ts';
import { distanceToSpans } from './spanDistance.ts';

test('the distance is that of the nearest place, for lines, arcs either way and arcs over half a turn', () => {
  const random = seededRandom(12);
  const between = (least: number, most: number): number => least + (most - least) * random();
  for (let round = 0; round < 400; round++) {
    const spans = Array.from({ length: 1 + Math.floor(3 * random()) }, () =>
      spanOf({
        start: point<'body'>(between(-50, 50), between(-50, 50)),
        end: point<'body'>(between(-50, 50), between(-50, 50)),
        bulge: random() < 0.25 ? 0 : between(-3, 3),
      }),
    );
    for (let place = 0; place < 20; place++) {
      const at = point<'body'>(between(-120, 120), between(-120, 120));
      const { distanceMm } = nearestOnSpans(spans, at);
      expect(distanceToSpans(spans, at.x, at.y)).toBeCloseTo(distanceMm, 9);
      expect(distanceToSpans(spans, at.x, at.y, 10)).toBeCloseTo(Math.min(10, distanceMm), 9);
    }
  }
});
