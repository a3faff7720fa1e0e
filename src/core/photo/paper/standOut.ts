import { hypot, log, type Point } from '../../base/index.ts';
import { type Rectified, sceneToRectified } from '../camera/rectify.ts';
import { fillPolygon } from '../picture/fillPolygon.ts';
import { largestPiece } from '../picture/largestPiece.ts';
import type { PaperShares } from './paperLight.ts';
import type { ShapeGround } from './sheetGround.ts';

/** What stands out from the paper, on a coarse grid: 1 where the largest thing lies, its holes filled. */
export interface StandOut {
  readonly columns: number;
  readonly rows: number;
  /** Side of a cell in px of the picture; cell (c, r) has its centre at ((c + ½)·cellPx − ½, …). */
  readonly cellPx: number;
  readonly mask: Uint8Array;
  /** 1 where the thing itself is seen: without the gaps that were closed and the holes that were filled. */
  readonly bare: Uint8Array;
  readonly cells: number;
}

const CELL_MM = 1;
/** Colour counts this much more than light and dark: a shadow has none. */
const COLOUR_WEIGHT = 3;
/** In the same measure: what differs less from paper is not seen as a thing. */
const LEAST_CONTRAST = 0.09;
const STRONGEST = 1.2;
/** Cells over which gaps in a rim are closed before it is filled. */
const CLOSING = 3;

/**
 * The largest thing that stands out from the paper in the calm middle, or null when nothing does.
 * Method: distance from the paper's colour, a threshold between its two heaps (N. Otsu, A threshold selection method
 * from gray-level histograms, 1979), gaps closed, holes filled.
 */
export function standOut(shares: PaperShares, rectified: Rectified, ground: ShapeGround): StandOut | null {
  const cellPx = Math.max(1, Math.round(CELL_MM / rectified.mmPerPixel));
  const columns = Math.floor(shares.widthPx / cellPx);
  const rows = Math.floor(shares.heightPx / cellPx);
  const inCells = (polygon: readonly Point<'scene'>[]) =>
    polygon.flatMap((corner) => {
      const { x, y } = sceneToRectified(rectified, corner);
      return [(x + 0.5) / cellPx - 0.5, (y + 0.5) / cellPx - 0.5];
    });
  const open = new Uint8Array(columns * rows);
  fillPolygon(open, columns, rows, inCells(ground.calm), 1);
  const size = contrast(shares, columns, rows, cellPx);
  const threshold = Math.max(LEAST_CONTRAST, betweenHeaps(size, open));
  const mask = new Uint8Array(columns * rows);
  for (let i = 0; i < mask.length; i++) mask[i] = open[i] && size[i] > threshold ? 1 : 0;
  const closed = shrink(grow(mask, columns, rows, CLOSING), columns, rows, CLOSING);
  const filled = holesFilled(closed, columns, rows);
  const { inside, count } = largestPiece({ widthPx: columns, heightPx: rows, inside: filled });
  const bare = mask.map((one, i) => one & inside[i]);
  return count > 0 ? { columns, rows, cellPx, mask: inside, bare, cells: count } : null;
}

function contrast(shares: PaperShares, columns: number, rows: number, cellPx: number): Float32Array {
  const out = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const mean = [0, 0, 0];
      for (let j = 0; j < cellPx; j++)
        for (let i = 0; i < cellPx; i++) {
          const place = (row * cellPx + j) * shares.widthPx + column * cellPx + i;
          for (let c = 0; c < 3; c++) mean[c] += shares.planes[c][place];
        }
      const logs = mean.map((one) => log(one / (cellPx * cellPx)));
      const light = (logs[0] + logs[1] + logs[2]) / 3;
      const colour = hypot(logs[0] - light, logs[1] - light, logs[2] - light);
      out[row * columns + column] = Math.min(STRONGEST, hypot(light, COLOUR_WEIGHT * colour));
    }
  return out;
}

const BINS = 120;

function betweenHeaps(size: Float32Array, open: Uint8Array): number {
  const counts = new Float64Array(BINS);
  let total = 0;
  for (let i = 0; i < size.length; i++) {
    if (!open[i]) continue;
    counts[Math.min(BINS - 1, Math.floor((size[i] / STRONGEST) * BINS))]++;
    total++;
  }
  let whole = 0;
  counts.forEach((count, bin) => {
    whole += count * bin;
  });
  let [below, sumBelow, best, at] = [0, 0, -1, 0];
  for (let bin = 0; bin < BINS - 1; bin++) {
    below += counts[bin];
    sumBelow += counts[bin] * bin;
    if (below === 0 || below === total) continue;
    const gap = sumBelow / below - (whole - sumBelow) / (total - below);
    const spread = below * (total - below) * gap * gap;
    if (spread > best) [best, at] = [spread, bin + 1];
  }
  return (at / BINS) * STRONGEST;
}

function grow(mask: Uint8Array, columns: number, rows: number, steps: number): Uint8Array {
  return spreadOut(mask, columns, rows, steps, 1);
}

function shrink(mask: Uint8Array, columns: number, rows: number, steps: number): Uint8Array {
  return spreadOut(mask, columns, rows, steps, 0);
}

/** Cells of `value` take over their neighbours, `steps` times, in turn by sides and by corners so as to stay round. */
function spreadOut(mask: Uint8Array, columns: number, rows: number, steps: number, value: 0 | 1): Uint8Array {
  let from = mask;
  for (let step = 0; step < steps; step++) {
    const to = Uint8Array.from(from);
    for (let row = 1; row < rows - 1; row++)
      for (let column = 1; column < columns - 1; column++) {
        const at = row * columns + column;
        if (from[at] !== value) continue;
        for (const near of [at - 1, at + 1, at - columns, at + columns]) to[near] = value;
        if (step % 2 === 0) continue;
        for (const near of [at - columns - 1, at - columns + 1, at + columns - 1, at + columns + 1])
          to[near] = value;
      }
    from = to;
  }
  return from;
}

/** Everything that the border of the grid cannot reach. */
function holesFilled(mask: Uint8Array, columns: number, rows: number): Uint8Array {
  const outside = new Uint8Array(mask.length);
  const stack: number[] = [];
  const visit = (at: number): void => {
    if (mask[at] || outside[at]) return;
    outside[at] = 1;
    stack.push(at);
  };
  for (let column = 0; column < columns; column++) {
    visit(column);
    visit((rows - 1) * columns + column);
  }
  for (let row = 0; row < rows; row++) {
    visit(row * columns);
    visit(row * columns + columns - 1);
  }
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    const column = at % columns;
    if (column > 0) visit(at - 1);
    if (column < columns - 1) visit(at + 1);
    if (at >= columns) visit(at - columns);
    if (at < mask.length - columns) visit(at + columns);
  }
  return outside.map((one) => 1 - one);
}
