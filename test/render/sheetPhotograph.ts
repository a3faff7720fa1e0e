/**
 * Pictures of the calibration sheet with a known truth. Written on its own: it shares no code with the camera that
 * the product solves, so that a mistake made there does not cancel here.
 */
import { type Point, point, seededNormal, seededRandom } from '../../src/core/base/index.ts';
import {
  type CalibrationSheet,
  type FoundMarker,
  type HeightCard,
  type MarkerFinder,
  type Picture,
} from '../../src/core/photo/index.ts';
import { blurredLight } from './blurredLight.ts';
import { CELL_MM, PLAIN_CELLS, PLAIN_MM, paperInk } from './paperInk.ts';
import { alongRise, type Rise } from './risenPaper.ts';

export interface Lens {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  readonly centreOffsetPx: readonly [number, number];
  readonly k1: number;
  readonly k2: number;
  /** mm over the sheet's lower left corner. */
  readonly eye: readonly [number, number, number];
  readonly target: readonly [number, number, number];
  readonly rollRad: number;
}

export interface Look {
  readonly blurPx: number;
  readonly noise: number;
  readonly seed: number;
  /** mm on the sheet; covered by something dull brown. */
  readonly covered?: readonly { x0: number; y0: number; x1: number; y1: number }[];
  /** Share of the light that is left, 1 for a bright room; black stays a little above nothing. */
  readonly light?: number;
  /** A soft shadow over everything to the right of `xPx`, fading in over `softPx`, leaving `share` of the light. */
  readonly shadow?: { readonly xPx: number; readonly softPx: number; readonly share: number };
}

/** A printed sheet or card, where its lower left corner lies in the scene and how it is turned. */
export interface LaidPaper {
  readonly paper: CalibrationSheet | HeightCard;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly turnRad: number;
  /** Where it does not lie flat. */
  readonly rise?: Rise;
}

/** Where a place over the sheet shows, in pixels whose centres have whole numbers. */
export function lensMap(lens: Lens) {
  const forward = unit(minus(lens.target, lens.eye));
  const level = unit(cross(forward, [0, 1, 0]));
  const upright = cross(forward, level);
  const [c, s] = [Math.cos(lens.rollRad), Math.sin(lens.rollRad)];
  const right = [0, 1, 2].map((i) => c * level[i]! + s * upright[i]!) as unknown as Vector;
  const down = [0, 1, 2].map((i) => c * upright[i]! - s * level[i]!) as unknown as Vector;
  const centre = [
    (lens.widthPx - 1) / 2 + lens.centreOffsetPx[0],
    (lens.heightPx - 1) / 2 + lens.centreOffsetPx[1],
  ] as const;
  const toPhoto = (x: number, y: number, z: number): Point<'photo'> => {
    const seen = minus([x, y, z], lens.eye);
    const depth = dot(seen, forward);
    const [u, v] = [dot(seen, right) / depth, dot(seen, down) / depth];
    const r2 = u * u + v * v;
    const bend = lens.focalPx * (1 + lens.k1 * r2 + lens.k2 * r2 * r2);
    return point(centre[0] + u * bend, centre[1] + v * bend);
  };
  const toPaper = (px: number, py: number, z = 0): readonly [number, number] => {
    const [du, dv] = [(px - centre[0]) / lens.focalPx, (py - centre[1]) / lens.focalPx];
    let [u, v] = [du, dv];
    for (let step = 0; step < 30; step++) {
      const r2 = u * u + v * v;
      const bend = 1 + lens.k1 * r2 + lens.k2 * r2 * r2;
      const isSettled = Math.abs(u - du / bend) + Math.abs(v - dv / bend) < 1e-15;
      u = du / bend;
      v = dv / bend;
      if (isSettled) break;
    }
    const ray = [0, 1, 2].map((i) => forward[i]! + u * right[i]! + v * down[i]!);
    const reach = (z - lens.eye[2]) / ray[2]!;
    return [lens.eye[0] + reach * ray[0]!, lens.eye[1] + reach * ray[1]!];
  };
  return { toPhoto, toPaper };
}

/** The picture that the lens takes of the sheet on a grey table. */
export function photographSheet(sheet: CalibrationSheet, lens: Lens, look: Look): Picture {
  return photographPapers([{ paper: sheet, x: 0, y: 0, z: 0, turnRad: 0 }], lens, look);
}

/** The picture of several sheets and cards on a grey table; what stands higher is given later. */
export function photographPapers(papers: readonly LaidPaper[], lens: Lens, look: Look): Picture {
  const { widthPx, heightPx } = lens;
  const light = new Float32Array(widthPx * heightPx).fill(TABLE);
  for (const laid of papers) expose(light, laid, lens, look);
  shade(light, lens, look);
  const blurred = blurredLight(light, widthPx, heightPx, look.blurPx);
  const random = seededRandom(look.seed);
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  for (let i = 0; i < blurred.length; i++) {
    const level = blurred[i]! + (look.noise > 0 ? look.noise * seededNormal(random) : 0);
    rgb[3 * i] = rgb[3 * i + 1] = rgb[3 * i + 2] = Math.min(255, Math.max(0, Math.round(level)));
  }
  return { widthPx, heightPx, rgb };
}

/** Where a place on a laid paper is in the scene. */
export function inScene({ paper, x, y, z, turnRad, rise }: LaidPaper, place: Point<'sheet'>): Vector {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const level = rise ? alongRise(rise, paper.widthMm).levelOf(place.x) : place.x;
  return [x + c * level - s * place.y, y + s * level + c * place.y, z + (rise?.(level) ?? 0)];
}

/** Stands in for a finder: the true corners of all codes in the picture, each moved up to a pixel. */
export function trueMarkers(sheet: CalibrationSheet, lens: Lens, seed: number): readonly FoundMarker[] {
  const { toPhoto } = lensMap(lens);
  const random = seededRandom(seed);
  const jitter = () => 2 * random() - 1;
  return sheet.markers.flatMap(({ id, corners }) => {
    const seen = corners.map((corner) => toPhoto(corner.x, corner.y, 0));
    const inside = seen.every(({ x, y }) => x > 0 && y > 0 && x < lens.widthPx - 1 && y < lens.heightPx - 1);
    const moved = seen.map(({ x, y }) => point<'photo'>(x + jitter(), y + jitter()));
    return inside ? [{ id, corners: moved as unknown as FoundMarker['corners'] }] : [];
  });
}

/** The same as a finder, for whatever size the picture is handed over in. */
export function trueFinder(sheet: CalibrationSheet, lens: Lens, seed: number): MarkerFinder {
  const full = trueMarkers(sheet, lens, seed);
  return (gray) => {
    const times = Math.round(lens.widthPx / gray.widthPx);
    const small = (corner: Point<'photo'>) =>
      point<'photo'>((corner.x + 0.5) / times - 0.5, (corner.y + 0.5) / times - 0.5);
    return full.map(({ id, corners: [a, b, c, d] }) => ({
      id,
      corners: [small(a), small(b), small(c), small(d)],
    }));
  };
}

const GRID = 4;
const SAMPLES = 4;

const TABLE = 130;

const COVER = 110;
const [INK, WHITE] = [35, 225];

/** The level at a place in the scene, and whether it is the same for {@link PLAIN_MM} all round. */
function paperLevels(laid: LaidPaper, look: Look) {
  const ink = paperInk(laid.paper);
  const { across, up, plain } = ink;
  const [c, s] = [Math.cos(laid.turnRad), Math.sin(laid.turnRad)];
  const covers = look.covered ?? [];
  const along = laid.rise ? alongRise(laid.rise, laid.paper.widthMm).alongOf : (level: number) => level;
  const columnAt = (x: number, y: number) => Math.floor(along(c * (x - laid.x) + s * (y - laid.y)) / CELL_MM);
  const rowAt = (x: number, y: number) => Math.floor((c * (y - laid.y) - s * (x - laid.x)) / CELL_MM);
  const level = (x: number, y: number, under: number): number => {
    for (const box of covers) if (x > box.x0 && x < box.x1 && y > box.y0 && y < box.y1) return COVER;
    const [column, row] = [columnAt(x, y), rowAt(x, y)];
    if (column < 0 || row < 0 || column >= ink.columns || row >= ink.rows) return under;
    return ink.black[row * ink.columns + column] ? INK : WHITE;
  };
  const isPlain = (x: number, y: number): boolean => {
    for (const box of covers)
      if (x > box.x0 - PLAIN_MM && x < box.x1 + PLAIN_MM && y > box.y0 - PLAIN_MM && y < box.y1 + PLAIN_MM)
        return false;
    const column = Math.floor(columnAt(x, y) / PLAIN_CELLS);
    const row = Math.floor(rowAt(x, y) / PLAIN_CELLS);
    return column >= 0 && row >= 0 && column < across && row < up && plain[row * across + column] === 1;
  };
  return { level, isPlain };
}

/** Where the ray of a place in the photograph meets the paper, level. */
function onRisen(
  { rise, x, y, z, turnRad }: LaidPaper,
  toPaper: ReturnType<typeof lensMap>['toPaper'],
  px: number,
  py: number,
): readonly [number, number] {
  let at = toPaper(px, py, z);
  if (!rise) return at;
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  for (let step = 0; step < 12; step++) at = toPaper(px, py, z + rise(c * (at[0] - x) + s * (at[1] - y)));
  return at;
}

function expose(out: Float32Array, laid: LaidPaper, lens: Lens, look: Look): void {
  const { widthPx, heightPx } = lens;
  const { toPaper, toPhoto } = lensMap(lens);
  const { level, isPlain } = paperLevels(laid, look);
  const bounds = boundsInPhoto(laid, toPhoto, widthPx, heightPx);
  const columns = Math.ceil((bounds.x1 - bounds.x0) / GRID) + 2;
  const rows = Math.ceil((bounds.y1 - bounds.y0) / GRID) + 2;
  const grid = new Float64Array(2 * columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      grid.set(
        onRisen(laid, toPaper, bounds.x0 + column * GRID - 0.5, bounds.y0 + row * GRID - 0.5),
        2 * (row * columns + column),
      );
  const step = 1 / (SAMPLES * GRID);
  for (let y = bounds.y0; y < bounds.y1; y++)
    for (let x = bounds.x0; x < bounds.x1; x++) {
      const [inX, inY] = [x - bounds.x0, y - bounds.y0];
      const a = 2 * (Math.floor(inY / GRID) * columns + Math.floor(inX / GRID));
      const b = a + 2 * columns;
      const [fromU, fromV] = [(inX % GRID) / GRID, (inY % GRID) / GRID];
      /** A coordinate between the four places of the grid round the pixel. */
      const between = (of: 0 | 1, u: number, v: number) => {
        const start = grid[a + of]! + v * (grid[b + of]! - grid[a + of]!);
        const end = grid[a + 2 + of]! + v * (grid[b + 2 + of]! - grid[a + 2 + of]!);
        return start + u * (end - start);
      };
      const under = out[y * widthPx + x]!;
      const pixelMm =
        (Math.abs(grid[a + 2]! - grid[a]!) +
          Math.abs(grid[a + 3]! - grid[a + 1]!) +
          Math.abs(grid[b]! - grid[a]!) +
          Math.abs(grid[b + 1]! - grid[a + 1]!)) /
        GRID;
      const [midU, midV] = [fromU + 0.5 / GRID, fromV + 0.5 / GRID];
      const [midX, midY] = [between(0, midU, midV), between(1, midU, midV)];
      if (pixelMm < 1.8 * PLAIN_MM && isPlain(midX, midY)) {
        out[y * widthPx + x] = level(midX, midY, under);
        continue;
      }
      let sum = 0;
      for (let j = 0; j < SAMPLES; j++) {
        const v = fromV + (j + 0.5) * step;
        for (let i = 0; i < SAMPLES; i++) {
          const u = fromU + (i + 0.5) * step;
          sum += level(between(0, u, v), between(1, u, v), under);
        }
      }
      out[y * widthPx + x] = sum / (SAMPLES * SAMPLES);
    }
}

function boundsInPhoto(
  laid: LaidPaper,
  toPhoto: ReturnType<typeof lensMap>['toPhoto'],
  widthPx: number,
  heightPx: number,
) {
  const { widthMm, heightMm } = laid.paper;
  const seen = [0, 0.25, 0.5, 0.75, 1].flatMap((share) =>
    [
      [share * widthMm, 0],
      [share * widthMm, heightMm],
      [0, share * heightMm],
      [widthMm, share * heightMm],
    ].map(([x, y]) => toPhoto(...inScene(laid, point(x!, y!)))),
  );
  const [xs, ys] = [seen.map((one) => one.x), seen.map((one) => one.y)];
  const margin = 8;
  return {
    x0: Math.max(0, Math.floor(Math.min(...xs) - margin)),
    y0: Math.max(0, Math.floor(Math.min(...ys) - margin)),
    x1: Math.min(widthPx, Math.ceil(Math.max(...xs) + margin)),
    y1: Math.min(heightPx, Math.ceil(Math.max(...ys) + margin)),
  };
}

function shade(light: Float32Array, { widthPx, heightPx }: Lens, look: Look): void {
  const { shadow } = look;
  for (let x = 0; x < widthPx; x++) {
    const slant = 1 - (0.25 * x) / widthPx;
    const fade = shadow ? 1 / (1 + Math.exp((-4 * (x - shadow.xPx)) / shadow.softPx)) : 0;
    const share = slant * (look.light ?? 1) * (1 - fade * (1 - (shadow?.share ?? 1)));
    for (let y = 0; y < heightPx; y++) light[y * widthPx + x]! *= share;
  }
}

type Vector = readonly [number, number, number];

const minus = (a: readonly number[], b: readonly number[]): Vector => [
  a[0]! - b[0]!,
  a[1]! - b[1]!,
  a[2]! - b[2]!,
];
const dot = (a: readonly number[], b: readonly number[]) => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};
