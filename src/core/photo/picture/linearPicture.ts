import { power } from '../../base/index.ts';
import type { Picture } from './picture.ts';

/** A picture in linear light, one plane a colour, each 0 to 1, row by row. */
export interface LinearPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly planes: readonly [Float32Array, Float32Array, Float32Array];
}

/** The 256 eight-bit sRGB codes in linear light (IEC 61966-2-1). */
export function linearLightTable(): Float32Array {
  const table = new Float32Array(256);
  for (let code = 0; code < 256; code++) {
    const value = code / 255;
    table[code] = value <= 0.04045 ? value / 12.92 : power((value + 0.055) / 1.055, 2.4);
  }
  return table;
}

/**
 * The picture in linear light, shrunk by averaging areas so that a side has `factor` times as many pixels
 * (factor ≤ 1). Pixel centres obey small = (large + ½) · factor − ½ up to the rounding of the size.
 */
export function shrinkToLinear(picture: Picture, factor: number): LinearPicture {
  const { widthPx: fromWidth, heightPx: fromHeight, rgb } = picture;
  const table = linearLightTable();
  return shrink(fromWidth, fromHeight, factor, (y, row) => {
    const from = 3 * y * fromWidth;
    for (let i = 0; i < row.length; i++) row[i] = table[rgb[from + i]];
  });
}

/** The same by `factor` from a picture already in linear light. */
export function shrinkLinear(picture: LinearPicture, factor: number): LinearPicture {
  if (factor >= 1) return picture;
  const [red, green, blue] = picture.planes;
  return shrink(picture.widthPx, picture.heightPx, factor, (y, row) => {
    let at = y * picture.widthPx;
    for (let i = 0; i < row.length; i += 3, at++) {
      row[i] = red[at];
      row[i + 1] = green[at];
      row[i + 2] = blue[at];
    }
  });
}

/** `readRow` writes red, green, blue in linear light of every pixel of a row. */
function shrink(
  fromWidth: number,
  fromHeight: number,
  factor: number,
  readRow: (y: number, row: Float32Array) => void,
): LinearPicture {
  const widthPx = Math.max(1, Math.round(fromWidth * factor));
  const heightPx = Math.max(1, Math.round(fromHeight * factor));
  const across = spreadOf(fromWidth, widthPx);
  const down = spreadOf(fromHeight, heightPx);
  const planes = [0, 1, 2].map(
    () => new Float32Array(widthPx * heightPx),
  ) as unknown as LinearPicture['planes'];
  const row = new Float32Array(3 * fromWidth);
  const narrow = new Float32Array(3 * widthPx);
  for (let y = 0; y < fromHeight; y++) {
    readRow(y, row);
    narrowRow(row, across, narrow);
    const first = down.target[y];
    addRow(narrow, planes, first * widthPx, widthPx, down.here[y]);
    if (down.next[y] > 0 && first + 1 < heightPx)
      addRow(narrow, planes, (first + 1) * widthPx, widthPx, down.next[y]);
  }
  return { widthPx, heightPx, planes };
}

/** For every source cell: the target cell it starts in, and the shares that go there and to the next one. */
interface Spread {
  readonly target: Int32Array;
  readonly here: Float32Array;
  readonly next: Float32Array;
}

function spreadOf(from: number, to: number): Spread {
  const ratio = to / from;
  const target = new Int32Array(from);
  const here = new Float32Array(from);
  const next = new Float32Array(from);
  for (let i = 0; i < from; i++) {
    const first = Math.min(to - 1, Math.floor(i * ratio));
    const end = (i + 1) * ratio;
    const beyond = Math.max(0, Math.min(end, to) - (first + 1));
    target[i] = first;
    next[i] = beyond;
    here[i] = ratio - beyond;
  }
  return { target, here, next };
}

function narrowRow(row: Float32Array, { target, here, next }: Spread, into: Float32Array): void {
  const count = target.length;
  let [red, green, blue] = [0, 0, 0];
  for (let x = 0, from = 0; x < count; x++, from += 3) {
    const share = here[x];
    red += row[from] * share;
    green += row[from + 1] * share;
    blue += row[from + 2] * share;
    if (x + 1 < count && target[x + 1] === target[x]) continue;
    const to = 3 * target[x];
    into[to] = red;
    into[to + 1] = green;
    into[to + 2] = blue;
    const rest = next[x];
    red = row[from] * rest;
    green = row[from + 1] * rest;
    blue = row[from + 2] * rest;
  }
}

function addRow(
  row: Float32Array,
  [red, green, blue]: LinearPicture['planes'],
  at: number,
  widthPx: number,
  share: number,
): void {
  for (let x = 0, from = 0; x < widthPx; x++, from += 3) {
    red[at + x] += row[from] * share;
    green[at + x] += row[from + 1] * share;
    blue[at + x] += row[from + 2] * share;
  }
}
