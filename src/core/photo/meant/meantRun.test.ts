import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { meantRun, nodeAt } from './meantRun.ts';

/** A hollow arm of 60 mm that ends at two corner tips, in one arc. */
const chain = {
  closed: false,
  vertices: [
    { x: 40, y: 0, bulge: -0.1 },
    { x: 40, y: 60, bulge: 0 },
  ],
};

/** Places on the arm each half millimetre, `offMm` outside it where told. */
function spots(offMm: (y: number) => number) {
  const bow = 0.1 * 30;
  const radius = (30 * 30 + bow * bow) / (2 * bow);
  return Array.from({ length: 117 }, (_, i) => {
    const y = 1 + i * 0.5;
    const x = 40 + radius - bow - Math.sqrt(radius * radius - (y - 30) ** 2);
    return { ...point<'body'>(x + offMm(y), y), sigmaMm: 0.05 };
  });
}

const carriedGap = (offMm: (y: number) => number) => {
  const run = meantRun(chain, spots(offMm), { tips: 'both', centre: 'free', armMm: 18 });
  return nodeAt(run, run.lengthMm + 4).gapMm;
};

const side = Math.sign(carriedGap(() => 0.2));

test('places that stand off together are followed past the tip', () => {
  expect(side * carriedGap(() => 0.2)).toBeCloseTo(0.2, 1);
});

test('a slip of the tracing beside a tip does not carry the tip away', () => {
  expect(Math.abs(carriedGap((y) => (y > 58.2 ? -0.9 : 0)))).toBeLessThan(0.1);
  expect(Math.abs(carriedGap((y) => (y > 58.2 ? 0.9 : 0)))).toBeLessThan(0.1);
});
