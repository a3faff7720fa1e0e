import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import { onFarCorners } from './farCorners.ts';

/** Both sides' lower corners: an arm of the lower bout below, the corner end, an arm of the C bout above, 1 px a mm. */
function corners(): EdgePoint[] {
  return ([1, -1] as const).flatMap((out) => {
    const side = out === 1 ? ('treble' as const) : ('bass' as const);
    const place = (
      section: EdgePoint['section'],
      along: number,
      x: number,
      y: number,
      nx: number,
      ny: number,
    ) => ({
      point: point<'photo'>(out * x, y),
      normal: point<'photo'>(out * nx, ny),
      side,
      section,
      along,
      state: 'seen' as const,
      sigmaPx: 0.1,
    });
    return [
      place('lowerBout', 195, 86, 4, 0.5, 0.87),
      place('lowerBout', 199, 90, 1, 0.5, 0.87),
      place('lowerCorner', 201, 92, 0, 1, 0),
      place('cBout', 204, 90, -1, -0.5, -0.87),
      place('cBout', 208, 86, -2, -0.3, -0.95),
    ];
  });
}

/** The camera stands off by (x, y): the far plate shows that much beyond the near one. */
const overlook = (x: number, y: number) => (_: unknown, normal: { readonly x: number; readonly y: number }) =>
  normal.x * x + normal.y * y;

const farArms = (x: number, y: number) => {
  const edge = corners();
  const far = onFarCorners(edge, overlook(x, y), 1);
  return edge.filter((_, i) => far[i]).map(({ side, section }) => `${side} ${section}`);
};

test('round the corner from an arm that a sidelong camera looks over, the other arm is set aside', () => {
  const far = farArms(2, 0);
  expect(far).toContain('treble cBout');
  expect(far).not.toContain('treble lowerBout');
  expect(far).not.toContain('bass cBout');
});

test('from straight above nothing is set aside, and an arm that stands so on both sides is left as seen', () => {
  expect(farArms(0, 0)).toEqual([]);
  expect(farArms(0, -2)).toEqual([]);
});
