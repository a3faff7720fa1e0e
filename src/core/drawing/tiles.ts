import type { Box, Point } from '../base/index.ts';
import { type Chain, sampleChain } from '../curve/index.ts';
import { lineEnters } from './lineEnters.ts';
import { seamMarks } from './seamMarks.ts';
import type { SheetFrame } from './sheetFrame.ts';

/** mm. What neighbouring tiles share. */
export const OVERLAP_MM = 10;
/** mm. Fine enough that a line near a tile's edge is never lost: the seams overlap a hundred times more. */
const SAMPLE_MM = 0.1;
/** One page's share of a large drawing: row 0 is the top row, `window` lies in the turned drawing's frame. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  readonly window: Box<'drawing'>;
}

/** Where two tiles meet; `marks` are the same points of the drawing on both. `first` is the left or the upper one. */
export interface Seam {
  readonly first: Tile;
  readonly second: Tile;
  readonly upright: boolean;
  readonly marks: readonly Point<'drawing'>[];
}

export interface TileGrid {
  readonly frame: SheetFrame;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
  readonly seams: readonly Seam[];
}

/** Row letter and column number, such as B2. */
export function tileName(tile: Tile): string {
  return `${String.fromCharCode(65 + (tile.row % 26))}${tile.column + 1}`;
}

/**
 * The tiles that hold all lines of a drawing, over its box, centred. A tile whose own share (the window less half
 * of each overlap) no line enters is left out, unless the rest would then hang together no more.
 */
export function tileGrid(
  chains: readonly Chain<'drawing'>[],
  box: Box<'drawing'>,
  frame: SheetFrame,
): TileGrid {
  const width = frame.window.max.x - frame.window.min.x;
  const height = frame.window.max.y - frame.window.min.y;
  const columns = tilesAcross(box.max.x - box.min.x, width);
  const rows = tilesAcross(box.max.y - box.min.y, height);
  const stepX = width - OVERLAP_MM;
  const stepY = height - OVERLAP_MM;
  const left = (box.min.x + box.max.x - (columns * stepX + OVERLAP_MM)) / 2;
  const top = (box.min.y + box.max.y + (rows * stepY + OVERLAP_MM)) / 2;
  const all = Array.from({ length: rows * columns }, (_, index): Tile => {
    const row = Math.floor(index / columns);
    const column = index % columns;
    const x = left + column * stepX;
    const y = top - row * stepY - height;
    return { row, column, window: { min: { x, y }, max: { x: x + width, y: y + height } } };
  });
  const inked = all.filter((tile) => {
    const own = ownShare(tile, rows, columns);
    return chains.some((chain) => passesThrough(chain, own));
  });
  const tiles = hangTogether(inked) ? inked : all;
  return { frame, rows, columns, tiles, seams: seamsOf(tiles, chains) };
}

function tilesAcross(lengthMm: number, windowMm: number): number {
  return Math.max(1, Math.ceil((lengthMm - OVERLAP_MM) / (windowMm - OVERLAP_MM)));
}

function ownShare(tile: Tile, rows: number, columns: number): Box<'drawing'> {
  const half = OVERLAP_MM / 2;
  const { min, max } = tile.window;
  return {
    min: {
      x: tile.column === 0 ? -Infinity : min.x + half,
      y: tile.row === rows - 1 ? -Infinity : min.y + half,
    },
    max: {
      x: tile.column === columns - 1 ? Infinity : max.x - half,
      y: tile.row === 0 ? Infinity : max.y - half,
    },
  };
}

function passesThrough(chain: Chain<'drawing'>, box: Box<'drawing'>): boolean {
  const wide: Box<'drawing'> = {
    min: { x: box.min.x - SAMPLE_MM, y: box.min.y - SAMPLE_MM },
    max: { x: box.max.x + SAMPLE_MM, y: box.max.y + SAMPLE_MM },
  };
  const points = sampleChain(chain, SAMPLE_MM);
  const last = chain.closed ? points.length : points.length - 1;
  for (let index = 0; index < last; index++) {
    const from = points[index];
    const to = points[(index + 1) % points.length];
    if (from && to && lineEnters(from, to, wide)) return true;
  }
  return false;
}

function neighbours(a: Tile, b: Tile): boolean {
  return Math.abs(a.row - b.row) + Math.abs(a.column - b.column) === 1;
}

function hangTogether(tiles: readonly Tile[]): boolean {
  const reached = new Set(tiles.slice(0, 1));
  for (const tile of reached)
    for (const other of tiles) if (!reached.has(other) && neighbours(tile, other)) reached.add(other);
  return reached.size === tiles.length;
}

function seamsOf(tiles: readonly Tile[], chains: readonly Chain<'drawing'>[]): Seam[] {
  const seams: Seam[] = [];
  for (const first of tiles)
    for (const second of tiles) {
      const beside = first.row === second.row && second.column === first.column + 1;
      const below = first.column === second.column && second.row === first.row + 1;
      if (!beside && !below) continue;
      const { min, max } = beside ? second.window : first.window;
      const shared: Box<'drawing'> = {
        min,
        max: beside ? { x: min.x + OVERLAP_MM, y: max.y } : { x: max.x, y: min.y + OVERLAP_MM },
      };
      seams.push({ first, second, upright: beside, marks: seamMarks(shared, beside, chains) });
    }
  return seams;
}
