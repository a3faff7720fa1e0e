import { type Chance, chanceFrom } from './chance.ts';
import type { Development } from './develop.ts';
import { BARE, type Dress, fittings } from './dress.ts';
import { drawGround, withSheet } from './ground.ts';
import { drawInstrument, type Instrument } from './instrument.ts';
import { drawLight, type Light } from './light.ts';
import { type Pinhole, pinhole } from './pinhole.ts';
import type { Scene } from './render.ts';
import type { SheetTexture } from './sheetTexture.ts';
import type { WearHabit } from './wear.ts';

/** An instrument on a printed sheet, how it is photographed, and what its owner measured. */
export interface SheetScene {
  readonly scene: Scene;
  readonly cameras: readonly [Pinhole, ...Pinhole[]];
  readonly how: Development;
  readonly body: Instrument;
  readonly tiltDegrees: number;
  readonly isDressed: boolean;
  /** How much too large the print is along both sides. */
  readonly printed: { readonly x: number; readonly y: number };
  /** The 35 mm equivalent that the camera noted, true to a few hundredths; null where the file kept none. */
  readonly notedFocal35Mm: number | null;
  /** As read off with a rule and a calliper, with the errors that these have. */
  readonly told: {
    readonly edgeHeightMm: number;
    readonly sheetBarMm: { readonly xMm: number; readonly yMm: number };
    readonly lengthMm: number;
    readonly lowerBoutMm: number;
    /** Widths of the corner ends as the owner judges them on the least worn corner. */
    readonly cornerEndMm: { readonly lower: number; readonly upper: number };
  };
}

export interface SheetSceneHabit {
  readonly megapixels: number;
  readonly tiltDegrees: readonly [number, number];
  readonly views?: number;
  readonly wear?: WearHabit;
  /** How far the sheet's free edges may stand up, mm; flat where left out. */
  readonly curlMm?: number;
}

/** A scene on an A3 sheet from a seed. */
export function drawSheetScene(seed: number, texture: SheetTexture, habit: SheetSceneHabit): SheetScene {
  const chance = chanceFrom(seed);
  const face = chance.isHappening(0.5) ? 'top' : 'back';
  const drawn = drawInstrument({ face, ...(habit.wear && { wear: habit.wear }) }, chance);
  const isUp = chance.isHappening(0.5);
  const turnRad = (isUp ? -1 : 1) * (Math.PI / 2) + chance.between(-0.035, 0.035);
  const half = drawn.meant.lengthMm / 2;
  const body: Instrument = {
    ...drawn,
    place: {
      x: texture.widthMm / 2 + Math.sin(turnRad) * half + chance.between(-4, 4),
      y: texture.heightMm / 2 - Math.cos(turnRad) * half + chance.between(-6, 6),
      turnRad,
    },
  };
  const isDressed = chance.isHappening(0.4);
  const dress: Dress = isDressed
    ? { ...BARE, neck: true, strings: face === 'top' && chance.isHappening(0.4) }
    : BARE;
  const printed = { x: chance.between(0.985, 1.008), y: chance.between(0.985, 1.008) };
  const light = drawLight(chance);
  const under = drawGround(
    chance.oneOf(['bench', 'white', 'cloth', 'gradient'] as const),
    body.varnish,
    chance,
  );
  const scene: Scene = {
    standing: [{ body, slabs: fittings(body, dress, chance) }],
    lying: [],
    ground: withSheet(under, texture, printed),
    ...(habit.curlMm && { lift: curled(texture, habit.curlMm) }),
    light,
  };
  const tiltDegrees = chance.between(...habit.tiltDegrees);
  const cameras = Array.from({ length: habit.views ?? 1 }, () =>
    drawCamera(texture, tiltDegrees, habit.megapixels, chance),
  );
  const how = drawDevelopment(light, chance);
  const told = measured(body, printed, chance);
  return {
    scene,
    cameras: cameras as [Pinhole, ...Pinhole[]],
    how,
    body,
    tiltDegrees,
    isDressed,
    printed,
    notedFocal35Mm: noted(cameras[0] as Pinhole, chance),
    told,
  };
}

/** A sheet held down by the body in its middle, whose rim stands up like the square of the way to it. */
function curled({ widthMm, heightMm }: SheetTexture, mostMm: number): (x: number, y: number) => number {
  return (x, y) => {
    const u = Math.max(0, Math.abs(x / widthMm - 0.5) - 0.25) / 0.25;
    const v = Math.max(0, Math.abs(y / heightMm - 0.5) - 0.25) / 0.25;
    return u > 1 || v > 1 ? 0 : mostMm * Math.max(u * u, v * v);
  };
}

function drawCamera(texture: SheetTexture, tiltDegrees: number, megapixels: number, chance: Chance): Pinhole {
  const heightPx = Math.round(Math.sqrt((megapixels * 1e6 * 3) / 4));
  const widthPx = Math.round((heightPx * 4) / 3);
  const far = chance.between(900, 1900);
  const tilt = (tiltDegrees * Math.PI) / 180;
  const toward = chance.between(0, 2 * Math.PI);
  const target = [
    texture.widthMm / 2 + chance.between(-10, 10),
    texture.heightMm / 2 + chance.between(-10, 10),
    15,
  ] as const;
  const eye = [
    target[0] + far * Math.sin(tilt) * Math.cos(toward),
    target[1] + far * Math.sin(tilt) * Math.sin(toward),
    target[2] + far * Math.cos(tilt),
  ] as const;
  const upright = {
    widthPx,
    heightPx,
    eye,
    target,
    centrePx: [widthPx / 2, heightPx / 2] as const,
    focalPx: widthPx,
    radial: [0, 0] as const,
    tangential: [0, 0] as const,
  };
  const roll =
    rollFor(pinhole({ ...upright, rollRad: 0 }), texture) +
    (chance.isHappening(0.5) ? Math.PI : 0) +
    chance.between(-0.1, 0.1);
  const focalPx = (chance.between(0.8, 0.9) * widthPx * (far - 160 * Math.sin(tilt))) / texture.widthMm;
  return pinhole({
    ...upright,
    focalPx,
    centrePx: [widthPx * (0.5 + chance.between(-0.01, 0.01)), heightPx * (0.5 + chance.between(-0.01, 0.01))],
    radial: [chance.between(-0.14, 0.06), chance.between(-0.04, 0.05)],
    tangential: [chance.between(-0.0008, 0.0008), chance.between(-0.0008, 0.0008)],
    rollRad: roll,
  });
}

/** The roll that lays the sheet's long side along the picture's. */
function rollFor(camera: Pinhole, texture: SheetTexture): number {
  const [ax, ay] = camera.project([0, texture.heightMm / 2, 0]);
  const [bx, by] = camera.project([texture.widthMm, texture.heightMm / 2, 0]);
  return Math.atan2(by - ay, bx - ax);
}

function noted({ focalPx, widthPx, heightPx }: Pinhole, chance: Chance): number | null {
  const true35Mm = (focalPx * Math.hypot(36, 24)) / Math.hypot(widthPx, heightPx);
  const said = Math.round(true35Mm * (1 + 0.02 * chance.normal()));
  return chance.isHappening(0.7) ? said : null;
}

export function drawDevelopment(light: Light, chance: Chance): Development {
  const most = light.lamps.reduce((sum, { tone }) => sum + tone[1], light.ambient[1]);
  return {
    blurPx: chance.between(0.45, 0.85),
    vignette: chance.between(0, 0.25),
    noise: chance.between(0.8, 2.5),
    white: most * chance.between(0.95, 1.25),
    jpeg: chance.isHappening(0.7) ? chance.whole(88, 95) : null,
  };
}

function measured(
  body: Instrument,
  printed: { readonly x: number; readonly y: number },
  chance: Chance,
): SheetScene['told'] {
  const [a, b, c, d] = body.meant.tips;
  const rounded = (value: number, step: number) => Math.round(value / step) * step;
  const all = [...body.near.right, ...body.near.left];
  const ys = all.map(({ y }) => y);
  const low = all.filter(({ y }) => y < 0.35 * body.meant.lengthMm).map(({ x }) => x);
  return {
    edgeHeightMm: rounded(body.edgeHeightMm + chance.between(-0.2, 0.2), 0.1),
    sheetBarMm: {
      xMm: rounded(150 * printed.x + chance.between(-0.04, 0.04), 0.05),
      yMm: rounded(150 * printed.y + chance.between(-0.04, 0.04), 0.05),
    },
    lengthMm: rounded(Math.max(...ys) - Math.min(...ys) + 0.1 * chance.normal(), 0.1),
    lowerBoutMm: rounded(Math.max(...low) - Math.min(...low) + 0.1 * chance.normal(), 0.1),
    cornerEndMm: {
      lower: rounded(Math.hypot(b.x - a.x, b.y - a.y), 0.1),
      upper: rounded(Math.hypot(d.x - c.x, d.y - c.y), 0.1),
    },
  };
}
