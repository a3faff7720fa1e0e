import { hypot, letGo } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { HoleFrame } from './holeFrame.ts';
import type { LightSampler } from './lightSampler.ts';

/** The part of a half body where a sound hole lies, square on, and which of it is dark as a hole. Lengths in 355ths. */
export interface HolePatch {
  readonly columns: number;
  readonly rows: number;
  /** Light, wood's light nearby, and 1 where the place belongs to the hole. Row by row, y upward. */
  readonly light: Float32Array;
  readonly wood: Float32Array;
  readonly hole: Uint8Array;
  /** Median light of the hole. */
  readonly darkLight: number;
}

/** Usual course of the hole's middle line from the upper to the lower eye, 355ths (twelve holes measured on photographs). */
const USUAL_COURSE: readonly (readonly [number, number])[] = [
  [24, 190],
  [25, 196],
  [30, 197],
  [36, 186],
  [41, 165],
  [45, 147],
  [50, 132],
  [56, 127],
  [63, 131],
  [62, 138],
];
export const PATCH = { left: 8, right: 84, low: 98, high: 226, step: 0.4 } as const;

/** Share of the wood's light below which a place is dark as a hole. */
const DARK_SHARE = 0.5;
/** 355ths round a place over which the wood's light is taken, and the share of its places that counts as light. */
const WOOD_ROUND = 7;
/** 355ths inside the outline where a hole cannot be: rim and purfling. */
const RIM = 6.5;
/** 355ths: how far from the usual course a hole's places may lie, and a stray piece of it. */
const MOST_ASIDE = 12;
const PIECE_ASIDE = 9;
/** Square 355ths, and 355ths along the body. */
const [LEAST_AREA, MOST_AREA, LEAST_PIECE] = [150, 1300, 4];
const LEAST_HEIGHT = 40;
/** 355ths between two pieces of one hole: what a string or the bridge's foot covers. */
export const MOST_GAP = 5;

/** The patch with its hole; null where nothing dark has the size and place of one. */
export function holePatch(
  lightAt: LightSampler,
  frame: HoleFrame,
  edge: readonly EdgePoint[],
): HolePatch | null {
  const { left, right, low, high, step } = PATCH;
  const columns = Math.round((right - left) / step) + 1;
  const rows = Math.round((high - low) / step) + 1;
  const light = new Float32Array(columns * rows);
  const rimAt = innerRim(edge, frame);
  const within = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const y = low + row * step;
    const rim = rimAt(y);
    for (let column = 0; column < columns; column++) {
      const x = left + column * step;
      light[row * columns + column] = meanLight(lightAt, frame, x, y);
      within[row * columns + column] = x < rim ? 1 : 0;
    }
  }
  const size = { columns, rows };
  const wood = woodLight(light, within, size);
  const dark = within.map((here, i) => (here && light[i] < DARK_SHARE * wood[i] ? 1 : 0));
  const hole = holePieces(dark, size);
  if (hole === null) return null;
  const values = light.filter((_, i) => hole[i] === 1).sort();
  return { columns, rows, light, wood, hole, darkLight: values[values.length >> 1] };
}

function meanLight(lightAt: LightSampler, frame: HoleFrame, x: number, y: number): number {
  let sum = 0;
  for (const dx of [-1, 1])
    for (const dy of [-1, 1]) {
      const at = frame.toPhoto(x + (dx * PATCH.step) / 4, y + (dy * PATCH.step) / 4);
      sum += lightAt(at.x, at.y);
    }
  return sum / 4;
}

/** How far out at a height the plate reaches inside its rim. */
function innerRim(edge: readonly EdgePoint[], frame: HoleFrame): (y: number) => number {
  const inner = edge.map(({ point, normal }) =>
    frame.fromPhoto({
      x: point.x - RIM * frame.pxPerUnit * normal.x,
      y: point.y - RIM * frame.pxPerUnit * normal.y,
    }),
  );
  const half = inner.filter(([x]) => x > PATCH.left);
  return (y) => {
    let least = Number.POSITIVE_INFINITY;
    for (const [px, py] of half) if (Math.abs(py - y) < 1.5) least = Math.min(least, px);
    return least;
  };
}

interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** Mean light round each place of what is brighter than the middle of the neighbourhood's range. */
function woodLight(light: Float32Array, within: Uint8Array, { columns, rows }: Size): Float32Array {
  const reach = Math.round(WOOD_ROUND / PATCH.step);
  const first = meanRound(light, within, { columns, rows }, 2 * reach);
  const bright = within.map((here, i) => (here && light[i] > first[i] * 0.75 ? 1 : 0));
  letGo(first);
  return meanRound(light, bright, { columns, rows }, reach);
}

/** Mean of the marked values in a square round each place; of all marked values where there are none. */
function meanRound(
  values: Float32Array,
  marked: Uint8Array,
  { columns, rows }: Size,
  reach: number,
): Float32Array {
  // What lies above and to the left of each place, in all: a square's sum is told by its four corners.
  const sums = new Float64Array((columns + 1) * (rows + 1));
  const counts = new Float64Array((columns + 1) * (rows + 1));
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const from = row * columns + column;
      const to = (row + 1) * (columns + 1) + column + 1;
      const share = marked[from];
      sums[to] = sums[to - 1] + sums[to - columns - 1] - sums[to - columns - 2] + share * values[from];
      counts[to] = counts[to - 1] + counts[to - columns - 1] - counts[to - columns - 2] + share;
    }
  const all = sums[sums.length - 1] / Math.max(1, counts[counts.length - 1]);
  const out = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const low = Math.max(0, row - reach) * (columns + 1);
      const high = Math.min(rows, row + reach + 1) * (columns + 1);
      const left = Math.max(0, column - reach);
      const right = Math.min(columns, column + reach + 1);
      const count = counts[high + right] - counts[low + right] - counts[high + left] + counts[low + left];
      const sum = sums[high + right] - sums[low + right] - sums[high + left] + sums[low + left];
      out[row * columns + column] = count > 0 ? sum / count : all;
    }
  letGo(sums, counts);
  return out;
}

interface Piece {
  readonly cells: readonly number[];
  /** Cells near the usual course less those far from it. */
  readonly worth: number;
  readonly nearShare: number;
  readonly lowY: number;
  readonly highY: number;
}

function holePieces(dark: Uint8Array, size: Size): Uint8Array | null {
  const cell = PATCH.step * PATCH.step;
  const pieces = piecesOf(dark, size).filter((piece) => piece.cells.length * cell >= LEAST_PIECE);
  const rest = new Set(
    pieces.filter((piece) => piece.nearShare > 0.8 && piece.cells.length * cell <= MOST_AREA),
  );
  const main = [...rest].reduce<Piece | null>((a, b) => (a === null || b.worth > a.worth ? b : a), null);
  if (main === null) return null;
  rest.delete(main);
  const chosen = [main];
  for (let grown = true; grown; ) {
    grown = false;
    for (const piece of rest)
      if (chosen.some((other) => gapBetween(piece, other, size) <= MOST_GAP)) {
        chosen.push(piece);
        rest.delete(piece);
        grown = true;
      }
  }
  const area = chosen.reduce((sum, piece) => sum + piece.cells.length, 0) * cell;
  const height = Math.max(...chosen.map((one) => one.highY)) - Math.min(...chosen.map((one) => one.lowY));
  if (area < LEAST_AREA || area > MOST_AREA || height < LEAST_HEIGHT) return null;
  const hole = new Uint8Array(dark.length);
  for (const piece of chosen) for (const at of piece.cells) hole[at] = 1;
  return hole;
}

function piecesOf(dark: Uint8Array, { columns, rows }: Size): readonly Piece[] {
  const seen = new Uint8Array(dark.length);
  const pieces: Piece[] = [];
  for (let start = 0; start < dark.length; start++) {
    if (!dark[start] || seen[start]) continue;
    const cells = [start];
    seen[start] = 1;
    for (let next = 0; next < cells.length; next++) {
      const [column, row] = [cells[next] % columns, Math.floor(cells[next] / columns)];
      for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++)
        for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
          const at = r * columns + c;
          if (!dark[at] || seen[at]) continue;
          seen[at] = 1;
          cells.push(at);
        }
    }
    pieces.push(pieceOf(cells, columns));
  }
  return pieces;
}

function pieceOf(cells: readonly number[], columns: number): Piece {
  let worth = 0;
  let near = 0;
  let [lowY, highY] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const at of cells) {
    const y = PATCH.low + Math.floor(at / columns) * PATCH.step;
    const aside = fromCourse(PATCH.left + (at % columns) * PATCH.step, y);
    worth += aside < PIECE_ASIDE ? 1 : -1;
    if (aside < MOST_ASIDE) near++;
    lowY = Math.min(lowY, y);
    highY = Math.max(highY, y);
  }
  return { cells, worth, nearShare: near / cells.length, lowY, highY };
}

function fromCourse(x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < USUAL_COURSE.length; i++) {
    const [a, b] = [USUAL_COURSE[i], USUAL_COURSE[i + 1]];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const share = Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
    least = Math.min(least, hypot(x - a[0] - share * dx, y - a[1] - share * dy));
  }
  return least;
}

function gapBetween(a: Piece, b: Piece, { columns }: Size): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.cells.length; i += 2)
    for (let j = 0; j < b.cells.length; j += 2) {
      const dx = (a.cells[i] % columns) - (b.cells[j] % columns);
      const dy = Math.floor(a.cells[i] / columns) - Math.floor(b.cells[j] / columns);
      least = Math.min(least, dx * dx + dy * dy);
    }
  return Math.sqrt(least) * PATCH.step;
}
