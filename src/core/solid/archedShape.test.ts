import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { containsPoint } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, plateHeight } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { splineCurveAt, splineSurfaceAt } from '../surface/index.ts';
import { type ArchedShape, archedShape, FACE_EDGE_MM, SURFACE_MM } from './archedShape.ts';

const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
if (!derived.ok) throw new Error('refused');
const arch = derived.value.plates.top;
const outline = derived.value.plan.outline.chain;

function shapeOf(plate: typeof arch): ArchedShape {
  const made = archedShape(plate, outline);
  if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
  return made.value;
}

const shape = shapeOf(arch);

test('its surface keeps to the tolerance at random places, between knots and beside the crease too', () => {
  const random = seededRandom(5);
  let [most, count] = [0, 0];
  while (count < 30_000) {
    const [x, y] = [104 * (2 * random() - 1), 355 * random()];
    if (!containsPoint(outline, point<'body'>(x, y))) continue;
    const zMm = plateHeight(arch, x, y, 'arched');
    if (zMm <= shape.edgeHeightMm) continue;
    count++;
    most = Math.max(most, Math.abs(splineSurfaceAt(shape.arch, x, y).zMm - zMm));
  }
  expect(most).toBeLessThan(SURFACE_MM);
  expect(shape.offMm).toBeLessThan(SURFACE_MM);
});

test('its crease is one line from centre line to centre line that lies on both of its faces', () => {
  let end: { x: number; y: number } = { x: 0, y: 0 };
  for (const [index, curve] of shape.crease.entries()) {
    const [from, to] = [curve.knots[0] as number, curve.knots.at(-1) as number];
    const start = splineCurveAt(curve, from);
    if (index > 0) expect(Math.hypot(start.x - end.x, start.y - end.y)).toBeLessThan(1e-9);
    else expect(Math.abs(start.x)).toBeLessThan(1e-9);
    end = splineCurveAt(curve, to);
    for (let step = 0; step <= 1000; step++) {
      const { x, y } = splineCurveAt(curve, from + ((to - from) * step) / 1000);
      const off = Math.abs(splineSurfaceAt(shape.arch, x, y).zMm - shape.edgeHeightMm);
      expect(off).toBeLessThan(FACE_EDGE_MM);
    }
  }
  expect(Math.abs(end.x)).toBeLessThan(1e-9);
});

test('an arch that dips below its edge once more is refused in words', () => {
  const { rows, coefficients: own } = arch.correction;
  const [across, middle] = [own.length / (rows + 3), Math.round((rows + 3) / 2)];
  // A pit some 20 mm off the centre line.
  const coefficients = own.map((value, at) => (at === middle * across + 4 ? -40 : value));
  const made = archedShape({ ...arch, correction: { ...arch.correction, coefficients } }, outline);
  expect(made.ok ? [] : made.faults.map(({ code }) => code)).toEqual(['solid.surface']);
});

test('an arch over a channel that is not deepened has no crease, and is refused in words', () => {
  const numbers = { ...arch.numbers, scoopDepthMm: 0, edgeHeightMm: arch.channelZMm };
  const made = archedShape({ ...arch, numbers }, outline);
  expect(made.ok ? [] : made.faults.map(({ code, found }) => [code, /line/.test(found)])).toEqual([
    ['solid.crease', true],
  ]);
});
