import { distanceTo, fillPolygon } from '../picture/fillPolygon.ts';
import type { LabPicture } from '../picture/labPicture.ts';
import { photoToBody, type Seat } from './bodySeat.ts';

/** Which colours count as alike: `full` in L, a, b; `chroma` mostly by a and b, for shadow on the ground. */
export type ColourKind = 'full' | 'chroma';

const STEPS = 16;
const CELLS = STEPS * STEPS * STEPS;

/** The cell of the joint colour histogram that every pixel falls into. */
export function colourCells(lab: LabPicture, kind: ColourKind): Uint16Array {
  const out = new Uint16Array(lab.lightness.length);
  const lightStep = kind === 'full' ? 100 / STEPS : 100 / 3;
  const chromaStep = kind === 'full' ? 8 : 5;
  for (let i = 0; i < out.length; i++) {
    const l = cell((lab.lightness[i] as number) / lightStep);
    const a = cell((lab.a[i] as number) / chromaStep + STEPS / 2);
    const b = cell((lab.b[i] as number) / chromaStep + STEPS / 2);
    out[i] = (l * STEPS + a) * STEPS + b;
  }
  return out;
}

function cell(value: number): number {
  return Math.min(STEPS - 1, Math.max(0, Math.floor(value)));
}

/** Where the colours inside and outside are learned, by the distance from the outline in template mm. */
export interface ColourBand {
  readonly insideMm: number;
  readonly outsideMm: number;
}

const OUTSIDE_REACH_MM = 45;
/** Colours are learned and kept on a grid whose cells are this many pixels wide. */
export const COLOUR_GRID = 2;
const GRID = COLOUR_GRID;

/** Scratch for one picture, so that a fit allocates nothing a pass. */
export interface ColourScratch {
  readonly mask: Uint8Array;
  readonly toInside: Float32Array;
  readonly toOutside: Float32Array;
}

export function colourScratch(widthPx: number, heightPx: number): ColourScratch {
  const grid = Math.ceil(widthPx / GRID) * Math.ceil(heightPx / GRID);
  return {
    mask: new Uint8Array(grid),
    toInside: new Float32Array(grid),
    toOutside: new Float32Array(grid),
  };
}

/**
 * How likely every grid cell belongs to the body, 0 to 1, written into `posterior` (mean over the cell's pixels). Method: joint histograms of the
 * surely inside (fingerboard left out) and of a ring outside (neck left out), smoothed, Bayes with even odds.
 */
export function learnColours(
  lab: LabPicture,
  cells: Uint16Array,
  outline: Float64Array,
  seat: Seat,
  band: ColourBand,
  masked: Uint8Array | undefined,
  scratch: ColourScratch,
  posterior: Float32Array,
): void {
  const { widthPx, heightPx } = lab;
  const gridWidth = Math.ceil(widthPx / GRID);
  const gridHeight = Math.ceil(heightPx / GRID);
  const small = outline.map((value) => (value - (GRID - 1) / 2) / GRID);
  scratch.mask.fill(0);
  fillPolygon(scratch.mask, gridWidth, gridHeight, small, 1);
  distanceTo(scratch.mask, gridWidth, gridHeight, 1, scratch.toInside);
  distanceTo(scratch.mask, gridWidth, gridHeight, 0, scratch.toOutside);
  const mmPerCell = GRID / seat.pxPerMm;
  const inside = new Float64Array(CELLS);
  const outside = new Float64Array(CELLS);
  for (let gy = 0; gy < gridHeight; gy++)
    for (let gx = 0; gx < gridWidth; gx++) {
      const at = gy * gridWidth + gx;
      const pixel = gy * GRID * widthPx + gx * GRID;
      if (masked?.[pixel]) continue;
      const within = (scratch.toOutside[at] as number) * mmPerCell;
      const without = (scratch.toInside[at] as number) * mmPerCell;
      const isInside = within > band.insideMm;
      if (!isInside && !(without > band.outsideMm && without < OUTSIDE_REACH_MM)) continue;
      if (isInside ? onFingerboard(seat, gx * GRID, gy * GRID) : onNeck(seat, gx * GRID, gy * GRID)) continue;
      const colour = cells[pixel] as number;
      if (isInside) inside[colour] = (inside[colour] as number) + 1;
      else outside[colour] = (outside[colour] as number) + 1;
    }
  const odds = oddsOf(smooth(inside), smooth(outside));
  for (let gy = 0; gy < gridHeight; gy++)
    for (let gx = 0; gx < gridWidth; gx++) {
      const first = gy * GRID * widthPx + gx * GRID;
      const right = gx * GRID + 1 < widthPx ? 1 : 0;
      const below = gy * GRID + 1 < heightPx ? widthPx : 0;
      posterior[gy * gridWidth + gx] =
        0.25 *
        ((odds[cells[first] as number] as number) +
          (odds[cells[first + right] as number] as number) +
          (odds[cells[first + below] as number] as number) +
          (odds[cells[first + below + right] as number] as number));
    }
}

function onFingerboard(seat: Seat, x: number, y: number): boolean {
  const place = photoToBody(seat, x, y);
  return place.y > 215 && Math.abs(place.x) < 24;
}

function onNeck(seat: Seat, x: number, y: number): boolean {
  const place = photoToBody(seat, x, y);
  return place.y > 340 && Math.abs(place.x) < 26;
}

function oddsOf(inside: Float64Array, outside: Float64Array): Float32Array {
  const inTotal = total(inside) || 1;
  const outTotal = total(outside) || 1;
  const floor = 0.02 / CELLS;
  return Float32Array.from(inside, (count, i) => {
    const hi = count / inTotal + floor;
    return hi / (hi + (outside[i] as number) / outTotal + floor);
  });
}

function total(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

/** 1-2-1 along each of the three axes. */
function smooth(values: Float64Array): Float64Array {
  let from = values;
  for (const stride of [1, STEPS, STEPS * STEPS]) {
    const into = new Float64Array(CELLS);
    for (let i = 0; i < CELLS; i++) {
      const step = Math.floor(i / stride) % STEPS;
      const before = step > 0 ? (from[i - stride] as number) : 0;
      const after = step < STEPS - 1 ? (from[i + stride] as number) : 0;
      into[i] = 0.25 * before + 0.5 * (from[i] as number) + 0.25 * after;
    }
    from = into;
  }
  return from;
}
