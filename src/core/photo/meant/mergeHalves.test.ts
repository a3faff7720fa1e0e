import { expect, test } from 'vitest';
import { point, seededNormal, seededRandom } from '../../base/index.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import { foldHalves } from './foldHalves.ts';
import { mergeHalves } from './mergeHalves.ts';
import { mirrorAxis } from './mirrorAxis.ts';
import { wearMap, wearStretches } from './wearMap.ts';

interface Loss {
  readonly side: 'left' | 'right';
  readonly alongMm: number;
  readonly reachMm: number;
  readonly depthMm: number;
}

const LENGTH = 356;
const HEADING = 1.62;
const ORIGIN = { x: 211, y: 17 };

/** A plain symmetric body, a waisted oval: x = 84 + 20 cos(2t) - 18 cos(4t) at height, ends closed by sine. */
function meantPlace(t: number): { x: number; y: number } {
  const wave = Math.PI * t;
  const half = Math.sin(wave) ** 0.5 * (82 + 14 * Math.cos(wave) + 22 * Math.cos(2 * wave));
  return { x: half, y: LENGTH * t };
}

function makeEdge(
  seed: number,
  losses: readonly Loss[],
  leanMm: number,
  noiseMm: number,
): FoundEdge<'scene'> {
  const random = seededRandom(seed);
  const steps = 900;
  const places = Array.from({ length: steps + 1 }, (_, i) => meantPlace(0.0004 + 0.9992 * (i / steps)));
  const along = [0];
  for (let i = 1; i <= steps; i++)
    along.push(along[i - 1] + Math.hypot(places[i].x - places[i - 1].x, places[i].y - places[i - 1].y));
  const make = (side: 'left' | 'right'): EdgeSpot<'scene'>[] => {
    const sign = side === 'right' ? 1 : -1;
    const spots: EdgeSpot<'scene'>[] = [];
    for (let target = 0.5; target < along[steps]; target += 1) {
      let i = 0;
      while (along[i + 1] < target) i++;
      const share = (target - along[i]) / (along[i + 1] - along[i]);
      const dx = places[i + 1].x - places[i].x;
      const dy = places[i + 1].y - places[i].y;
      const size = Math.hypot(dx, dy);
      const lost = losses
        .filter((loss) => loss.side === side && Math.abs(loss.alongMm - target) < loss.reachMm)
        .reduce(
          (sum, loss) =>
            sum + loss.depthMm * Math.cos((Math.PI * (target - loss.alongMm)) / (2 * loss.reachMm)) ** 2,
          0,
        );
      const off = -lost + noiseMm * seededNormal(random);
      const x =
        sign * (places[i].x + share * dx + (off * dy) / size) +
        leanMm * Math.sin((Math.PI * places[i].y) / LENGTH);
      const y = places[i].y + share * dy - (off * dx) / size;
      spots.push({
        ...point<'scene'>(
          ORIGIN.x + Math.sin(HEADING) * x + Math.cos(HEADING) * y,
          ORIGIN.y - Math.cos(HEADING) * x + Math.sin(HEADING) * y,
        ),
        section: 'lowerBout',
        alongMm: target,
        seen: true,
        sigmaMm: noiseMm || 0.01,
      });
    }
    return spots;
  };
  return { right: make('right'), left: make('left') };
}

const LOSSES: readonly Loss[] = [
  { side: 'right', alongMm: 330, reachMm: 30, depthMm: 1.2 },
  { side: 'left', alongMm: 90, reachMm: 24, depthMm: 0.9 },
  { side: 'right', alongMm: 180, reachMm: 8, depthMm: 1.8 },
];

function nearStart() {
  return { through: point<'scene'>(ORIGIN.x + 1.3, ORIGIN.y - 0.8), headingRad: HEADING + 0.012 };
}

/** How far the found axis stands off the true one at both ends of the body, mm. */
function axisError(edge: FoundEdge<'scene'>): number {
  const found = mirrorAxis(edge, nearStart());
  if (!found.ok) throw new Error(found.faults[0].found);
  const { through, headingRad } = found.value;
  const off = (along: number) => {
    const x = ORIGIN.x + Math.cos(HEADING) * along - through.x;
    const y = ORIGIN.y + Math.sin(HEADING) * along - through.y;
    return x * Math.sin(headingRad) - y * Math.cos(headingRad);
  };
  return Math.max(Math.abs(off(0)), Math.abs(off(LENGTH)));
}

test('a clean body gives its axis to a hundredth of a millimetre', () => {
  expect(axisError(makeEdge(1, [], 0, 0))).toBeLessThan(0.01);
});

test('lost wood is put back from the other half, and only there', () => {
  const edge = makeEdge(7, LOSSES, 0.12, 0.03);
  const axis = mirrorAxis(edge, nearStart());
  if (!axis.ok) throw new Error('no axis');
  const { places } = mergeHalves(foldHalves(edge, axis.value));
  const truth = Array.from({ length: 40_000 }, (_, i) => meantPlace((i + 0.5) / 40_000));
  const lower = { x: axis.value.through.x - ORIGIN.x, y: axis.value.through.y - ORIGIN.y };
  const shift = lower.x * Math.cos(HEADING) + lower.y * Math.sin(HEADING);
  const away = places
    .filter(({ alongMm }) => alongMm > 20 && alongMm < 430)
    .map(({ x, y, normalX, normalY, symmetric: { outMm } }) => {
      const [atX, atY] = [x + outMm * normalX, y + outMm * normalY + shift];
      return Math.min(...truth.map((p) => Math.hypot(p.x - atX, p.y - atY)));
    });
  expect(Math.max(...away)).toBeLessThan(0.25);
  expect(Math.sqrt(away.reduce((sum, d) => sum + d * d, 0) / away.length)).toBeLessThan(0.09);
  const wear = wearStretches(wearMap(places, {}, 0, 'top'));
  expect(wear.map((stretch) => stretch.side).sort()).toEqual(['bass', 'treble', 'treble']);
  const deepest = Math.max(...wear.map((stretch) => stretch.depthMm));
  expect(Math.abs(deepest - 1.8)).toBeLessThan(0.25);
});

test('halves that disagree over too short a way to tell a loss leave their mean unsure by half of what they disagree by', () => {
  const edge = makeEdge(3, [{ side: 'left', alongMm: 300.5, reachMm: 0.9, depthMm: 1.4 }], 0, 0.03);
  const axis = mirrorAxis(edge, nearStart());
  if (!axis.ok) throw new Error('no axis');
  const { places } = mergeHalves(foldHalves(edge, axis.value));
  const sure = (near: boolean) =>
    places
      .filter(({ alongMm }) => Math.abs(alongMm - 300.5) < 0.4 === near)
      .filter(({ symmetric: { from } }) => from === 'both')
      .map(({ symmetric: { sigmaMm } }) => sigmaMm);
  expect(sure(true).length).toBeGreaterThan(0);
  expect(Math.min(...sure(true))).toBeGreaterThan(0.25);
  expect(Math.min(...sure(false))).toBeLessThan(0.05);
});

test('one half alone beside places where halves disagree is no surer than they are; farther off it is as sure as its scatter', () => {
  const edge = makeEdge(3, [{ side: 'left', alongMm: 300.5, reachMm: 0.9, depthMm: 1.4 }], 0, 0.03);
  const axis = mirrorAxis(edge, nearStart());
  if (!axis.ok) throw new Error('no axis');
  const folded = foldHalves(edge, axis.value).map((place) =>
    [302, 320].some((at) => Math.abs(place.alongMm - at) < 0.6)
      ? { ...place, right: { ...place.right, edgeMm: null } }
      : place,
  );
  const { places } = mergeHalves(folded);
  const alone = (at: number) =>
    places
      .filter(({ alongMm }) => Math.abs(alongMm - at) < 0.6)
      .map(({ symmetric }) => symmetric)
      .filter(({ from }) => from === 'left')
      .map(({ sigmaMm }) => sigmaMm);
  expect(alone(302).length).toBeGreaterThan(0);
  expect(Math.min(...alone(302))).toBeGreaterThan(0.25);
  expect(Math.max(...alone(320))).toBeLessThan(0.05);
});

test('a body that only leans has no wear', () => {
  expect(wearIn(makeEdge(3, [], 0.2, 0.03))).toEqual([]);
});

/** Wear told of a body without lean or noise. */
function wearOf(losses: readonly Loss[]) {
  return wearIn(makeEdge(3, losses, 0, 0));
}

function wearIn(edge: FoundEdge<'scene'>) {
  const axis = mirrorAxis(edge, nearStart());
  if (!axis.ok) throw new Error('no axis');
  const { places } = mergeHalves(foldHalves(edge, axis.value));
  return wearStretches(wearMap(places, {}, 0, 'top'));
}

test('two losses of one side less than 6 mm apart are told as one with the deeper place, farther apart as two', () => {
  const pair = (apartMm: number): readonly Loss[] => [
    { side: 'right', alongMm: 300 - apartMm / 2 - 12, reachMm: 12, depthMm: 0.8 },
    { side: 'right', alongMm: 300 + apartMm / 2 + 12, reachMm: 12, depthMm: 1.4 },
  ];
  const [one, ...none] = wearOf(pair(1));
  expect(none).toEqual([]);
  expect(Math.abs(one.depthMm - 1.4)).toBeLessThan(0.05);
  expect(one.extentMm).toBeGreaterThan(38);
  expect(one.extentMm).toBeLessThan(50);
  const two = wearOf(pair(8)).map((stretch) => stretch.depthMm);
  expect(two).toHaveLength(2);
  expect(Math.abs(two[0] - 0.8)).toBeLessThan(0.05);
  expect(Math.abs(two[1] - 1.4)).toBeLessThan(0.05);
});

test('losses that lie close but on both sides stay apart', () => {
  const wear = wearOf([
    { side: 'left', alongMm: 288, reachMm: 12, depthMm: 0.8 },
    { side: 'right', alongMm: 312, reachMm: 12, depthMm: 0.8 },
  ]);
  expect(wear.map((stretch) => stretch.side)).toEqual(['bass', 'treble']);
  expect(Math.max(...wear.map((stretch) => stretch.extentMm))).toBeLessThan(25);
});

test('a loss is told as wear from 0.2 mm', () => {
  const one = (depthMm: number) => wearOf([{ side: 'left', alongMm: 300, reachMm: 20, depthMm }]).length;
  expect([0.15, 0.19, 0.22].map(one)).toEqual([0, 0, 1]);
});

test('too little of an edge is refused in words', () => {
  const edge = makeEdge(3, [], 0, 0.03);
  const few = { right: edge.right.slice(0, 30), left: edge.left.slice(0, 30) };
  const found = mirrorAxis(few, nearStart());
  expect(found.ok ? '' : found.faults[0].code).toBe('axis.too-little');
});
