import { expect, test } from 'vitest';
import { Bug } from '../../base/index.ts';
import { edgeMapOf, lookEverywhere } from './edgeMap.ts';

/** Dark left of column 20, light right of it. */
function step() {
  const [widthPx, heightPx] = [40, 30];
  const lightness = Float32Array.from({ length: widthPx * heightPx }, (_, at) =>
    at % widthPx < 20 ? 20 : 80,
  );
  const none = new Float32Array(widthPx * heightPx);
  return { widthPx, heightPx, lightness, a: none, b: none };
}

test('the gradient stands across the step', () => {
  const { widthPx, gx, gy } = lookEverywhere(edgeMapOf(step(), 1));
  const row = [...gx.subarray(15 * widthPx, 16 * widthPx)];
  expect(row.indexOf(Math.max(...row))).toBe(19);
  expect(Math.max(...gy.map(Math.abs))).toBe(0);
});

test('whoever looks at a map that was forgotten is told so, also where it was looked at before', () => {
  const map = edgeMapOf(step(), 1);
  map.look(3, 3);
  map.forget();
  expect(() => map.look(3, 3)).toThrow(Bug);
});
