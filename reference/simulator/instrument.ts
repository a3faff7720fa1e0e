import type { Spot } from './bentLine.ts';
import type { Chance } from './chance.ts';
import { type DistanceGrid, distanceGrid } from './distanceGrid.ts';
import { drawMeantShape, type MeantShape, wholeOf } from './meantShape.ts';
import { drawSoundHole, type SoundHole } from './soundHole.ts';
import { type WearHabit, WORN, type WornShape, wearDown } from './wear.ts';

/** An instrument lying on its far plate, in its own frame: x to the right as the camera sees it, y to the neck, z up. */
export interface Instrument {
  readonly face: 'top' | 'back';
  readonly meant: MeantShape;
  readonly near: WornShape;
  readonly nearGrid: DistanceGrid;
  readonly farGrid: DistanceGrid;
  readonly meantGrid: DistanceGrid;
  /** Middle of the near plate's edge over the ground: the height where the outline is widest. */
  readonly edgeHeightMm: number;
  /** Half the thickness of the edge, and the radius that rounds it. */
  readonly halfThickMm: number;
  readonly roundMm: number;
  readonly overhangMm: number;
  /** From the ground to the upper side of the far plate's edge. */
  readonly farTopMm: number;
  readonly farHalfThickMm: number;
  readonly arch: ArchGrid;
  readonly soundHole: SoundHole | null;
  readonly varnish: Varnish;
  /** Where the lower end lies in the room, and how far the axis is turned anticlockwise from the room's y. */
  readonly place: { readonly x: number; readonly y: number; readonly turnRad: number };
}

/** How the wood and its varnish look; colours are linear red, green, blue. */
export interface Varnish {
  readonly tone: readonly [number, number, number];
  readonly grainMm: number;
  readonly grainDepth: number;
  readonly flame: number;
  readonly gloss: number;
  readonly salt: number;
}

export interface InstrumentHabit {
  readonly face: 'top' | 'back';
  readonly wear?: WearHabit;
  readonly shape?: MeantShape;
  readonly varnish?: Varnish;
}

/** An instrument by chance; `place` is set by the scene. */
export function drawInstrument(habit: InstrumentHabit, chance: Chance): Instrument {
  const meant = habit.shape ?? drawMeantShape(chance);
  const near = wearDown(meant, habit.wear ?? WORN, chance);
  const far = wearDown(meant, habit.wear ?? WORN, chance);
  const roundMm = chance.between(1.2, 2);
  const halfThickMm = Math.max(roundMm, chance.between(1.8, 2.1));
  const farHalfThickMm = chance.between(1.8, 2.1);
  const farTopMm = 2 * farHalfThickMm + chance.between(0, 1.5);
  const edgeHeightMm = farTopMm + chance.between(28.5, 31.5) + halfThickMm;
  const meantGrid = distanceGrid(wholeOf(meant.half, mirrored(meant.half)), 30);
  return {
    face: habit.face,
    meant,
    near,
    nearGrid: distanceGrid(wholeOf(near.right, near.left), 60),
    farGrid: distanceGrid(wholeOf(far.right, far.left), 30),
    meantGrid,
    edgeHeightMm,
    halfThickMm,
    roundMm,
    overhangMm: chance.between(2.2, 3),
    farTopMm,
    farHalfThickMm,
    arch: archGrid(meant, meantGrid, chance.between(11, 13.5)),
    soundHole: habit.face === 'top' ? drawSoundHole(meant, chance) : null,
    varnish: habit.varnish ?? drawVarnish(chance),
    place: { x: 0, y: 0, turnRad: 0 },
  };
}

function mirrored(half: readonly Spot[]): Spot[] {
  return half.map(({ x, y }) => ({ x: -x, y }));
}

function drawVarnish(chance: Chance): Varnish {
  const tone = chance.oneOf([
    [0.34, 0.13, 0.035],
    [0.42, 0.2, 0.06],
    [0.24, 0.07, 0.02],
    [0.14, 0.045, 0.018],
    [0.5, 0.28, 0.1],
  ] as const);
  const much = chance.between(0.8, 1.2);
  return {
    tone: [tone[0] * much, tone[1] * much, tone[2] * much],
    grainMm: chance.between(0.7, 1.5),
    grainDepth: chance.between(0.05, 0.2),
    flame: chance.between(0.05, 0.25),
    gloss: chance.between(0.02, 0.25),
    salt: chance.whole(1, 100000),
  };
}

/** Height of the near plate's surface over the upper side of its edge, by place. */
export interface ArchGrid {
  readonly at: (x: number, y: number) => number;
  readonly mostMm: number;
}

const ARCH_CELL_MM = 2;

function archGrid(meant: MeantShape, outline: DistanceGrid, riseMm: number): ArchGrid {
  const halfWide = Math.ceil(meant.widths.lowerMm / 2 + 6);
  const columns = Math.ceil((2 * halfWide) / ARCH_CELL_MM) + 1;
  const rows = Math.ceil((meant.lengthMm + 12) / ARCH_CELL_MM) + 1;
  let values = new Float32Array(columns * rows);
  for (let j = 0; j < rows; j++) {
    const y = j * ARCH_CELL_MM - 6;
    const half = smoothHalfWidth(meant, y / meant.lengthMm);
    for (let i = 0; i < columns; i++) {
      const x = i * ARCH_CELL_MM - halfWide;
      const inside = -outline.at(x, y);
      const across = 0.5 + 0.5 * Math.cos(Math.PI * Math.min(1, Math.abs(x) / half));
      const along = Math.sin(Math.PI * Math.max(0, Math.min(1, y / meant.lengthMm))) ** 0.5;
      const free = smoothStep((inside - 4) / 14);
      const channel = Math.exp(-(((inside - 8) / 3) ** 2));
      values[j * columns + i] =
        inside > 0 ? riseMm * free * (0.25 + 0.75 * across) * along - 0.7 * channel : 0;
    }
  }
  for (let pass = 0; pass < 3; pass++) values = blurred(values, columns, rows);
  const at = (x: number, y: number) => {
    const u = (x + halfWide) / ARCH_CELL_MM;
    const v = (y + 6) / ARCH_CELL_MM;
    if (u < 0 || v < 0 || u >= columns - 1 || v >= rows - 1) return 0;
    const i = u | 0;
    const j = v | 0;
    const fu = u - i;
    const fv = v - j;
    const k = j * columns + i;
    const low = (values[k] as number) * (1 - fu) + (values[k + 1] as number) * fu;
    const high = (values[k + columns] as number) * (1 - fu) + (values[k + columns + 1] as number) * fu;
    return low * (1 - fv) + high * fv;
  };
  return { at, mostMm: riseMm + 1 };
}

/** Half the width by height without the corners: a smooth waisted shape for the arch alone. */
function smoothHalfWidth({ widths }: MeantShape, share: number): number {
  const bump = (middle: number, wide: number) => Math.exp(-(((share - middle) / wide) ** 2));
  return (
    widths.waistMm / 2 -
    3 +
    (widths.lowerMm / 2 - 60) * bump(0.2, 0.2) +
    (widths.upperMm / 2 - 60) * bump(0.81, 0.16)
  );
}

function blurred(values: Float32Array, columns: number, rows: number): Float32Array<ArrayBuffer> {
  const out = new Float32Array(values.length);
  for (let j = 1; j < rows - 1; j++)
    for (let i = 1; i < columns - 1; i++) {
      const k = j * columns + i;
      const v = (at: number) => values[at] as number;
      out[k] =
        (4 * v(k) +
          2 * (v(k - 1) + v(k + 1) + v(k - columns) + v(k + columns)) +
          v(k - columns - 1) +
          v(k - columns + 1) +
          v(k + columns - 1) +
          v(k + columns + 1)) /
        16;
    }
  return out;
}

function smoothStep(share: number): number {
  const t = share < 0 ? 0 : share > 1 ? 1 : share;
  return t * t * (3 - 2 * t);
}
