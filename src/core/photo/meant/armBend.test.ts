import { expect, test } from 'vitest';
import { point, seededNormal, seededRandom } from '../../base/index.ts';
import { armBend } from './armBend.ts';

const RADIUS = 22;
const ARM_MM = 18;

/** An arc of 22 mm radius that turns right and ends, level, at a corner tip in (0, 22); its centre is the origin. */
const chain = {
  closed: false,
  vertices: [
    { x: -RADIUS, y: 0, bulge: -Math.tan(Math.PI / 8) },
    { x: 0, y: RADIUS, bulge: 0 },
  ],
};

/** Places of an arm that ends in the same tip, but is bent less: on an arc of 26 mm radius, a little inside the tip. */
function places(scatterMm: number, slipMm: (fromTipMm: number) => number = () => 0) {
  const random = seededRandom(5);
  return Array.from({ length: 34 }, (_, i) => {
    const fromTipMm = 1 + i * 0.5;
    const angle = Math.PI / 2 + fromTipMm / 26;
    // Outward is the right hand of the travel, so towards the centre of an arc that turns right.
    const radius = 26 - scatterMm * seededNormal(random) - slipMm(fromTipMm);
    return {
      ...point<'body'>(radius * Math.cos(angle), RADIUS - 26 + radius * Math.sin(angle)),
      sigmaMm: 0.05,
    };
  });
}

const normal = { x: 0, y: -1 };
const gapPast = (found: ReturnType<typeof armBend>, alongMm: number) => {
  const at = point<'body'>(RADIUS * Math.sin(alongMm / RADIUS), RADIUS * Math.cos(alongMm / RADIUS));
  const outward = { x: -at.x / RADIUS, y: -at.y / RADIUS };
  return found?.gapAt(at, outward, -alongMm);
};
/** How far the flatter arc lies outside the tighter one at a length past the tip: minus the sagitta between them. */
const truth = (alongMm: number) => -(alongMm ** 2 / 2) * (1 / RADIUS - 1 / 26);

test('an arm bent less than the fitted arc is carried on past the tip with its own bend', () => {
  const found = armBend(chain, 'end', places(0.02), ARM_MM);
  expect(found?.gapAt(point<'body'>(0, RADIUS), normal, 0).gapMm).toBeCloseTo(0, 1);
  expect(gapPast(found, 3)?.gapMm).toBeLessThan(0);
  expect(Math.abs((gapPast(found, 3)?.gapMm ?? 9) - truth(3))).toBeLessThan(0.08);
});

test('places that slipped by a millimetre over a third of the arm do not move it', () => {
  const slipped = places(0.02, (mm) => (mm > 4 && mm < 9 ? 1 : 0));
  const found = armBend(chain, 'end', slipped, ARM_MM);
  expect(Math.abs(found?.gapAt(point<'body'>(0, RADIUS), normal, 0).gapMm ?? 9)).toBeLessThan(0.1);
});

test('it is told less surely the farther past the tip', () => {
  const found = armBend(chain, 'end', places(0.02), ARM_MM);
  const sigmas = [0, 2, 4].map((mm) => gapPast(found, mm)?.sigmaMm ?? 0);
  expect(sigmas[0]).toBeGreaterThan(0);
  expect(sigmas[1]).toBeGreaterThan(sigmas[0] ?? 9);
  expect(sigmas[2]).toBeGreaterThan(sigmas[1] ?? 9);
});

test('an arm is not drawn through a handful of places, nor from a line', () => {
  expect(armBend(chain, 'end', places(0).slice(0, 7), ARM_MM)).toBeUndefined();
  const line = {
    closed: false,
    vertices: [
      { x: -RADIUS, y: RADIUS, bulge: 0 },
      { x: 0, y: RADIUS, bulge: 0 },
    ],
  };
  expect(armBend(line, 'end', places(0), ARM_MM)).toBeUndefined();
});
