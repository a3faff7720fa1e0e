import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { containsPoint, nearestOn } from '../curve/index.ts';
import { type Design, draftDesign } from '../design/index.ts';
import { deriveInstrument, insideHeight, plateHeight, plateSlopes, weighed } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { type Mesh, meshVolume } from './mesh.ts';
import { meshFlaws } from './meshFlaws.ts';
import { PLATE_CHORD_MM, plateSolid } from './plateSolid.ts';

function violin(): Design {
  const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
  if (!drafted.ok) throw new Error('refused');
  return drafted.value.design;
}

const derived = deriveInstrument(violin());
if (!derived.ok) throw new Error('refused');
const instrument = derived.value;
const outline = instrument.plan.outline.chain;
const back = instrument.hollows.back;

function solid(state: 'arched' | 'finished', hollowed: boolean): Mesh {
  const made = plateSolid(back, outline, { state, hollowed });
  if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
  return made.value;
}

type Corner = readonly [number, number, number];

/** Random places of the triangles that look up (or down), a third of them within this many mm of a corner of the outline. */
function placesOn(mesh: Mesh, looks: 'up' | 'down', count: number): readonly Corner[] {
  const random = seededRandom(7);
  const { positions, triangles } = mesh;
  const cornerOf = (at: number): Corner => {
    const start = 3 * (triangles[at] as number);
    return [positions[start] as number, positions[start + 1] as number, positions[start + 2] as number];
  };
  const faces: (readonly [Corner, Corner, Corner])[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const [p, q, r] = [cornerOf(at), cornerOf(at + 1), cornerOf(at + 2)];
    const turn = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
    if (looks === 'up' ? turn > 0 : turn < 0) faces.push([p, q, r]);
  }
  const tips = [
    ...instrument.plan.outline.half.cBout.vertices.slice(0, 1),
    ...instrument.plan.outline.half.cBout.vertices.slice(-1),
  ];
  const inCorners = faces.filter(([p]) =>
    tips.some((tip) => Math.hypot(Math.abs(p[0]) - tip.x, p[1] - tip.y) < 15),
  );
  const placeOn = ([p, q, r]: readonly [Corner, Corner, Corner]): Corner => {
    let [a, b] = [random(), random()];
    if (a + b > 1) [a, b] = [1 - a, 1 - b];
    const on = (axis: 0 | 1 | 2): number => p[axis] + a * (q[axis] - p[axis]) + b * (r[axis] - p[axis]);
    return [on(0), on(1), on(2)];
  };
  return Array.from({ length: count }, (_, index) => {
    const among = index % 3 === 0 ? inCorners : faces;
    return placeOn(among[Math.floor(random() * among.length)] as (typeof faces)[number]);
  }).filter(([x, y]) => containsPoint(outline, point<'body'>(x, y)));
}

/** How far a place stands off the finished outside: from the round of the edge, or square to the arch. */
function offFinished([x, y, z]: Corner): number {
  const { crestInsetMm: radius, edgeHeightMm } = back.arch.numbers;
  const fromEdge = nearestOn(outline, point<'body'>(x, y)).distanceMm;
  if (fromEdge < radius) return Math.abs(Math.hypot(radius - fromEdge, z - (edgeHeightMm - radius)) - radius);
  const { zMm, slopeX, slopeY } = plateSlopes(back.arch, x, y);
  return Math.abs(z - zMm) / Math.hypot(1, slopeX, slopeY);
}

const most = (off: readonly number[]): number => off.reduce((a, b) => Math.max(a, b), 0);
const finished = solid('finished', true);

test('a finished plate is one closed skin that weighs what the plate weighs', () => {
  expect(meshFlaws('back', finished)).toEqual([]);
  const measured = weighed(instrument);
  if (!measured.ok) throw new Error('refused');
  expect(Math.abs(meshVolume(finished) / measured.value.box.back.wood.volumeMm3 - 1)).toBeLessThan(3e-4);
});

test('its outside keeps to the chord error everywhere, corners too', () => {
  expect(most(placesOn(finished, 'up', 120_000).map(offFinished))).toBeLessThan(PLATE_CHORD_MM);
});

test('its inside keeps to an eighth of a millimetre, on the ramp beside the gluing face too', () => {
  const off = placesOn(finished, 'down', 20_000).map(([x, y, z]) => Math.abs(z - insideHeight(back, x, y)));
  expect(most(off)).toBeLessThan(0.125);
});

test('a plate that is only arched is flat below and at its edge, and keeps to the chord error too', () => {
  const arched = solid('arched', false);
  expect(meshFlaws('back', arched)).toEqual([]);
  expect(meshVolume(arched)).toBeGreaterThan(meshVolume(finished));
  const off = placesOn(arched, 'up', 60_000).map(([x, y, z]) =>
    Math.abs(z - plateHeight(back.arch, x, y, 'arched')),
  );
  expect(most(off)).toBeLessThan(PLATE_CHORD_MM);
});
