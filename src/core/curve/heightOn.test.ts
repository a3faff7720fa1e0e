import { expect, test } from 'vitest';
import { heightOn } from './heightOn.ts';
import { bulgeOfSweep } from './segment.ts';

const HILL = bulgeOfSweep(-Math.PI / 2);

test('on a hill, in a hollow and on a slope a line has its height', () => {
  const chain = {
    closed: false,
    vertices: [
      { x: -Math.SQRT1_2, y: 0, bulge: HILL },
      { x: Math.SQRT1_2, y: 0, bulge: -HILL },
      { x: 3 * Math.SQRT1_2, y: 0, bulge: 0 },
      { x: 4, y: 1, bulge: 0 },
    ],
  };
  expect(heightOn(chain, 0)).toBeCloseTo(1 - Math.SQRT1_2, 12);
  expect(heightOn(chain, Math.SQRT2)).toBeCloseTo(Math.SQRT1_2 - 1, 12);
  expect(heightOn(chain, 4)).toBeCloseTo(1, 12);
  expect(heightOn(chain, -Math.SQRT1_2)).toBeCloseTo(0, 12);
  expect(heightOn(chain, -2)).toBeNaN();
});
