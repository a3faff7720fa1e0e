import { describe, expect, test } from 'vitest';
import { point, seededRandom } from '../base/index.ts';
import { areaOf, containsPoint, nearestOn, offsetChain } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import {
  deriveInstrument,
  type Instrument,
  insideHeight,
  plateHeight,
  plateSlopes,
  weighed,
} from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { integrateInside } from '../surface/index.ts';
import { type Mesh, meshVolume } from './mesh.ts';
import { meshFlaws } from './meshFlaws.ts';
import {
  INSIDE_CHORD_MM,
  PLATE_CHORD_MM,
  type PlateSolidPlan,
  plateSolid,
  rememberedInside,
} from './plateSolid.ts';

function instrumentOf(family: 'violin' | 'cello', lengthMm: number): Instrument {
  const bodyLength = { value: lengthMm, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: family, values: { bodyLength } });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error('refused');
  return derived.value;
}

type Corner = readonly [number, number, number];

/** Random places of the triangles that look up (or down), a third of them near a corner of the outline. */
function placesOn({ plan }: Instrument, mesh: Mesh, looks: 'up' | 'down', count: number): readonly Corner[] {
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
    ...plan.outline.half.cBout.vertices.slice(0, 1),
    ...plan.outline.half.cBout.vertices.slice(-1),
  ];
  const inCorners = faces.filter(([p]) =>
    tips.some(
      (tip) => Math.hypot(Math.abs(p[0]) - tip.x, p[1] - tip.y) < 15 * (plan.outline.bodyLengthMm / 355),
    ),
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
  }).filter(([x, y]) => containsPoint(plan.outline.chain, point<'body'>(x, y)));
}

/** How far a place stands off the finished outside: from the round of the edge, or square to the arch. */
function offFinished({ plan, plates: { back } }: Instrument, [x, y, z]: Corner): number {
  const { crestInsetMm: radius, edgeHeightMm } = back.numbers;
  const fromEdge = nearestOn(plan.outline.chain, point<'body'>(x, y)).distanceMm;
  if (fromEdge < radius) return Math.abs(Math.hypot(radius - fromEdge, z - (edgeHeightMm - radius)) - radius);
  const { zMm, slopeX, slopeY } = plateSlopes(back, x, y);
  return Math.abs(z - zMm) / Math.hypot(1, slopeX, slopeY);
}

const most = (off: readonly number[]): number => off.reduce((a, b) => Math.max(a, b), 0);

describe.each([
  ['violin', 355],
  ['cello', 755],
] as const)('the plate of a %s', (family, lengthMm) => {
  const instrument = instrumentOf(family, lengthMm);
  const { back } = instrument.hollows;
  const insideAt = rememberedInside(back);
  const solid = (state: 'arched' | 'finished', hollowed: boolean): Mesh => {
    const made = plateSolid(back, instrument.plan.outline.chain, { state, hollowed, insideAt });
    if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
    return made.value;
  };
  const finished = solid('finished', true);
  const arched = solid('arched', false);

  test('finished is one closed skin that weighs what the plate weighs', () => {
    expect(meshFlaws('back', finished)).toEqual([]);
    const measured = weighed(instrument);
    if (!measured.ok) throw new Error('refused');
    expect(Math.abs(meshVolume(finished) / measured.value.box.back.wood.volumeMm3 - 1)).toBeLessThan(3e-4);
  });

  test('has an outside that keeps to the chord error everywhere, corners too', () => {
    const off = placesOn(instrument, finished, 'up', 120_000).map((at) => offFinished(instrument, at));
    expect(most(off)).toBeLessThan(PLATE_CHORD_MM);
  });

  test('has an inside that keeps to it nearly, on the ramp beside the gluing face too', () => {
    const places = placesOn(instrument, finished, 'down', 40_000);
    expect(most(places.map(([x, y, z]) => Math.abs(z - insideHeight(back, x, y))))).toBeLessThan(
      INSIDE_CHORD_MM,
    );
  });

  test('finished is laid with no more triangles than bend', () => {
    expect(finished.triangles.length / 3).toBeLessThan(family === 'violin' ? 160_000 : 300_000);
  });

  test('only arched is flat below and at its edge, and keeps to the chord error too', () => {
    expect(meshFlaws('back', arched)).toEqual([]);
    expect(meshVolume(arched)).toBeGreaterThan(meshVolume(finished));
    const off = placesOn(instrument, arched, 'up', 60_000).map(([x, y, z]) =>
      Math.abs(z - plateHeight(back.arch, x, y, 'arched')),
    );
    expect(most(off)).toBeLessThan(PLATE_CHORD_MM);
    expect(most(placesOn(instrument, arched, 'down', 100).map(([, , z]) => z))).toBe(0);
  });

  test('arched and hollowed is one closed skin too', () => {
    expect(meshFlaws('back', solid('arched', true))).toEqual([]);
  });
});

describe('a whole plate', () => {
  const instrument = instrumentOf('violin', 355);
  const { hollows, soundHoles, plan } = instrument;
  const outline = plan.outline.chain;
  const openings = [soundHoles.treble, soundHoles.bass];
  const insideAt = rememberedInside(hollows.top);
  const solid = (changes: Partial<PlateSolidPlan>): Mesh => {
    const made = plateSolid(hollows.top, outline, {
      state: 'finished',
      hollowed: true,
      insideAt,
      ...changes,
    });
    if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
    return made.value;
  };
  const closed = solid({});
  const cut = solid({ openings });

  test('with its sound holes has lost the wood that stood over their area', () => {
    expect(meshFlaws('top', cut)).toEqual([]);
    let woodMm3 = 0;
    integrateInside([soundHoles.treble], 1, (x, y, areaMm2) => {
      woodMm3 +=
        areaMm2 * (plateHeight(hollows.top.arch, x, y, 'finished') - insideHeight(hollows.top, x, y));
    });
    // 3 mm of wood over holes of 500 to 600 mm².
    expect(2 * woodMm3).toBeGreaterThan(2000);
    const without = meshVolume(closed) - 2 * woodMm3;
    expect(Math.abs(meshVolume(cut) / without - 1)).toBeLessThan(1e-4);
    // The holes themselves, not the plate: their wood to two parts in a thousand.
    expect(Math.abs((meshVolume(closed) - meshVolume(cut)) / (2 * woodMm3) - 1)).toBeLessThan(0.002);
  });

  test('is open all along its sound holes, and nowhere else', () => {
    const { positions, triangles } = cut;
    let [walls, off] = [0, 0];
    for (let at = 0; at < triangles.length; at += 3) {
      const corners = [0, 1, 2].map((corner) => 3 * (triangles[at + corner] as number));
      const mean = (axis: number): number =>
        corners.reduce((sum, one) => sum + (positions[one + axis] as number), 0) / 3;
      const middle = point<'body'>(mean(0), mean(1));
      const depthMm = Math.max(
        ...openings.map((hole) => (containsPoint(hole, middle) ? nearestOn(hole, middle).distanceMm : 0)),
      );
      if (depthMm > PLATE_CHORD_MM) off++;
      if (openings.some((hole) => nearestOn(hole, middle).distanceMm < PLATE_CHORD_MM)) walls++;
    }
    expect(off).toBe(0);
    expect(walls).toBeGreaterThan(1000);
  });

  test('rounded below has lost what a quarter circle leaves along its edge', () => {
    const radiusMm = 1.2;
    const rounded = solid({ underRoundingMm: radiusMm });
    expect(meshFlaws('top', rounded)).toEqual([]);
    // Layer by layer: the area outside the line to which the round has come at that height.
    const layers = 400;
    let lostMm3 = 0;
    for (let layer = 0; layer < layers; layer++) {
      const up = (layer + 0.5) / layers;
      const insetMm = radiusMm * (1 - Math.sqrt(1 - (1 - up) ** 2));
      const [line] = offsetChain(outline, -insetMm, { join: 'mitre' });
      lostMm3 += ((areaOf(outline) - areaOf(line ?? outline)) * radiusMm) / layers;
    }
    expect(lostMm3).toBeGreaterThan(200);
    // The round is laid in seven chords, which take 3 % more than the circle itself.
    const chords = (1 - 3.5 * Math.sin(Math.PI / 14)) / (1 - Math.PI / 4);
    expect(Math.abs((meshVolume(closed) - meshVolume(rounded)) / (chords * lostMm3) - 1)).toBeLessThan(0.005);
  });

  test.each([
    ['larger than the edge is high', 3],
    ['no size', Number.NaN],
  ])('a round below that is %s is refused', (_what, underRoundingMm) => {
    const made = plateSolid(hollows.top, outline, { state: 'finished', hollowed: true, underRoundingMm });
    expect(!made.ok && made.faults.map(({ code, at }) => [code, at])).toEqual([
      ['solid.edge', 'edgeUnderRounding'],
    ]);
  });
});
