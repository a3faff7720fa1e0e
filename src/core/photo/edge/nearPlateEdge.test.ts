import { expect, test } from 'vitest';
import { type Point, point, seededNormal, seededRandom } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { PurflingTrace } from '../lines/purflingTrace.ts';
import type { Picture } from '../picture/picture.ts';
import { nearPlateEdge } from './nearPlateEdge.ts';

const PX_PER_MM = 8;
const SIDE_PX = 200;
/** px. Where the near plate ends in the middle row, and how it leans from row to row. */
const NEAR_EDGE_PX = 104.3;
const LEAN = 0.06;
/** Outward unit normal of the edge, to the right. */
const NORMAL: Point<'photo'> = point(1 / Math.hypot(1, LEAN), -LEAN / Math.hypot(1, LEAN));

type Colour = readonly [number, number, number];
const VARNISH: Colour = [196, 128, 62];
const PURFLING: Colour = [58, 40, 26];
const RIBS: Colour = [92, 50, 24];
const FAR_PLATE: Colour = [170, 108, 52];
const SHADOW: Colour = [150, 146, 140];
const GROUND: Colour = [206, 203, 196];

/** The colour so many mm outside the near edge where ribs and far plate show. */
type Below = (outMm: number) => Colour;

/** Dark lines, mm inside the near plate's edge from and to. */
type Lines = readonly (readonly [number, number])[];
const PURFLING_LINES: Lines = [
  [3.6, 4.0],
  [4.4, 4.8],
];

/**
 * The colour so many mm outside the near plate's edge: dark lines inside, a soft shadow outside the silhouette. The
 * far plate's rim shows lighter than the ribs only where more than 1 mm is looked over.
 */
function colourAt(outMm: number, gapMm: number, ribs: Colour, lines: Lines, below?: Below): Colour {
  if (lines.some(([from, to]) => -outMm > from && -outMm < to)) return PURFLING;
  if (outMm < 0) return VARNISH;
  if (below && outMm < gapMm) return below(outMm);
  if (outMm < (gapMm > 1 ? 0.55 * gapMm : gapMm)) return ribs;
  if (outMm < gapMm) return FAR_PLATE;
  const light = Math.min(1, (outMm - gapMm) / 5);
  const mixed = SHADOW.map((dark, c) => dark + light * (GROUND[c] - dark));
  return [mixed[0], mixed[1], mixed[2]];
}

/** Signed px outside the near plate's edge. */
function outPx(x: number, y: number): number {
  return (x - NEAR_EDGE_PX) * NORMAL.x + (y - SIDE_PX / 2) * NORMAL.y;
}

/** Each pixel the mean of 25 places in it and round it, with two grey levels of noise. */
function paint(gapMm: number, ribs: Colour = RIBS, lines: Lines = PURFLING_LINES, below?: Below): Picture {
  const noise = seededRandom(11);
  const rgb = new Uint8Array(3 * SIDE_PX * SIDE_PX);
  for (let y = 0; y < SIDE_PX; y++)
    for (let x = 0; x < SIDE_PX; x++) {
      const sum = [0, 0, 0];
      for (let i = -2; i <= 2; i++)
        for (let j = -2; j <= 2; j++) {
          const colour = colourAt(outPx(x + 0.3 * i, y + 0.3 * j) / PX_PER_MM, gapMm, ribs, lines, below);
          for (let c = 0; c < 3; c++) sum[c] += colour[c] / 25;
        }
      for (let c = 0; c < 3; c++)
        rgb[3 * (y * SIDE_PX + x) + c] = Math.round(sum[c] + 2 * seededNormal(noise));
    }
  return { widthPx: SIDE_PX, heightPx: SIDE_PX, rgb };
}

/** Places every 6 px along an edge so many mm outside the near plate's. */
function placesAt(outMm: number): readonly EdgePoint[] {
  return Array.from({ length: 24 }, (_, i): EdgePoint => {
    const y = 30 + 6 * i;
    const x = NEAR_EDGE_PX - ((y - SIDE_PX / 2) * NORMAL.y) / NORMAL.x;
    return {
      point: point(x + outMm * PX_PER_MM * NORMAL.x, y + outMm * PX_PER_MM * NORMAL.y),
      normal: NORMAL,
      side: 'treble',
      section: 'cBout',
      along: 200 + i,
      state: 'seen',
      sigmaPx: 0.3,
    };
  });
}

function offMm(edge: readonly EdgePoint[]): readonly number[] {
  return edge.map((place) => outPx(place.point.x, place.point.y) / PX_PER_MM);
}

function largest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs));
}

test.each([0.8, 1.5, 2.5])(
  'places on a far plate that shows %s mm beyond the near one move to the near one',
  (gapMm) => {
    const places = placesAt(gapMm);
    const near = nearPlateEdge(paint(gapMm), places, () => gapMm * PX_PER_MM, PX_PER_MM);
    expect(largest(offMm(near.edge))).toBeLessThan(0.1);
    expect(near).toMatchObject({ moved: places.length, untold: 0 });
    expect(near.edge.every((place) => place.state === 'seen')).toBe(true);
  },
);

test('places already on the near plate stay on it where the far one shows beside it', () => {
  const near = nearPlateEdge(paint(1.5), placesAt(0.05), () => 1.5 * PX_PER_MM, PX_PER_MM);
  expect(largest(offMm(near.edge))).toBeLessThan(0.1);
  expect(near).toMatchObject({ moved: 0, untold: 0 });
});

test('places without an overlook stay untouched', () => {
  const places = placesAt(0.2);
  expect(nearPlateEdge(paint(0), places, () => 0, PX_PER_MM)).toEqual({
    edge: places,
    moved: 0,
    purfling: null,
    untold: 0,
    byPurfling: 0,
  });
});

test('a gap that is predicted but shows neither ribs nor purfling is told and not guessed', () => {
  const places = placesAt(0);
  const near = nearPlateEdge(paint(0, RIBS, []), places, () => 1.5 * PX_PER_MM, PX_PER_MM);
  expect(near).toMatchObject({ moved: 0, untold: places.length });
  expect(near.edge.map((place) => place.point)).toEqual(places.map((place) => place.point));
  expect(near.edge.every((place) => place.state === 'doubtful')).toBe(true);
});

test.each([2.5, 3.2, 4.5])(
  'from a far plate that shows %s mm no purfling line inside the near edge is taken',
  (gapMm) => {
    const near = nearPlateEdge(paint(gapMm), placesAt(gapMm), () => gapMm * PX_PER_MM, PX_PER_MM);
    expect(largest(offMm(near.edge))).toBeLessThan(0.1);
  },
);

test('a single thin dark line within reach, inside the near edge, is not taken for it', () => {
  const picture = paint(2.5, RIBS, [[1.6, 2.0]]);
  const near = nearPlateEdge(picture, placesAt(0), () => 2.5 * PX_PER_MM, PX_PER_MM);
  expect(largest(offMm(near.edge))).toBeLessThan(0.1);
});

test('an edge without ribs beside it is the near plate’s where its purfling lies as deep as usual', () => {
  const places = placesAt(0);
  const near = nearPlateEdge(paint(0), places, () => 1.5 * PX_PER_MM, PX_PER_MM);
  expect(near).toMatchObject({ moved: 0, untold: 0 });
  expect(largest(offMm(near.edge))).toBeLessThan(0.1);
});

const DOUBLE: Lines = [...PURFLING_LINES, [6.6, 7.0], [7.4, 7.8]];

test.each([0, 1.5, 3.2, 4.5, 6])(
  'double purfling is not taken for the edge, from the near edge or from a far plate that shows %s mm',
  (gapMm) => {
    const picture = paint(gapMm, RIBS, DOUBLE);
    for (const outMm of [0, gapMm]) {
      const near = nearPlateEdge(picture, placesAt(outMm), () => Math.max(1, gapMm) * PX_PER_MM, PX_PER_MM);
      expect(largest(offMm(near.edge))).toBeLessThan(0.1);
      expect(near.untold).toBe(0);
    }
  },
);

/** Ribs as a strip so wide, then a rim lighter than the varnish. */
function thinStrip(stripMm: number, lines: Lines): Picture {
  return paint(1.1, RIBS, lines, (outMm) => (outMm < stripMm ? RIBS : [226, 176, 118]));
}

test.each([0.25, 0.35, 0.45])(
  'a strip of ribs %s mm wide beside a lighter far rim is told by the purfling',
  (stripMm) => {
    const picture = thinStrip(stripMm, PURFLING_LINES);
    const near = nearPlateEdge(picture, placesAt(1.1), () => 1.1 * PX_PER_MM, PX_PER_MM);
    expect(largest(offMm(near.edge))).toBeLessThan(0.12);
    expect(near).toMatchObject({ moved: 24, untold: 0 });
  },
);

test.each([0.25, 0.35, 0.45])(
  'a strip of ribs %s mm wide beside a lighter far rim is said to be untold where no purfling is seen',
  (stripMm) => {
    const near = nearPlateEdge(thinStrip(stripMm, []), placesAt(1.1), () => 1.1 * PX_PER_MM, PX_PER_MM);
    expect(near.untold + near.moved).toBe(24);
    const silent = near.edge.filter(
      (place, i) => place.state === 'seen' && Math.abs(offMm(near.edge)[i]) > 0.15,
    );
    expect(silent).toEqual([]);
  },
);

test('ribs of the varnish’s own colour: the edge goes where the purfling puts it, and stays doubtful', () => {
  const picture = paint(2, VARNISH, PURFLING_LINES, () => VARNISH);
  const near = nearPlateEdge(picture, placesAt(2), () => 2 * PX_PER_MM, PX_PER_MM);
  expect(near).toMatchObject({ moved: 24, untold: 0, byPurfling: 24 });
  expect(largest(offMm(near.edge))).toBeLessThan(0.4);
  expect(near.edge.every((place) => place.state === 'doubtful')).toBe(true);
});

/** A purfling said to lie so many mm outside the near edge, opposite each place. */
function purflingAt(outMm: number, places: readonly EdgePoint[]): PurflingTrace {
  const on = placesAt(outMm);
  return {
    seen: true,
    widthPx: null,
    share: 1,
    unseen: [],
    findings: [],
    places: places.map(({ normal, side, section, along }, i) => ({
      normal,
      point: (on[i] as EdgePoint).point,
      side,
      section,
      along,
      depthPx: 4.2 * PX_PER_MM,
      sigmaPx: 0.3,
    })),
  };
}

test.each([
  ['rib and far rim', 3.3, -0.9],
  ['far rim', 6, 3.4],
])(
  'a dark line beside the border of %s is no purfling where the far plate does not end a gap farther out',
  (_, outMm, lineMm) => {
    const places = placesAt(outMm);
    const near = nearPlateEdge(paint(6), places, () => 6 * PX_PER_MM, PX_PER_MM, {
      purfling: purflingAt(lineMm, places),
    });
    const silent = near.edge.filter(
      (place, i) => place.state === 'seen' && Math.abs(offMm(near.edge)[i]) > 0.15,
    );
    expect(silent).toEqual([]);
  },
);

test('two borders nearer together than the far plate can show are not near edge and far rim', () => {
  const picture = paint(3, RIBS, [], (outMm) => (outMm < 1.9 ? VARNISH : RIBS));
  const near = nearPlateEdge(picture, placesAt(3), () => 6 * PX_PER_MM, PX_PER_MM);
  expect(near.edge.filter(({ state }) => state === 'seen')).toEqual([]);
});

test.each([-1.2, -0.5, 0.4, 0.9])(
  'a trace that went astray on the far plate is found again from an outline expected %s mm outside the near edge',
  (outMm) => {
    // Nine millimetres off, and looking another way: along its own normals the near edge is never met.
    const astray = placesAt(9).map((place) => ({ ...place, normal: point<'photo'>(0.6, -0.8) }));
    const expected = placesAt(outMm).map((place) => ({ ...place, state: 'bridged' as const }));
    const overlook = () => 4 * PX_PER_MM;
    const lost = nearPlateEdge(paint(4), astray, overlook, PX_PER_MM);
    const near = nearPlateEdge(paint(4), astray, overlook, PX_PER_MM, { expected });
    expect(lost.edge.every((place) => place.state === 'seen' && Math.abs(offOf(place)) < 0.3)).toBe(false);
    expect(near.edge.every((place) => place.state === 'seen')).toBe(true);
    expect(largest(offMm(near.edge))).toBeLessThan(0.15);
    // What the purfling bears out needs no further doubt whether it is the far plate.
    expect(near.edge.every((place) => place.overlookPx === undefined)).toBe(true);
  },
);

test('an edge seen where the outline is expected is left as it was traced', () => {
  const near = nearPlateEdge(paint(0), placesAt(0.05), (at) => (at.y < 100 ? 0 : 4 * PX_PER_MM), PX_PER_MM, {
    expected: placesAt(0.4).map((place) => ({ ...place, state: 'bridged' as const })),
  });
  const kept = near.edge.filter(({ point: at }) => at.y < 96);
  expect(kept.length).toBeGreaterThan(5);
  for (const off of offMm(kept)) expect(off).toBeCloseTo(0.05, 9);
});

test('traced and found again, all places keep the stations of the expected outline, however far the stations of the trace lie along', () => {
  // The trace's stations lie 3 mm farther along; a stretch in its middle was not seen.
  const traced = placesAt(0.05).map((place, i) => ({
    ...place,
    point: point<'photo'>(place.point.x - 24 * NORMAL.y, place.point.y + 24 * NORMAL.x),
    state: i > 8 && i < 14 ? ('doubtful' as const) : place.state,
  }));
  const expected = placesAt(0.4).map((place) => ({ ...place, state: 'bridged' as const }));
  const near = nearPlateEdge(paint(0), traced, (at) => (at.y > 190 ? 4 * PX_PER_MM : 0), PX_PER_MM, {
    expected,
  });
  near.edge.forEach((place, i) => {
    const station = expected[i].point;
    const alongPx = (place.point.y - station.y) * NORMAL.x - (place.point.x - station.x) * NORMAL.y;
    expect([i, alongPx]).toEqual([i, expect.closeTo(0, 6)]);
    expect(place.along).toBe(200 + i);
  });
  const kept = near.edge.filter(({ state }) => state === 'seen');
  expect(kept.length).toBeGreaterThan(8);
  expect(largest(offMm(kept))).toBeLessThan(0.1);
});

test('where something lay over the edge of the trace, nothing is found from an expected outline without a purfling', () => {
  // Astray, and its stations 3 mm farther along: what it says counts where it lies, not by its number.
  const astray = placesAt(9).map((place): EdgePoint => {
    const at = point<'photo'>(place.point.x - 24 * NORMAL.y, place.point.y + 24 * NORMAL.x);
    return { ...place, point: at, state: at.y > 100 ? 'bridged' : 'seen' };
  });
  const expected = placesAt(0.4).map((place) => ({ ...place, state: 'bridged' as const }));
  const near = nearPlateEdge(paint(4, RIBS, []), astray, () => 4 * PX_PER_MM, PX_PER_MM, { expected });
  const statesOf = (isHere: (y: number) => boolean) => [
    ...new Set(near.edge.filter((place) => isHere(place.point.y)).map(({ state }) => state)),
  ];
  expect(statesOf((y) => y < 90)).toEqual(['seen']);
  expect(statesOf((y) => y > 110)).toEqual(['doubtful']);
});

function offOf(place: EdgePoint): number {
  return offMm([place])[0];
}
