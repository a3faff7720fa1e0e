import { hypot, sin } from '../base/index.ts';
import type { HeightField } from './heightField.ts';
import { type Lamp, lampPlace } from './shadingLamp.ts';
import { lampShare } from './shadingShadow.ts';

/**
 * How much light of a lamp falls on every place of a field: 1 is what a level place in the middle of the field gets,
 * NaN where the field has no height. Shadows that the surface casts on itself are in it; nothing shines back.
 *
 * Method: the cosine of the angle between lamp and normal, falling with the square of the distance from the lamp, times
 * the share of the lamp that is seen over the horizon towards it. Normals from neighbouring heights.
 */
export function lampLight(field: HeightField, lamp: Lamp): Float64Array {
  const { columns, rows, zMm, stepMm, fromXMm, fromYMm } = field;
  const middle = {
    xMm: fromXMm + ((columns - 1) * stepMm) / 2,
    yMm: fromYMm + ((rows - 1) * stepMm) / 2,
  };
  const place = lampPlace(lamp, middle);
  const highest = zMm.reduce((high, z) => (z > high ? z : high), Number.NEGATIVE_INFINITY);
  const light = new Float64Array(columns * rows).fill(Number.NaN);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column;
      const z = zMm[at] as number;
      if (Number.isNaN(z)) continue;
      const x = place.xMm - (fromXMm + column * stepMm);
      const y = place.yMm - (fromYMm + row * stepMm);
      const up = place.zMm - z;
      const far = hypot(x, y, up);
      const slopeX = slope(zMm, at, column > 0 ? 1 : 0, column + 1 < columns ? 1 : 0, 1, stepMm);
      const slopeY = slope(zMm, at, row > 0 ? 1 : 0, row + 1 < rows ? 1 : 0, columns, stepMm);
      const cosine = (up - slopeX * x - slopeY * y) / (far * hypot(slopeX, slopeY, 1));
      if (cosine <= 0) {
        light[at] = 0;
        continue;
      }
      const seen = lampShare(field, { column, row }, { x, y, up }, highest, lamp.halfWidthRad);
      light[at] = (cosine * seen * (lamp.distanceMm / far) ** 2) / sin(lamp.heightRad);
    }
  return light;
}

/** Slope along one direction of the grid, from both neighbours, or from one beside the end of the field. */
function slope(
  zMm: Float64Array,
  at: number,
  before: number,
  after: number,
  stride: number,
  stepMm: number,
): number {
  const here = zMm[at] as number;
  const low = before ? (zMm[at - stride] as number) : Number.NaN;
  const high = after ? (zMm[at + stride] as number) : Number.NaN;
  if (Number.isNaN(low)) return Number.isNaN(high) ? 0 : (high - here) / stepMm;
  return Number.isNaN(high) ? (here - low) / stepMm : (high - low) / (2 * stepMm);
}
