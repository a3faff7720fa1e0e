import { Bug } from '../../base/index.ts';
import { MARKER_BITS, MARKER_CELLS, markerCellIsWhite } from '../../knowledge/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { brightnessAt } from '../picture/grayPicture.ts';
import type { Quad } from './patchQuad.ts';

/** A code that was read in a quad of the picture. */
export interface ReadCode {
  readonly id: number;
  /** Which corner of the quad is the code's own upper left. */
  readonly firstCorner: number;
  /** The code reads only as in a mirror; `firstCorner` then says nothing. */
  readonly isMirrored: boolean;
}

/** What reads the code in a quad; null where there is none of ours. */
export type CodeReader = (picture: GrayPicture, quad: Quad) => ReadCode | null;

const SIDE = MARKER_CELLS + 2;
const BITS = MARKER_CELLS * MARKER_CELLS;

/**
 * A reader of all codes of the dictionary.
 *
 * Method: the brightness in the middle of each cell, as a plane perspective places it; the border must be dark and the
 * cells must be a code's, at most one of them misread, at one of three levels between the border and the lightest cells.
 */
export function codeReader(): CodeReader {
  const codes = new Map<number, number>();
  for (let id = 0; id < MARKER_BITS.length; id++)
    for (let turn = 0; turn < 4; turn++) codes.set(turnedBits(id, turn), 4 * id + turn);
  return (picture, quad) => {
    const cells = cellBrightness(picture, quad);
    const levels = levelsOf(cells);
    if (levels === null) return null;
    for (const share of LEVEL_SHARES) {
      const read = bitsAbove(cells, levels.black + share * (levels.white - levels.black));
      if (read === null) continue;
      const straight = lookUp(codes, read);
      if (straight !== null) return { id: straight >> 2, firstCorner: straight & 3, isMirrored: false };
      const mirrored = codes.get(mirroredBits(read));
      if (mirrored !== undefined) return { id: mirrored >> 2, firstCorner: 0, isMirrored: true };
    }
    return null;
  };
}

/** Between black and white: the middle first; ink that spread or a lens that glows moves the best level. */
const LEVEL_SHARES = [0.5, 0.38, 0.62];
/** Levels of 255. */
const LEAST_CONTRAST = 12;
/** Of the 24 border cells: a speck of dust. */
const MOST_LIGHT_BORDER = 1;

/** The code's bits as they read when quad corner 0 shows the code's corner −`turn`. */
function turnedBits(id: number, turn: number): number {
  let bits = 0;
  for (let row = 0; row < MARKER_CELLS; row++)
    for (let column = 0; column < MARKER_CELLS; column++) {
      const [fromRow, fromColumn] = turned(row, column, turn);
      bits = bits * 2 + (markerCellIsWhite(id, fromRow, fromColumn) ? 1 : 0);
    }
  return bits;
}

/** The code's own cell that shows at a row and column, the quad's corner `turn` being the code's upper left. */
function turned(row: number, column: number, turn: number): [number, number] {
  const last = MARKER_CELLS - 1;
  switch (turn) {
    case 0:
      return [row, column];
    case 1:
      return [last - column, row];
    case 2:
      return [last - row, last - column];
    default:
      return [column, last - row];
  }
}

function mirroredBits(bits: number): number {
  let out = 0;
  for (let place = 0; place < BITS; place++) {
    const row = Math.floor(place / MARKER_CELLS);
    const from = row * MARKER_CELLS + (MARKER_CELLS - 1 - (place % MARKER_CELLS));
    out = out * 2 + ((bits >> (BITS - 1 - from)) & 1);
  }
  return out;
}

function lookUp(codes: ReadonlyMap<number, number>, bits: number): number | null {
  const exact = codes.get(bits);
  if (exact !== undefined) return exact;
  for (let place = 0; place < BITS; place++) {
    const near = codes.get(bits ^ (1 << place));
    if (near !== undefined) return near;
  }
  return null;
}

function bitsAbove(cells: Float64Array, level: number): number | null {
  let [bits, light] = [0, 0];
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++) {
      const isWhite = cells[row * SIDE + column] > level;
      if (isBorder(row, column)) light += isWhite ? 1 : 0;
      else bits = bits * 2 + (isWhite ? 1 : 0);
    }
  return light > MOST_LIGHT_BORDER ? null : bits;
}

function isBorder(row: number, column: number): boolean {
  return row === 0 || column === 0 || row === SIDE - 1 || column === SIDE - 1;
}

/** The border's mean and that of the five lightest cells; null where they hardly differ. */
function levelsOf(cells: Float64Array): { black: number; white: number } | null {
  let black = 0;
  const inner: number[] = [];
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++) {
      const value = cells[row * SIDE + column];
      if (isBorder(row, column)) black += value / (SIDE * SIDE - BITS);
      else inner.push(value);
    }
  const lightest = inner.sort((a, b) => b - a).slice(0, 5);
  const white = lightest.reduce((sum, one) => sum + one, 0) / lightest.length;
  return white - black < LEAST_CONTRAST ? null : { black, white };
}

function cellBrightness(picture: GrayPicture, quad: Quad): Float64Array {
  const place = squareToQuad(quad);
  const cells = new Float64Array(SIDE * SIDE);
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++) {
      let sum = 0;
      for (const [du, dv] of LOOKS) {
        const [x, y] = place((column + 0.5 + du) / SIDE, (row + 0.5 + dv) / SIDE);
        sum += brightnessAt(picture, x, y);
      }
      cells[row * SIDE + column] = sum / LOOKS.length;
    }
  return cells;
}

/** Where in a cell its brightness is taken: its middle and halfway to its corners' half. */
const LOOKS = [
  [0, 0],
  [-0.2, -0.2],
  [0.2, -0.2],
  [-0.2, 0.2],
  [0.2, 0.2],
] as const;

/** The perspective from the unit square, corners clockwise from (0, 0), to a quad. */
function squareToQuad([p0, p1, p2, p3]: Quad): (u: number, v: number) => readonly [number, number] {
  const [dx1, dy1] = [p1.x - p2.x, p1.y - p2.y];
  const [dx2, dy2] = [p3.x - p2.x, p3.y - p2.y];
  const [sx, sy] = [p0.x - p1.x + p2.x - p3.x, p0.y - p1.y + p2.y - p3.y];
  const determinant = dx1 * dy2 - dx2 * dy1;
  if (determinant === 0) throw new Bug('a quad without area was taken for a code');
  const g = (sx * dy2 - dx2 * sy) / determinant;
  const h = (dx1 * sy - sx * dy1) / determinant;
  const [a, b] = [p1.x - p0.x + g * p1.x, p3.x - p0.x + h * p3.x];
  const [d, e] = [p1.y - p0.y + g * p1.y, p3.y - p0.y + h * p3.y];
  return (u, v) => {
    const depth = g * u + h * v + 1;
    return [(a * u + b * v + p0.x) / depth, (d * u + e * v + p0.y) / depth];
  };
}
