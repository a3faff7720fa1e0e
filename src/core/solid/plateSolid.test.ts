import { expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { containsPoint, nearestOn } from '../curve/index.ts';
import { type Design, draftDesign } from '../design/index.ts';
import { deriveInstrument, insideHeight, plateSlopes, weighed } from '../instrument/index.ts';
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

/** Greatest distance, square to the outside, up and down for the inside, between random places of triangles and the surface they stand for. */
function standsOff(mesh: Mesh, isOutside: boolean): number {
  const random = seededRandom(7);
  const { positions, triangles } = mesh;
  let most = 0;
  for (let tries = 0; tries < 30_000; tries++) {
    const at = 3 * Math.floor((random() * triangles.length) / 3);
    const corners = [0, 1, 2].map((corner) => {
      const start = 3 * (triangles[at + corner] as number);
      return [positions[start], positions[start + 1], positions[start + 2]] as [number, number, number];
    });
    const [p, q, r] = corners as [
      [number, number, number],
      [number, number, number],
      [number, number, number],
    ];
    const up = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
    if (isOutside ? !(up > 0) : !(up < 0)) continue;
    let [a, b] = [random(), random()];
    if (a + b > 1) [a, b] = [1 - a, 1 - b];
    const [x, y, z] = [0, 1, 2].map(
      (axis) => p[axis]! + a * (q[axis]! - p[axis]!) + b * (r[axis]! - p[axis]!),
    ) as [number, number, number];
    if (!containsPoint(outline, point<'body'>(x, y))) continue;
    most = Math.max(most, isOutside ? offOutside(x, y, z) : Math.abs(z - insideHeight(back, x, y)));
  }
  return most;
}

/** How far a place stands off the outside: from the round of the edge, or square to the arch. */
function offOutside(x: number, y: number, z: number): number {
  const { crestInsetMm: radius, edgeHeightMm } = back.arch.numbers;
  const fromEdge = nearestOn(outline, point<'body'>(x, y)).distanceMm;
  if (fromEdge < radius) return Math.abs(Math.hypot(radius - fromEdge, z - (edgeHeightMm - radius)) - radius);
  const { zMm, slopeX, slopeY } = plateSlopes(back.arch, x, y);
  return Math.abs(z - zMm) / Math.hypot(1, slopeX, slopeY);
}

const finished = solid('finished', true);

test('a finished plate is one closed skin that weighs what the plate weighs', () => {
  expect(meshFlaws('back', finished)).toEqual([]);
  const measured = weighed(instrument);
  if (!measured.ok) throw new Error('refused');
  expect(Math.abs(meshVolume(finished) / measured.value.box.back.wood.volumeMm3 - 1)).toBeLessThan(1e-3);
});

test('its outside keeps to the chord error everywhere', () => {
  expect(standsOff(finished, true)).toBeLessThan(PLATE_CHORD_MM);
});

test('its inside keeps to an eighth of a millimetre, on the ramp beside the gluing face too', () => {
  expect(standsOff(finished, false)).toBeLessThan(0.125);
});

test('a plate that is only arched is flat below and at its edge', () => {
  const arched = solid('arched', false);
  expect(meshFlaws('back', arched)).toEqual([]);
  expect(meshVolume(arched)).toBeGreaterThan(meshVolume(finished));
});
