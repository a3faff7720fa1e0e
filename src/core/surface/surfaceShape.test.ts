import { expect, test } from 'vitest';
import { principalCurvatures, upwardNormal } from './surfaceShape.ts';

/** A sphere of this radius seen from above: z = √(r² − x² − y²). */
function sphere(r: number, x: number, y: number) {
  const z = Math.sqrt(r * r - x * x - y * y);
  return {
    zMm: z,
    slopeX: -x / z,
    slopeY: -y / z,
    bendXX: -1 / z - x ** 2 / z ** 3,
    bendXY: (-x * y) / z ** 3,
    bendYY: -1 / z - y ** 2 / z ** 3,
  };
}

test('a sphere is curved alike both ways everywhere, downward, and its normal points away from its middle', () => {
  const shape = sphere(50, 12, -20);
  for (const curvature of principalCurvatures(shape)) expect(curvature).toBeCloseTo(-1 / 50, 9);
  const [x, y, z] = upwardNormal(shape);
  expect([x * 50, y * 50, z * 50]).toEqual([12, -20, shape.zMm].map((value) => expect.closeTo(value, 9)));
});

test('a trough is hollow across and straight along', () => {
  const trough = { zMm: 0, slopeX: 0, slopeY: 0, bendXX: 0.1, bendXY: 0, bendYY: 0 };
  expect(principalCurvatures(trough)).toEqual([0.1, 0]);
});
