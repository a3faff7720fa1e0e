import { expect, test } from 'vitest';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { arcOf, bulgeOfSweep, type Chain, lengthOf, segments } from '../../curve/index.ts';
import { bodyOutline } from '../outline/bodyOutline.ts';
import { planValues } from '../planValues.ts';
import { developedRib } from './developedRib.ts';
import { ribLines } from './ribLines.ts';

/** A quarter of a drum of radius 100 about (0, 100), from its lowest place up its right side. */
const quarter: Chain<'body'> = {
  closed: false,
  vertices: [
    { x: 0, y: 0, bulge: bulgeOfSweep(Math.PI / 2) },
    { x: 100, y: 100, bulge: 0 },
  ],
};

test('a drum keeps its length in the middle of its thickness', () => {
  const { lengthMm, stretches } = developedRib(quarter, 2, () => 30);
  expect(lengthMm).toBeCloseTo((Math.PI / 2) * 99, 9);
  expect(stretches).toEqual([
    {
      fromMm: 0,
      toMm: lengthMm,
      bends: 'full',
      insideRadiusMm: expect.closeTo(98, 9),
      stretch: expect.closeTo(2 / 198, 12),
    },
  ]);
});

test('a hollow bend is longer in the middle than on its outer face, and as tight as that face', () => {
  const hollow: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: 80, y: 0, bulge: bulgeOfSweep(-1) },
      { x: 80, y: 40, bulge: 0 },
    ],
  };
  const radius = 20 / Math.sin(0.5);
  const { lengthMm, stretches } = developedRib(hollow, 1.1, () => 30);
  expect(lengthMm).toBeCloseTo(radius + 0.55, 9);
  expect(stretches[0]).toMatchObject({ bends: 'hollow', insideRadiusMm: expect.closeTo(radius, 9) });
});

test('a plane through a drum unrolls into the known wave', () => {
  const { edge, lengthMm } = developedRib(quarter, 0.001, (y) => 30 - 0.02 * y);
  for (const { x, y } of edge) expect(y).toBeCloseTo(30 - 0.02 * 100 * (1 - Math.cos(x / 100)), 4);
  expect(edge[0]).toEqual({ x: 0, y: 30 });
  expect(edge.at(-1)?.x).toBeCloseTo(lengthMm, 9);
});

test.each(FAMILIES)(
  'ribs of a %s: the middle is shorter than the outer face by half a thickness for every radian of turning',
  (family) => {
    const outline = bodyOutline(sampleHalf(family));
    const values = planValues(sampleDesign(family));
    if (!outline.ok || !values.ok) throw new Error('refused');
    const ribs = ribLines(outline.value, values.value);
    if (!ribs.ok) throw new Error(JSON.stringify(ribs.faults));
    const { ribThickness } = values.value;
    for (const name of ['lowerBout', 'cBout', 'upperBout'] as const) {
      const face = ribs.value.outer.sections[name];
      const { developed } = ribs.value[name];
      const turning = segments(face).reduce((sum, segment) => sum + (arcOf(segment)?.sweepRad ?? 0), 0);
      expect(developed.lengthMm).toBeCloseTo(lengthOf(face) - (ribThickness / 2) * turning, 9);
      expect(developed.stretches.at(-1)?.toMm).toBe(developed.lengthMm);
      const tightest = Math.min(
        ...developed.stretches.map(({ insideRadiusMm }) => insideRadiusMm ?? Number.POSITIVE_INFINITY),
      );
      expect(tightest).toBeCloseTo(ribs.value[name].bend.tightestMm, 9);
    }
  },
);

test('ribs that fall towards the neck are as high at both ends of the body as was asked', () => {
  const outline = bodyOutline(sampleHalf('violin'));
  const values = planValues(sampleDesign('violin', { ribHeightNeck: 29, ribHeightTail: 31 }));
  if (!outline.ok || !values.ok) throw new Error('refused');
  const ribs = ribLines(outline.value, values.value);
  if (!ribs.ok) throw new Error(JSON.stringify(ribs.faults));
  const { lowerBout, cBout, upperBout } = ribs.value;
  expect(lowerBout.developed.edge[0]?.y).toBeCloseTo(31, 9);
  expect(upperBout.developed.edge.at(-1)?.y).toBeCloseTo(29, 9);
  expect(cBout.developed.edge[0]?.y).toBeGreaterThan(cBout.developed.edge.at(-1)?.y ?? 99);
});
