import { bodyRay, HIT, KIND } from './bodyRay.ts';
import { bodyTone } from './bodyTone.ts';
import type { Ground } from './ground.ts';
import { groundShade, type Light, plateShade, type Standing, turned } from './light.ts';
import { type Pinhole, sights } from './pinhole.ts';
import { type Slab, slabHit } from './slab.ts';

/** All that a photograph shows. */
export interface Scene {
  readonly standing: readonly Standing[];
  /** Things on the ground, in the room's frame. */
  readonly lying: readonly Slab[];
  readonly ground: Ground;
  /** How far the ground's paper stands up at a place, mm: a sheet that curls. Flat where left out. */
  readonly lift?: (x: number, y: number) => number;
  readonly light: Light;
}

/** Writes the light that comes along a viewing direction (dx, dy, dz) from the eye: linear red, green, blue. */
type Look = (dx: number, dy: number, dz: number, out: Float64Array) => void;

/** Light as it falls on the sensor: linear, three numbers a pixel, row by row. Edges are drawn with eight rays a pixel. */
export function render(scene: Scene, camera: Pinhole): Float32Array {
  const { widthPx, heightPx } = camera;
  const sight = sights(camera);
  const look = lookInto(scene, camera);
  const way = new Float64Array(3);
  const out = new Float64Array(3);
  const picture = new Float32Array(3 * widthPx * heightPx);
  for (let y = 0, k = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++, k += 3) {
      sight(x, y, way);
      look(way[0] as number, way[1] as number, way[2] as number, out);
      picture[k] = out[0] as number;
      picture[k + 1] = out[1] as number;
      picture[k + 2] = out[2] as number;
    }
  const rough = roughPlaces(picture, widthPx, heightPx);
  for (let y = 0, p = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++, p++) if (rough[p] === 1) finer(x, y, p);
  return picture;

  function finer(x: number, y: number, pixel: number): void {
    let [red, green, blue] = [0, 0, 0];
    for (let i = 0; i < 8; i++) {
      sight(x + (i - 3.5) / 8, y + ((ROOKS[i] as number) - 3.5) / 8, way);
      look(way[0] as number, way[1] as number, way[2] as number, out);
      red += out[0] as number;
      green += out[1] as number;
      blue += out[2] as number;
    }
    picture[3 * pixel] = red / 8;
    picture[3 * pixel + 1] = green / 8;
    picture[3 * pixel + 2] = blue / 8;
  }
}

/** Row of each of eight rays, so that no two share a row or a column of eighths of a pixel. */
const ROOKS = [3, 6, 1, 4, 7, 2, 5, 0] as const;

/** Where neighbours differ by more than this share of their own light (and a little) is an edge. */
const STEP_SHARE = 0.1;
const STEP_LEAST = 0.012;

function roughPlaces(picture: Float32Array, width: number, height: number): Uint8Array {
  const rough = new Uint8Array(width * height);
  const differ = (a: number, b: number) => {
    for (let c = 0; c < 2; c++) {
      const [one, other] = [picture[3 * a + c] as number, picture[3 * b + c] as number];
      const step = one < other ? other - one : one - other;
      if (step > STEP_LEAST + STEP_SHARE * (one + other) * 0.5) return true;
    }
    return false;
  };
  for (let y = 0, p = 0; y < height; y++)
    for (let x = 0; x < width; x++, p++) {
      if (x + 1 < width && differ(p, p + 1)) {
        rough[p] = 1;
        rough[p + 1] = 1;
      }
      if (y + 1 < height && differ(p, p + width)) {
        rough[p] = 1;
        rough[p + width] = 1;
      }
    }
  return rough;
}

function lookInto({ standing, lying, ground, lift, light }: Scene, camera: Pinhole): Look {
  const [ex, ey, ez] = camera.eye;
  const shade = groundShade(standing, light.lamps);
  const bodies = standing.map((one) => bodyLook(one, light, camera));
  return (dx, dy, dz, out) => {
    if (dz > -0.02) {
      out.fill(0.15);
      return;
    }
    const mx = -dx / dz;
    const my = -dy / dz;
    let x = ex + ez * mx;
    let y = ey + ez * my;
    if (lift) {
      const high = lift(x, y);
      x -= high * mx;
      y -= high * my;
    }
    let isMet = false;
    for (const body of bodies)
      if (body(mx, my, out)) {
        isMet = true;
        break;
      }
    if (!isMet) isMet = onLying(mx, my, out);
    if (!isMet) {
      ground(x, y, out);
      const open = shade.open(x, y);
      let [red, green, blue] = [light.ambient[0] * open, light.ambient[1] * open, light.ambient[2] * open];
      for (let i = 0; i < light.lamps.length; i++) {
        const lamp = light.lamps[i] as Light['lamps'][number];
        const seen = (shade.ground[i] as (a: number, b: number) => number)(x, y);
        red += lamp.tone[0] * seen;
        green += lamp.tone[1] * seen;
        blue += lamp.tone[2] * seen;
      }
      out[0] = (out[0] as number) * red;
      out[1] = (out[1] as number) * green;
      out[2] = (out[2] as number) * blue;
    }
    const much = Math.max(0.3, 1 + (light.slope[0] * (x - 200) + light.slope[1] * (y - 150)) / 1000);
    out[0] = (out[0] as number) * much;
    out[1] = (out[1] as number) * much;
    out[2] = (out[2] as number) * much;
  };

  function onLying(mx: number, my: number, out: Float64Array): boolean {
    for (const slab of lying) {
      const z = slabHit(slab, ex, ey, ez, mx, my);
      if (z < 0) continue;
      slabTone(slab, z, light, out);
      return true;
    }
    return false;
  }
}

function slabTone(slab: Slab, z: number, light: Light, out: Float64Array): void {
  const share = z === slab.topMm ? 1 : 0.5;
  let [red, green, blue] = [light.ambient[0], light.ambient[1], light.ambient[2]];
  for (const lamp of light.lamps) {
    red += lamp.tone[0];
    green += lamp.tone[1];
    blue += lamp.tone[2];
  }
  const shine = slab.gloss * 0.06 * share;
  out[0] = (slab.tone[0] * share + shine) * red;
  out[1] = (slab.tone[1] * share + shine) * green;
  out[2] = (slab.tone[2] * share + shine) * blue;
}

/** One instrument with its fittings, seen from the camera; false where the ray passes it. */
function bodyLook(
  one: Standing,
  light: Light,
  camera: Pinhole,
): (mx: number, my: number, out: Float64Array) => boolean {
  const { body, slabs } = one;
  const { place } = body;
  const c = Math.cos(place.turnRad);
  const s = Math.sin(place.turnRad);
  const [ex, ey] = turned(camera.eye[0] - place.x, camera.eye[1] - place.y, -place.turnRad);
  const ez = camera.eye[2];
  const ray = bodyRay(body);
  const tone = bodyTone(body);
  const hit = new Float64Array(7);
  const seen = plateShade(one, light.lamps);
  const lamps = light.lamps.map((lamp) => {
    const [a, b] = turned(lamp.slant[0], lamp.slant[1], -place.turnRad);
    const long = Math.hypot(a, b, 1);
    return { x: -a / long, y: -b / long, z: 1 / long, tone: lamp.tone, soft: lamp.soft };
  });
  return (rx, ry, out) => {
    const mx = c * rx + s * ry;
    const my = c * ry - s * rx;
    const isBody = ray(ex, ey, ez, mx, my, hit);
    const bodyZ = isBody ? (hit[HIT.z] as number) : Number.NEGATIVE_INFINITY;
    for (const slab of slabs) {
      if (slab.topMm < bodyZ) break;
      const z = slabHit(slab, ex, ey, ez, mx, my);
      if (z <= bodyZ) continue;
      slabTone(slab, z, light, out);
      return true;
    }
    if (!isBody) return false;
    lit(mx, my, tone(hit, out) ? body.varnish.gloss : 0, out);
    return true;
  };

  function lit(mx: number, my: number, gloss: number, out: Float64Array): void {
    const nx = hit[HIT.nx] as number;
    const ny = hit[HIT.ny] as number;
    const nz = hit[HIT.nz] as number;
    const kind = hit[HIT.kind];
    const x = hit[HIT.x] as number;
    const y = hit[HIT.y] as number;
    const isLow = kind === KIND.rib || kind === KIND.farPlate;
    const around = isLow ? 0.35 : 0.6 + 0.4 * nz;
    let [red, green, blue] = [
      light.ambient[0] * around,
      light.ambient[1] * around,
      light.ambient[2] * around,
    ];
    let shine = 0;
    const back = 1 / Math.sqrt(mx * mx + my * my + 1);
    for (let i = 0; i < lamps.length; i++) {
      const lamp = lamps[i] as (typeof lamps)[number];
      const face = nx * lamp.x + ny * lamp.y + nz * lamp.z;
      if (face <= 0) continue;
      const open = isLow ? 0.6 : (seen[i] as (a: number, b: number) => number)(x, y);
      const much = (face / lamp.z) * open;
      red += lamp.tone[0] * much;
      green += lamp.tone[1] * much;
      blue += lamp.tone[2] * much;
      const hx = lamp.x - mx * back;
      const hy = lamp.y - my * back;
      const hz = lamp.z + back;
      const half = (nx * hx + ny * hy + nz * hz) / Math.sqrt(hx * hx + hy * hy + hz * hz);
      const narrow = 6 / (0.02 + lamp.soft * lamp.soft);
      if (half > 0.6) shine += lamp.tone[1] * open * gloss * Math.exp(-(1 - half) * 2 * narrow) * 1.5;
    }
    out[0] = (out[0] as number) * red + shine;
    out[1] = (out[1] as number) * green + shine;
    out[2] = (out[2] as number) * blue + shine;
  }
}
