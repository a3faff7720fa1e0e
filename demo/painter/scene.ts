import type { Field } from './field.ts';
import { fromBytes, mixTone, noise, scaleTone, smoothStep, type Tone } from './tone.ts';

/** Which side of the fiddle looks up. */
export type Face = 'top' | 'back';

export interface Body {
  readonly found: Field;
  readonly unworn: Field;
  /** The two sound holes as found; only a top has them. */
  readonly holes: readonly Field[];
  readonly lengthMm: number;
}

/** Where the fiddle lies on the table, and what lies under it. */
export interface Scene {
  readonly face: Face;
  readonly body: Body;
  readonly edgeHeightMm: number;
  /** Place of the lower end of the body's centre line, and the turn of that line from the world's y. */
  readonly at: readonly [number, number];
  readonly turnRad: number;
  /** Reflectance of the ground at a world point. */
  readonly ground: (x: number, y: number) => Tone;
}

const PLATE_MM = 4;
const OVERHANG_MM = 2.6;
/** Direction toward the window, world. */
const WINDOW = { x: -0.52, y: 0.3, z: 0.8 };
const AMBIENT = 0.42;

const EBONY = fromBytes(46, 40, 38);
const SPRUCE = fromBytes(206, 142, 74);
const MAPLE = fromBytes(184, 112, 52);
const RIB = fromBytes(150, 88, 42);

/** World to body coordinates; a back is seen mirrored. */
function toBody(scene: Scene, x: number, y: number): readonly [number, number] {
  const dx = x - scene.at[0];
  const dy = y - scene.at[1];
  const c = Math.cos(scene.turnRad);
  const s = Math.sin(scene.turnRad);
  const across = c * dx + s * dy;
  return [scene.face === 'back' ? -across : across, -s * dx + c * dy];
}

/** Light from what a ray meets, given the ray's points on level planes. Boards, plate, ribs, far plate, ground. */
export function lightAlong(scene: Scene, onPlane: (z: number) => readonly [number, number]): Tone {
  const neck = neckTone(scene, onPlane);
  if (neck) return neck;
  const near = onPlane(scene.edgeHeightMm);
  const [bx, by] = toBody(scene, near[0], near[1]);
  const edge = scene.body.found.distanceAt(bx, by);
  if (edge <= 0) return plateTone(scene, bx, by, holeSeen(scene, onPlane, bx, by));
  const wall = ribTone(scene, onPlane);
  if (wall) return wall;
  const far = onPlane(PLATE_MM / 2);
  const [fx, fy] = toBody(scene, far[0], far[1]);
  if (scene.body.unworn.distanceAt(fx, fy) <= 0) return scaleTone(RIB, 0.35);
  const [gx, gy] = onPlane(0);
  return scaleTone(scene.ground(gx, gy), AMBIENT + (1 - AMBIENT) * windowSeen(scene, gx, gy));
}

/** mm. Beyond this from a hole its height on the arch makes no difference to what is seen. */
const NEAR_HOLE_MM = 3;

/** Distance of what a ray sees from the nearest sound hole, which lies as high as the arch is there; negative in it. */
function holeSeen(
  scene: Scene,
  onPlane: (z: number) => readonly [number, number],
  x: number,
  y: number,
): number {
  const fromHole = (u: number, v: number): number =>
    Math.min(...scene.body.holes.map((hole) => hole.distanceAt(u, v)));
  if (scene.face === 'back' || fromHole(x, y) > NEAR_HOLE_MM) return NEAR_HOLE_MM;
  let [u, v] = [x, y];
  for (let round = 0; round < 3; round++) {
    const [wx, wy] = onPlane(scene.edgeHeightMm + archRise(-scene.body.found.distanceAt(u, v)));
    [u, v] = toBody(scene, wx, wy);
  }
  return fromHole(u, v);
}

/** The near plate: its arch catches the light, its purfling runs along the edge that once was. */
function plateTone(scene: Scene, x: number, y: number, fromHole: number): Tone {
  const { found, unworn } = scene.body;
  const inside = -found.distanceAt(x, y);
  const step = 0.4;
  const gx = -(found.distanceAt(x + step, y) - found.distanceAt(x - step, y)) / (2 * step);
  const gy = -(found.distanceAt(x, y + step) - found.distanceAt(x, y - step)) / (2 * step);
  const slope = archSlope(inside);
  const flip = scene.face === 'back' ? -1 : 1;
  const c = Math.cos(scene.turnRad);
  const s = Math.sin(scene.turnRad);
  const nx = -slope * (c * gx * flip - s * gy);
  const ny = -slope * (s * gx * flip + c * gy);
  const facing =
    (nx * WINDOW.x + ny * WINDOW.y + WINDOW.z) /
    (Math.hypot(nx, ny, 1) * Math.hypot(WINDOW.x, WINDOW.y, WINDOW.z));
  const light = AMBIENT + (1 - AMBIENT) * Math.max(0, facing) * 1.15;
  let tone = scene.face === 'top' ? spruceTone(x, y) : mapleTone(x, y);
  const purfling = -unworn.distanceAt(x, y);
  const black = Math.max(band(purfling, 3.7, 4.1), band(purfling, 4.7, 5.1));
  tone = mixTone(tone, fromBytes(40, 26, 18), black * 0.9);
  // The rim of a hole is rubbed a little lighter, as hands and dust leave it; its inside is dark.
  tone = mixTone(tone, fromBytes(168, 118, 66), 0.3 * smoothStep(0.5, 0.1, fromHole));
  tone = mixTone(tone, fromBytes(20, 14, 10), smoothStep(0.1, -0.1, fromHole));
  const rubbed = smoothStep(0.6, 0, Math.abs(inside - 0.4));
  tone = mixTone(tone, fromBytes(224, 180, 120), 0.35 * rubbed);
  const shine = Math.max(0, facing) ** 40 * 0.12;
  return [tone[0] * light + shine, tone[1] * light + shine, tone[2] * light + shine];
}

/** Slope of the plate against the distance from the edge: round edge, scoop, channel, arch. */
function archSlope(inside: number): number {
  if (inside < 1.4) return 1.6 * (1 - inside / 1.4);
  if (inside < 6.5) return -0.3 * Math.sin((Math.PI * (inside - 1.4)) / 5.1);
  return 0.34 * Math.sin(Math.min(1, (inside - 6.5) / 48) * Math.PI);
}

/** Height of the arch over its edge, mm: its slope summed from the edge inward. */
function archRise(inside: number): number {
  if (inside <= 0) return 0;
  const round = Math.min(inside, 1.4);
  const scoop = Math.min(Math.max(inside - 1.4, 0), 5.1);
  const arch = Math.min(Math.max(inside - 6.5, 0), 48);
  return (
    1.6 * (round - round ** 2 / 2.8) -
    ((0.3 * 5.1) / Math.PI) * (1 - Math.cos((Math.PI * scoop) / 5.1)) +
    ((0.34 * 48) / Math.PI) * (1 - Math.cos((Math.PI * arch) / 48))
  );
}

function band(at: number, from: number, to: number): number {
  return smoothStep(from - 0.12, from + 0.12, at) * (1 - smoothStep(to - 0.12, to + 0.12, at));
}

function spruceTone(x: number, y: number): Tone {
  const wander = 1.2 * noise(x / 30, y / 160, 3);
  const year = 0.5 + 0.5 * Math.sin((2 * Math.PI * (x + wander)) / (1.15 + 0.004 * Math.abs(x)));
  const dirt = noise(x / 45, y / 60, 5);
  return scaleTone(SPRUCE, 0.86 + 0.16 * year ** 3 * -1 + 0.09 * dirt + 0.05 * noise(x * 1.4, y / 9, 7));
}

function mapleTone(x: number, y: number): Tone {
  const flame = noise((y + 0.32 * Math.abs(x)) / 4.6, x / 38, 11);
  const dirt = noise(x / 40, y / 55, 13);
  return scaleTone(MAPLE, 0.9 + 0.2 * flame + 0.08 * dirt + 0.05 * noise(x * 2, y / 5, 17));
}

/** The side wall, met between the two plates. */
function ribTone(scene: Scene, onPlane: (z: number) => readonly [number, number]): Tone | undefined {
  for (let z = scene.edgeHeightMm - PLATE_MM / 2; z > PLATE_MM; z -= 2.4) {
    const [wx, wy] = onPlane(z);
    const [x, y] = toBody(scene, wx, wy);
    const d = scene.body.unworn.distanceAt(x, y);
    if (d < -OVERHANG_MM)
      return scaleTone(RIB, 0.34 + 0.4 * (z / scene.edgeHeightMm) * windowSeen(scene, wx, wy));
    if (d > 30) return undefined;
  }
  return undefined;
}

/** Fingerboard and neck on the top; button and heel on the back. */
function neckTone(scene: Scene, onPlane: (z: number) => readonly [number, number]): Tone | undefined {
  const length = scene.body.lengthMm;
  if (scene.face === 'top') {
    const [wx, wy] = onPlane(scene.edgeHeightMm + 15);
    const [x, y] = toBody(scene, wx, wy);
    const along = y - (length - 138);
    const half = 21.2 - (9.2 * along) / 268;
    if (along < 0 || along > 268 || Math.abs(x) > half) return undefined;
    const round = 1 - (x / half) ** 2 * 0.35 + 0.2 * smoothStep(4, 0, Math.abs(x + 9));
    return scaleTone(EBONY, (0.6 + 0.25 * noise(x / 3, y / 40, 23)) * round);
  }
  const [wx, wy] = onPlane(scene.edgeHeightMm);
  const [x, y] = toBody(scene, wx, wy);
  const button = y > length - 2 ? Math.hypot(x, Math.max(0, y - length - 4)) - 9.5 : 9;
  if (button < 0) return scaleTone(mapleTone(x, y), 0.82);
  const [hx, hy] = onPlane(scene.edgeHeightMm - 16);
  const [nx, ny] = toBody(scene, hx, hy);
  if (ny > length + 8 && Math.abs(nx) < 12.5)
    return scaleTone(mapleTone(nx, ny / 3), 0.55 + 0.2 * (1 - (nx / 12.5) ** 2));
  return undefined;
}

/** How much of the window a ground point sees past the body, 0 to 1, with a soft edge. */
function windowSeen(scene: Scene, x: number, y: number): number {
  let seen = 1;
  for (let z = 6; z <= scene.edgeHeightMm + 0.1; z += (scene.edgeHeightMm - 6) / 12) {
    const [bx, by] = toBody(scene, x + (WINDOW.x / WINDOW.z) * z, y + (WINDOW.y / WINDOW.z) * z);
    const soft = 1 + z * 0.22;
    seen = Math.min(seen, smoothStep(-soft, soft, scene.body.unworn.distanceAt(bx, by)));
  }
  return seen;
}
