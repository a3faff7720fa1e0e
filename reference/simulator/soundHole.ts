import type { Spot } from './bentLine.ts';
import type { Chance } from './chance.ts';
import type { MeantShape } from './meantShape.ts';
import { readGrid } from './planeGrid.ts';

/** The right sound hole: dark where `at` is below zero; the left one is its mirror image. */
export interface SoundHole {
  /** Distance to the rim, mm, negative in the hole; only near the hole. */
  readonly at: (x: number, y: number) => number;
  readonly box: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };
  /** Both eyes and the stem as discs along a middle line: their union is the hole. */
  readonly discs: readonly { readonly x: number; readonly y: number; readonly radiusMm: number }[];
}

const CELL_MM = 0.4;

/**
 * A sound hole of our own drawing: two eyes, and a stem that swings from one to the other and is widest in the middle.
 * Its middle lies level with the bridge.
 */
export function drawSoundHole({ lengthMm }: MeantShape, chance: Chance): SoundHole {
  const scale = lengthMm / 355;
  const middle = { x: scale * chance.between(39.5, 42.5), y: scale * chance.between(158, 162) };
  const high = { x: scale * chance.between(22.5, 25), y: middle.y + scale * chance.between(28, 31) };
  const low = {
    x: scale * chance.between(56, 60),
    y: middle.y - scale * chance.between(30, 33),
  };
  const path = swing([
    { x: high.x + 0.5, y: high.y + 1 },
    { x: high.x + 7, y: high.y + 7 },
    { x: high.x + 13, y: high.y + 1 },
    { x: middle.x - 2.5, y: middle.y + 14 },
    middle,
    { x: middle.x + 2.5, y: middle.y - 14 },
    { x: low.x - 13, y: low.y - 1 },
    { x: low.x - 7, y: low.y - 7 },
    { x: low.x - 0.5, y: low.y - 1 },
  ]);
  const discs = [
    { ...high, radiusMm: scale * 3.1 },
    { ...low, radiusMm: scale * 4.2 },
    ...path.map((spot, i) => ({
      ...spot,
      radiusMm: scale * (0.9 + 2 * Math.sin((Math.PI * i) / (path.length - 1)) ** 2),
    })),
  ];
  const box = {
    x0: Math.min(...discs.map(({ x }) => x)) - 8,
    x1: Math.max(...discs.map(({ x }) => x)) + 8,
    y0: Math.min(...discs.map(({ y }) => y)) - 8,
    y1: Math.max(...discs.map(({ y }) => y)) + 8,
  };
  return { at: rimDistance(discs, box), box, discs };
}

function rimDistance(discs: SoundHole['discs'], box: SoundHole['box']): SoundHole['at'] {
  const columns = Math.ceil((box.x1 - box.x0) / CELL_MM) + 2;
  const rows = Math.ceil((box.y1 - box.y0) / CELL_MM) + 2;
  const values = new Float32Array(columns * rows);
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const [x, y] = [box.x0 + i * CELL_MM, box.y0 + j * CELL_MM];
      values[j * columns + i] = discs.reduce(
        (least, disc) => Math.min(least, Math.hypot(x - disc.x, y - disc.y) - disc.radiusMm),
        9,
      );
    }
  return readGrid({ values, columns, rows, x0: box.x0, y0: box.y0, cellMm: CELL_MM }, 9);
}

/** A smooth line through the places (cardinal cubic pieces), about half a millimetre apart. */
function swing(places: readonly Spot[]): Spot[] {
  const at = (i: number) => places[Math.max(0, Math.min(places.length - 1, i))] as Spot;
  return places.slice(1).flatMap((_, i) =>
    Array.from({ length: 24 }, (__, step) => {
      const t = step / 24;
      const mix = (a: number, b: number, c: number, d: number) =>
        b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
      return {
        x: mix(at(i - 1).x, at(i).x, at(i + 1).x, at(i + 2).x),
        y: mix(at(i - 1).y, at(i).y, at(i + 1).y, at(i + 2).y),
      };
    }),
  );
}
