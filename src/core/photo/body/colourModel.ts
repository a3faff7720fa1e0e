import { distanceToOther, fillPolygon } from '../picture/fillPolygon.ts';
import type { LabPicture } from '../picture/labPicture.ts';
import { bodyAffine, type Seat } from './bodySeat.ts';

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
  readonly distance: Float32Array;
  readonly inside: Float64Array;
  readonly outside: Float64Array;
  readonly between: Float64Array;
  readonly odds: Float32Array;
}

export function colourScratch(widthPx: number, heightPx: number): ColourScratch {
  const grid = Math.ceil(widthPx / GRID) * Math.ceil(heightPx / GRID);
  return {
    mask: new Uint8Array(grid),
    distance: new Float32Array(grid),
    inside: new Float64Array(CELLS),
    outside: new Float64Array(CELLS),
    between: new Float64Array(CELLS),
    odds: new Float32Array(CELLS),
  };
}

/** A picture's colours with what is kept of them between passes. */
export interface ColourSource {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly cells: Uint16Array;
  readonly masked: Uint8Array | undefined;
  readonly scratch: ColourScratch;
  /** The body's colour odds on the colour grid. */
  readonly posterior: Float32Array;
}

/**
 * How likely every grid cell near the outline belongs to the body, 0 to 1, written into `posterior` (mean over the
 * cell's pixels; cells more than the reach of the outside away keep what they had). Method: joint histograms of the
 * surely inside (fingerboard left out) and of a ring outside (neck left out), smoothed, Bayes with even odds.
 */
export function learnColours(
  source: ColourSource,
  outline: Float64Array,
  seat: Seat,
  band: ColourBand,
): void {
  const { scratch } = source;
  const mmPerCell = GRID / seat.pxPerMm;
  const box = gridRound(source, outline, OUTSIDE_REACH_MM / mmPerCell + 2);
  const small = outline.map((value, i) => (value - (GRID - 1) / 2) / GRID - (i % 2 === 0 ? box.x : box.y));
  scratch.mask.fill(0, 0, box.wide * box.high);
  fillPolygon(scratch.mask, box.wide, box.high, small, 1);
  distanceToOther(scratch.mask, box.wide, box.high, scratch.distance);
  countColours(source, seat, band, box);
  smooth(scratch.inside, scratch.between);
  smooth(scratch.outside, scratch.between);
  fillOdds(scratch);
  spreadOdds(source, box);
}

/** A box of the colour grid, in cells. */
interface GridBox {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
}

function gridRound({ widthPx, heightPx }: ColourSource, outline: Float64Array, reachCells: number): GridBox {
  const range = (first: 0 | 1, cells: number): readonly [from: number, to: number] => {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = first; i < outline.length; i += 2) {
      least = Math.min(least, outline[i]);
      most = Math.max(most, outline[i]);
    }
    const from = Math.min(cells - 1, Math.max(0, Math.floor(least / GRID - reachCells)));
    return [from, Math.min(cells, Math.max(from + 1, Math.ceil(most / GRID + reachCells)))];
  };
  const [left, right] = range(0, Math.ceil(widthPx / GRID));
  const [top, low] = range(1, Math.ceil(heightPx / GRID));
  return { x: left, y: top, wide: right - left, high: low - top };
}

function countColours(
  { widthPx, cells, masked, scratch }: ColourSource,
  seat: Seat,
  band: ColourBand,
  box: GridBox,
): void {
  const { mask, distance, inside, outside } = scratch;
  inside.fill(0);
  outside.fill(0);
  const cellsPerMm = seat.pxPerMm / GRID;
  const deep = band.insideMm * cellsPerMm;
  const off = band.outsideMm * cellsPerMm;
  const far = OUTSIDE_REACH_MM * cellsPerMm;
  const way = bodyAffine(seat);
  for (let row = 0; row < box.high; row++)
    for (let column = 0; column < box.wide; column++) {
      const at = row * box.wide + column;
      const isInside = mask[at] === 1;
      const away = distance[at];
      if (isInside ? away <= deep : away <= off || away >= far) continue;
      const px = (box.x + column) * GRID;
      const py = (box.y + row) * GRID;
      const pixel = py * widthPx + px;
      if (masked?.[pixel]) continue;
      const y = way.y0 + way.yx * px + way.yy * py;
      const across = Math.abs(way.x0 + way.xx * px + way.xy * py);
      if (isInside ? y > BOARD_FROM_MM && across < BOARD_HALF_MM : y > NECK_FROM_MM && across < NECK_HALF_MM)
        continue;
      const histogram = isInside ? inside : outside;
      histogram[cells[pixel]]++;
    }
}

/** mm. Where the fingerboard lies over the plate, and the neck beyond it. */
const BOARD_FROM_MM = 215;
const BOARD_HALF_MM = 24;
const NECK_FROM_MM = 340;
const NECK_HALF_MM = 26;

function fillOdds({ inside, outside, odds }: ColourScratch): void {
  const inTotal = total(inside) || 1;
  const outTotal = total(outside) || 1;
  const floor = 0.02 / CELLS;
  for (let i = 0; i < CELLS; i++) {
    const hi = inside[i] / inTotal + floor;
    odds[i] = hi / (hi + outside[i] / outTotal + floor);
  }
}

function spreadOdds({ widthPx, heightPx, cells, scratch, posterior }: ColourSource, box: GridBox): void {
  const gridWidth = Math.ceil(widthPx / GRID);
  const { odds } = scratch;
  for (let gy = box.y; gy < box.y + box.high; gy++) {
    const below = gy * GRID + 1 < heightPx ? widthPx : 0;
    for (let gx = box.x; gx < box.x + box.wide; gx++) {
      const first = gy * GRID * widthPx + gx * GRID;
      const right = gx * GRID + 1 < widthPx ? 1 : 0;
      posterior[gy * gridWidth + gx] =
        0.25 *
        (odds[cells[first]] +
          odds[cells[first + right]] +
          odds[cells[first + below]] +
          odds[cells[first + below + right]]);
    }
  }
}

function total(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum;
}

/** 1-2-1 along each of the three axes, in place; nothing comes in over the ends. */
function smooth(values: Float64Array, between: Float64Array): void {
  for (let stride = 1; stride < CELLS; stride *= STEPS) {
    between.set(values);
    for (let i = 0; i < CELLS; i++) {
      const step = Math.trunc(i / stride) % STEPS;
      const before = step > 0 ? between[i - stride] : 0;
      const after = step < STEPS - 1 ? between[i + stride] : 0;
      values[i] = 0.25 * (before + after) + 0.5 * between[i];
    }
  }
}
