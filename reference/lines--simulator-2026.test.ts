/**
 * Purfling, sound holes and centre joint against photographs of the project's own simulator (reference/simulator, 2026),
 * which knows where in the picture each of them lies on the arched plate.
 *
 * Claimed: purfling, edges of sound holes and joint within 0.1 mm rms. The edge and the body's place are given as true: only the lines are under test.
 */
import { expect, test } from 'vitest';
import { type BodyTrace, traceCentreJoint, tracePurfling, traceSoundHoles } from '../src/core/photo/index.ts';
import type { Spot } from './simulator/bentLine.ts';
import { type Chance, chanceFrom } from './simulator/chance.ts';
import { BARE, fittings } from './simulator/dress.ts';
import { drawGround } from './simulator/ground.ts';
import { drawInstrument, type Instrument } from './simulator/instrument.ts';
import { drawLight, intoRoom } from './simulator/light.ts';
import { type BodyTruth, photograph } from './simulator/photograph.ts';
import { type Pinhole, pinhole } from './simulator/pinhole.ts';

type EdgePoint = BodyTrace['edge'][number];

interface Seen {
  readonly body: Instrument;
  readonly camera: Pinhole;
  readonly truth: BodyTruth;
  readonly picture: Parameters<typeof tracePurfling>[0];
  readonly trace: Pick<BodyTrace, 'edge' | 'pose'>;
}

async function see(
  seed: number,
  face: 'top' | 'back',
  tiltDegrees: number,
  sizePx: readonly [number, number],
): Promise<Seen> {
  const chance = chanceFrom(seed);
  const drawn = drawInstrument({ face }, chance);
  const body: Instrument = { ...drawn, place: { x: 0, y: -drawn.meant.lengthMm / 2, turnRad: 0 } };
  const light = drawLight(chance);
  const ground = drawGround('white', body.varnish, chance);
  const camera = cameraOver(tiltDegrees, sizePx, chance);
  const scene = { standing: [{ body, slabs: fittings(body, BARE, chance) }], lying: [], ground, light };
  const most = light.lamps.reduce((sum, { tone }) => sum + tone[1], light.ambient[1]);
  const how = { blurPx: 0.6, vignette: 0.1, noise: 1.5, white: 1.1 * most, jpeg: 93 };
  const { picture, truth } = await photograph(scene, camera, how, chance);
  const [first] = truth;
  if (first === undefined) throw new Error('nothing stands in the scene');
  return { body, camera, truth: first, picture, trace: traceOf(first) };
}

/** Over the middle of the body, its length along the picture's height. */
function cameraOver(
  tiltDegrees: number,
  [widthPx, heightPx]: readonly [number, number],
  chance: Chance,
): Pinhole {
  const far = chance.between(1100, 1600);
  const tilt = (tiltDegrees * Math.PI) / 180;
  const toward = chance.between(0, 2 * Math.PI);
  const eye = [
    far * Math.sin(tilt) * Math.cos(toward),
    far * Math.sin(tilt) * Math.sin(toward),
    far * Math.cos(tilt),
  ] as const;
  const habit = {
    widthPx,
    heightPx,
    focalPx: (0.9 * heightPx * far) / 390,
    centrePx: [widthPx / 2, heightPx / 2] as const,
    radial: [-0.05, 0.01] as const,
    tangential: [0, 0] as const,
    eye,
    target: [0, 0, 30] as const,
    rollRad: 0,
  };
  const level = pinhole(habit);
  const [ax, ay] = level.project([0, -100, 30]);
  const [bx, by] = level.project([0, 100, 30]);
  return pinhole({ ...habit, rollRad: Math.atan2(bx - ax, ay - by) });
}

/** The true worn edge, a place a millimetre, as a trace would tell it. */
function traceOf({ body, worn, wornPx, axisPx, pxPerMm }: BodyTruth): Seen['trace'] {
  const halfway = worn.findIndex(({ x }, i) => i > 5 && x < 0);
  const right = halfOf(body, worn.slice(0, halfway), wornPx.slice(0, halfway), 1);
  const left = halfOf(body, worn.slice(halfway).reverse(), wornPx.slice(halfway).reverse(), -1);
  return {
    edge: [...right, ...left],
    pose: {
      lowerEnd: axisPx[0],
      upperEnd: axisPx[1],
      axisAngleRad: 0,
      pxPerMm,
      skew: 0,
      keystonePerMm: 0,
    },
  };
}

function halfOf(body: Instrument, mm: readonly Spot[], px: readonly Spot[], way: 1 | -1): EdgePoint[] {
  const [lower, lowTop, highLow, upper] = body.meant.tips;
  const sectionAt = (y: number): EdgePoint['section'] => {
    if (y < lower.y - 1) return 'lowerBout';
    if (y < lowTop.y + 1) return 'lowerCorner';
    if (y < highLow.y - 1) return 'cBout';
    return y < upper.y + 1 ? 'upperCorner' : 'upperBout';
  };
  const places: EdgePoint[] = [];
  let along = 0;
  let last = 0;
  for (let i = 1; i + 1 < px.length; i++) {
    const [a, b, here] = [px[i - 1] as Spot, px[i + 1] as Spot, mm[i] as Spot];
    const before = mm[i - 1] as Spot;
    along += Math.hypot(here.x - before.x, here.y - before.y);
    if (along - last < 1) continue;
    last = along;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    places.push({
      point: { x: (px[i] as Spot).x, y: (px[i] as Spot).y },
      normal: { x: (-way * (b.y - a.y)) / length, y: (way * (b.x - a.x)) / length },
      side: (way === 1) === (body.face === 'top') ? 'treble' : 'bass',
      section: sectionAt(here.y),
      along,
      state: 'seen',
      sigmaPx: 0.3,
    });
  }
  return places;
}

/** Where a place of the plate's surface is seen. */
function seenAt({ body, camera }: Seen, x: number, y: number): Spot {
  const [u, v] = intoRoom(body, x, y);
  const [px, py] = camera.project([u, v, body.edgeHeightMm + body.halfThickMm + body.arch.at(x, y)]);
  return { x: px, y: py };
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);
}

function nearest(at: Spot, line: readonly Spot[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < line.length; i++) {
    const [a, b] = [line[i] as Spot, line[i + 1] as Spot];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const square = dx * dx + dy * dy || 1;
    const share = Math.max(0, Math.min(1, ((at.x - a.x) * dx + (at.y - a.y) * dy) / square));
    least = Math.min(least, Math.hypot(at.x - a.x - share * dx, at.y - a.y - share * dy));
  }
  return least;
}

/** The middle of the purfling, 4.3 mm inside the outline as meant, in the picture. */
function purflingPx(seen: Seen): Spot[] {
  return [1, -1].flatMap((way) => {
    const half = seen.body.meant.half;
    const inside = half.flatMap((at, i) => {
      const [a, b] = [half[Math.max(0, i - 1)] as Spot, half[Math.min(half.length - 1, i + 1)] as Spot];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const [x, y] = [at.x - (4.3 * (b.y - a.y)) / length, at.y + (4.3 * (b.x - a.x)) / length];
      return seen.body.meantGrid.at(x, y) < -4.25 ? [seenAt(seen, way * x, y)] : [];
    });
    return way === 1 ? inside : inside.reverse();
  });
}

/** Points of the rim of the hole at x > 0 or its mirror image, in the picture. */
function rimPx(seen: Seen, way: 1 | -1): Spot[] {
  const { discs } = seen.body.soundHole as NonNullable<Instrument['soundHole']>;
  return discs.flatMap((disc) =>
    Array.from({ length: 240 }, (_, i): Spot => {
      const turn = (2 * Math.PI * i) / 240;
      return { x: disc.x + disc.radiusMm * Math.cos(turn), y: disc.y + disc.radiusMm * Math.sin(turn) };
    })
      .filter((at) => discs.every(({ x, y, radiusMm }) => Math.hypot(at.x - x, at.y - y) > radiusMm - 0.002))
      .map(({ x, y }) => seenAt(seen, way * x, y)),
  );
}

/** mm from each place to the nearest of the true points. */
function fromPoints(places: readonly Spot[], truth: readonly Spot[], pxPerMm: number): number[] {
  return places.map((at) => {
    let least = Number.POSITIVE_INFINITY;
    for (const { x, y } of truth) least = Math.min(least, (x - at.x) ** 2 + (y - at.y) ** 2);
    return Math.sqrt(least) / pxPerMm;
  });
}

function expectPurfling(seen: Seen): void {
  const k = seen.truth.pxPerMm;
  const purfling = tracePurfling(seen.picture, seen.trace.edge, k);
  expect(purfling.share).toBeGreaterThan(0.9);
  const line = purflingPx(seen);
  expect(rms(purfling.places.map(({ point }) => nearest(point, line) / k))).toBeLessThan(0.1);
  // The dark lines' middles lie 3.8 and 4.8 mm inside the outline.
  const width = purfling.widthPx;
  if (width) expect(Math.abs(width.value - k)).toBeLessThan(2 * width.sigmaPx);
}

/** The joint lies on the arch, whose image bows when the camera is tilted: its middle stretch is compared. */
function expectJoint(seen: Seen): void {
  const k = seen.truth.pxPerMm;
  const { joint } = traceCentreJoint(seen.picture, seen.trace.pose);
  expect(joint).not.toBeNull();
  if (joint === null) return;
  const places = Array.from({ length: 40 }, (_, i) =>
    seenAt(seen, 0, (0.15 + (0.7 * i) / 39) * seen.body.meant.lengthMm),
  );
  const off = places.map((at) => nearest(at, [joint.lower, joint.upper]) / k);
  expect(rms(off)).toBeLessThan(0.1);
  const interval = Math.max(joint.plusMinusPx.lower, joint.plusMinusPx.upper) / k;
  expect(Math.max(...off)).toBeLessThan(interval);
}

test('on a simulated top at 0.14 mm a pixel, purfling, both sound holes and the joint lie within 0.1 mm rms of the truth', async () => {
  const seen = await see(1, 'top', 2, [2000, 3000]);
  expectPurfling(seen);
  const holes = traceSoundHoles(seen.picture, seen.trace);
  for (const hole of [holes.bass, holes.treble]) {
    expect(hole).not.toBeNull();
    if (hole === null) continue;
    const rim = rimPx(seen, hole.side === 'treble' ? 1 : -1);
    expect(rms(fromPoints(hole.contour, rim, seen.truth.pxPerMm))).toBeLessThan(0.1);
    expect(rms(fromPoints(rim, hole.contour, seen.truth.pxPerMm))).toBeLessThan(0.1);
  }
  expectJoint(seen);
});

test('on a simulated back at 0.24 mm a pixel, purfling and joint lie within 0.1 mm rms of the truth', async () => {
  const seen = await see(2, 'back', 3, [1200, 1800]);
  expectPurfling(seen);
  expectJoint(seen);
});
