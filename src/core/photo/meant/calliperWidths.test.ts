import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgeSpot } from '../edge/foundEdge.ts';
import { calliperWidths } from './calliperWidths.ts';

const LENGTH_MM = 355;
/** A lower bout of one arc: its half width, and the height of its widest place. */
const [HALF_MM, WIDEST_MM, RADIUS_MM] = [104, 76, 90];

function half(sign: 1 | -1, slipMm: number): readonly EdgeSpot<'body'>[] {
  return Array.from({ length: 81 }, (_, i) => {
    const alongMm = i - 40;
    const turn = alongMm / RADIUS_MM;
    const x = HALF_MM - RADIUS_MM * (1 - Math.cos(turn)) + (i === 43 ? slipMm : 0);
    return {
      ...point<'body'>(sign * x, WIDEST_MM + RADIUS_MM * Math.sin(turn)),
      section: 'lowerBout',
      alongMm,
      seen: true,
      sigmaMm: 0.03,
    };
  });
}

test.each([0, 0.5])('callipers do not touch a place that slipped out by %s mm', (slipMm) => {
  const [lower] = calliperWidths(half(-1, 0), half(1, slipMm), LENGTH_MM);
  expect(lower?.name).toBe('lowerBout');
  expect(Math.abs((lower?.mm ?? 0) - 2 * HALF_MM)).toBeLessThan(0.02);
});
