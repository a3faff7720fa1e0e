import type { Chance } from './chance.ts';
import type { Instrument } from './instrument.ts';
import { readGrid } from './planeGrid.ts';
import { type Slab, slabHit } from './slab.ts';

/** A lamp so far away that its light falls in one direction, with some width that softens its shadows. */
export interface Lamp {
  /** Horizontal way that its light moves for every millimetre of height, away from the lamp. */
  readonly slant: readonly [number, number];
  /** Half width of the lamp, in the same measure. */
  readonly soft: number;
  readonly tone: readonly [number, number, number];
}

export interface Light {
  readonly lamps: readonly Lamp[];
  readonly ambient: readonly [number, number, number];
  /** How much brighter it gets a metre further along x and y. */
  readonly slope: readonly [number, number];
}

/** One or two lamps and what the walls throw back. */
export function drawLight(chance: Chance): Light {
  const first = chance.between(0.35, 0.75);
  const lamps: Lamp[] = [drawLamp(chance, first)];
  if (chance.isHappening(0.5)) lamps.push(drawLamp(chance, chance.between(0.1, 0.4)));
  const ambient = chance.between(0.3, 0.6);
  return {
    lamps,
    ambient: [ambient, ambient * chance.between(0.94, 1.02), ambient * chance.between(0.88, 1.06)],
    slope: [chance.between(-0.4, 0.4), chance.between(-0.4, 0.4)],
  };
}

function drawLamp(chance: Chance, much: number): Lamp {
  const turn = chance.between(0, 2 * Math.PI);
  const slant = chance.between(0.2, 1.1);
  const warm = chance.between(0.85, 1.05);
  return {
    slant: [slant * Math.cos(turn), slant * Math.sin(turn)],
    soft: chance.between(0.06, 0.5),
    tone: [much * (2 - warm), much, much * warm],
  };
}

/** How much of a lamp is seen from places at one height, between 0 and 1. */
export type Seen = (x: number, y: number) => number;

export interface Shaded {
  /** In the room's frame, at the ground. */
  readonly ground: readonly Seen[];
  /** What the things nearby leave of the light from all sides, at the ground. */
  readonly open: Seen;
}

export interface Standing {
  readonly body: Instrument;
  readonly slabs: readonly Slab[];
}

const CELL_MM = 2;
const REACH_MM = 70;
const RAYS = 9;
/** mm under the plate where no camera looks. */
const HIDDEN_MM = 15;

/** Shadows on the ground of all bodies and what is on them. */
export function groundShade(all: readonly Standing[], lamps: readonly Lamp[]): Shaded {
  const box = boundsOf(all);
  const corner = { x: box.x0, y: box.y0 };
  const columns = Math.ceil((box.x1 - box.x0) / CELL_MM) + 1;
  const rows = Math.ceil((box.y1 - box.y0) / CELL_MM) + 1;
  const ground = lamps.map((lamp) => {
    const rays = raysOf(lamp);
    const stops = all.map((one) => stopper(one, lamp));
    return keep(corner, columns, rows, (x, y, i) => {
      if (all.some(({ body }) => body.nearGrid.at(...intoBody(body, x, y)) < -HIDDEN_MM)) return 0;
      const near = stops.filter((one) => one.reaches(x, y));
      if (near.length === 0) return 1;
      let seen = 0;
      for (let k = 0; k < rays.length; k += 3) {
        const ray = rays[(k + (i % 3)) % rays.length] as readonly [number, number];
        if (!near.some((one) => one.stops(x, y, ray[0], ray[1]))) seen++;
      }
      return seen / (rays.length / 3);
    });
  });
  const open = keep(corner, columns, rows, (x, y) => {
    let much = 1;
    for (const { body } of all) {
      const [u, v] = intoBody(body, x, y);
      const near = Math.max(0, body.nearGrid.at(u, v));
      much *= 1 - 0.55 * Math.exp(-near / 14);
    }
    return much;
  });
  return { ground, open };
}

/** What the fittings shade on the plate, for each lamp, in the instrument's frame. */
export function plateShade({ body, slabs }: Standing, lamps: readonly Lamp[]): readonly Seen[] {
  const height = body.edgeHeightMm + body.halfThickMm + 4;
  const above = slabs.filter(({ topMm }) => topMm > height + 2);
  if (above.length === 0) return lamps.map(() => () => 1);
  const corner = { x: -body.meant.widths.lowerMm / 2 - 4, y: -4 };
  const columns = Math.ceil((-2 * corner.x) / CELL_MM) + 1;
  const rows = Math.ceil((body.meant.lengthMm + 8) / CELL_MM) + 1;
  const { turnRad } = body.place;
  return lamps.map((lamp) => {
    const rays = raysOf(lamp).map(([a, b]) => turned(a, b, -turnRad));
    return keep(corner, columns, rows, (x, y, i) => {
      let seen = 0;
      for (let k = 0; k < rays.length; k += 3) {
        const [mx, my] = rays[(k + (i % 3)) % rays.length] as readonly [number, number];
        const far = 80;
        // Upwards to the lamp: the same as a ray that falls from there onto this place.
        if (!above.some((slab) => slabHit(slab, x - far * mx, y - far * my, height + far, mx, my) > height))
          seen++;
      }
      return seen / (rays.length / 3);
    });
  });
}

function raysOf({ slant, soft }: Lamp): (readonly [number, number])[] {
  return Array.from({ length: 3 * RAYS }, (_, i) => {
    const far = soft * Math.sqrt((i + 0.5) / (3 * RAYS));
    const turn = i * 2.399963;
    return [slant[0] + far * Math.cos(turn), slant[1] + far * Math.sin(turn)] as const;
  });
}

/** What an instrument takes of one lamp's light from the ground; `reaches` says quickly where it may take any. */
function stopper({ body, slabs }: Standing, { slant, soft }: Lamp) {
  const { edgeHeightMm: zc, place } = body;
  const most = Math.hypot(...slant) + soft;
  const [sx, sy] = turned(slant[0], slant[1], -place.turnRad);
  const swept = slabs.map(({ box, topMm, bottomMm }) => {
    const [low, high] = [Math.max(0, bottomMm), topMm];
    return {
      x0: box.x0 + Math.min(low * sx, high * sx) - high * soft,
      x1: box.x1 + Math.max(low * sx, high * sx) + high * soft,
      y0: box.y0 + Math.min(low * sy, high * sy) - high * soft,
      y1: box.y1 + Math.max(low * sy, high * sy) + high * soft,
    };
  });
  const far = 110;
  return {
    reaches: (x: number, y: number): boolean => {
      const [u, v] = intoBody(body, x, y);
      if (body.nearGrid.at(u, v) < zc * most + 2) return true;
      return swept.some((box) => u > box.x0 && u < box.x1 && v > box.y0 && v < box.y1);
    },
    stops: (x: number, y: number, mx: number, my: number): boolean => {
      const [u, v] = intoBody(body, x, y);
      const [a, b] = turned(mx, my, -place.turnRad);
      if (body.nearGrid.at(u - zc * a, v - zc * b) < 0) return true;
      for (let share = 0.05; share < 0.9; share += 0.25)
        if (
          body.meantGrid.at(u - zc * share * a, v - zc * share * b) + (share > 0.1 ? body.overhangMm : 0) <
          0
        )
          return true;
      for (let i = 0; i < slabs.length; i++) {
        const box = swept[i] as (typeof swept)[number];
        if (u < box.x0 || u > box.x1 || v < box.y0 || v > box.y1) continue;
        if (slabHit(slabs[i] as Slab, u - far * a, v - far * b, far, a, b) > 0) return true;
      }
      return false;
    },
  };
}

export function turned(x: number, y: number, turnRad: number): readonly [number, number] {
  const c = Math.cos(turnRad);
  const s = Math.sin(turnRad);
  return [c * x - s * y, s * x + c * y];
}

/** A place of the room in the frame of an instrument. */
function intoBody({ place }: Instrument, x: number, y: number): readonly [number, number] {
  return turned(x - place.x, y - place.y, -place.turnRad);
}

/** A place of an instrument in the room. */
export function intoRoom({ place }: Instrument, x: number, y: number): readonly [number, number] {
  const [u, v] = turned(x, y, place.turnRad);
  return [u + place.x, v + place.y];
}

function boundsOf(all: readonly Standing[]): { x0: number; x1: number; y0: number; y1: number } {
  const places = all.flatMap(({ body, slabs }) => {
    const half = body.meant.widths.lowerMm / 2;
    const ends = [body.meant.lengthMm, ...slabs.map(({ box }) => box.y1)];
    const most = Math.max(...ends);
    return [
      intoRoom(body, -half, -10),
      intoRoom(body, half, -10),
      intoRoom(body, -half, most),
      intoRoom(body, half, most),
    ];
  });
  return {
    x0: Math.min(...places.map(([x]) => x)) - REACH_MM,
    x1: Math.max(...places.map(([x]) => x)) + REACH_MM,
    y0: Math.min(...places.map(([, y]) => y)) - REACH_MM,
    y1: Math.max(...places.map(([, y]) => y)) + REACH_MM,
  };
}

function keep(
  corner: { readonly x: number; readonly y: number },
  columns: number,
  rows: number,
  of: (x: number, y: number, index: number) => number,
): Seen {
  const raw = new Float32Array(columns * rows);
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++)
      raw[j * columns + i] = of(corner.x + i * CELL_MM, corner.y + j * CELL_MM, (i + 2 * j) % 3);
  const values = smoothed(raw, columns, rows);
  return readGrid({ values, columns, rows, x0: corner.x, y0: corner.y, cellMm: CELL_MM }, 1);
}

/** The three sets of rays that neighbours take in turn, mixed. */
function smoothed(raw: Float32Array, columns: number, rows: number): Float32Array {
  const out = raw.slice();
  for (let j = 1; j < rows - 1; j++)
    for (let i = 1; i < columns - 1; i++) {
      let sum = 0;
      for (let b = -1; b <= 1; b++)
        for (let a = -1; a <= 1; a++) sum += raw[(j + b) * columns + i + a] as number;
      out[j * columns + i] = sum / 9;
    }
  return out;
}
