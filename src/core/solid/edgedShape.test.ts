import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { type Chain, nearestOn, segments } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, plateHeight } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { splinePatchAt, splineSurfaceAt } from '../surface/index.ts';
import { SURFACE_MM } from './archedShape.ts';
import { edgedShape, SCOOP_EDGE_MM, underRound } from './edgedShape.ts';

const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
if (!derived.ok) throw new Error('refused');
const arch = derived.value.plates.back;
const outline = derived.value.plan.outline.chain;
const made = edgedShape(arch, outline);
if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
const shape = made.value;
const { crestInsetMm, edgeHeightMm } = arch.numbers;

test('its scoops keep to the tolerance at random places, where they run to a point in the corners too', () => {
  const random = seededRandom(9);
  let most = 0;
  for (const { patch } of shape.scoops)
    for (let count = 0; count < 4000; count++) {
      const [from, to] = [patch.knotsV[0] as number, patch.knotsV.at(-1) as number];
      // Half of them crowd toward the ends and the crest.
      const [across, along] = [random(), random()];
      const v = count % 2 === 0 ? from + along * (to - from) : from + along ** 4 * (to - from);
      const [x, y, zMm] = splinePatchAt(patch, count % 2 === 0 ? across : 1 - across ** 4, v);
      most = Math.max(most, Math.abs(zMm - plateHeight(arch, x, y, 'finished')));
    }
  expect(most).toBeLessThan(SURFACE_MM);
  expect(shape.offMm).toBeLessThan(SURFACE_MM);
});

test('its scoops run from the arch to the crest, each from where the one before ends', () => {
  for (const [index, { patch, toVertex }] of shape.scoops.entries()) {
    const [from, to] = [patch.knotsV[0] as number, patch.knotsV.at(-1) as number];
    for (let step = 0; step <= 5000; step++) {
      const v = from + ((to - from) * step) / 5000;
      const [x, y, zMm] = splinePatchAt(patch, 1, v);
      expect(zMm).toBeCloseTo(edgeHeightMm, 9);
      const offCrest = Math.abs(nearestOn(outline, point<'body'>(x, y)).distanceMm - crestInsetMm);
      expect(offCrest).toBeLessThan(SCOOP_EDGE_MM);
      const [channelX, channelY, channelZ] = splinePatchAt(patch, 0, v);
      const offArch = Math.abs(splineSurfaceAt(shape.arch, channelX, channelY).zMm - channelZ);
      expect(offArch).toBeLessThan(SCOOP_EDGE_MM);
    }
    const next = shape.scoops[(index + 1) % shape.scoops.length];
    if (!next) continue;
    expect(next.fromVertex).toBe(toVertex);
    for (const u of [0, 0.3, 0.97, 1]) {
      const end = splinePatchAt(patch, u, to);
      const start = splinePatchAt(next.patch, u, next.patch.knotsV[0] as number);
      for (const axis of [0, 1, 2] as const) expect(end[axis]).toBeCloseTo(start[axis], 8);
    }
  }
});

test('every side of the outline has its own side of the crest, and the mitres run up to it', () => {
  expect(shape.crest.length).toBe(segments(shape.outline).length);
  for (const [k, place] of shape.crest.entries()) {
    expect(nearestOn(outline, place).distanceMm).toBeCloseTo(crestInsetMm, 6);
    const end = shape.mitres[k]?.coefficients.at(-1);
    if (!end) continue;
    expect(Math.hypot(end[0] - place.x, end[1] - place.y)).toBeLessThan(1e-9);
    expect(end[2]).toBeCloseTo(edgeHeightMm, 9);
  }
  expect(shape.mitres.filter((mitre) => mitre !== null).length).toBe(8);
});

test('an outline with a corner that goes in, or no corners, is refused in words', () => {
  const codes = (chain: Chain<'body'>): readonly string[] => {
    const refused = edgedShape(arch, chain);
    return refused.ok ? [] : refused.faults.map(({ code }) => code);
  };
  const { vertices } = shape.outline;
  const notched = vertices.flatMap((vertex, index) =>
    index === 0
      ? [
          { ...vertex, bulge: 0 },
          { x: vertex.x + 8, y: vertex.y + 6, bulge: 0 },
        ]
      : [vertex],
  );
  expect(codes({ closed: true, vertices: notched })).toEqual(['solid.crest']);
  const round: Chain<'body'> = {
    closed: true,
    vertices: [
      { x: 0, y: 0, bulge: 1 },
      { x: 0, y: 355, bulge: 1 },
    ],
  };
  expect(codes(round)).toEqual(['solid.crest']);
});

test('a round below that leaves no wall is told, and what to do', () => {
  const usual = underRound(shape, 1.2, 'back');
  expect(usual.ok && usual.value.places.length).toBe(segments(shape.outline).length);
  const deep = underRound(shape, edgeHeightMm, 'back');
  expect(deep.ok ? [] : deep.faults).toMatchObject([{ code: 'solid.under', at: 'back' }]);
});
