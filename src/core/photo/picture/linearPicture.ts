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
    table[code] = value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }
  return table;
}

/**
 * The picture in linear light, shrunk by averaging areas so that a side has `factor` times as many pixels
 * (factor ≤ 1). Pixel centres obey small = (large + ½) · factor − ½ up to the rounding of the size.
 */
export function shrinkToLinear(picture: Picture, factor: number): LinearPicture {
  const widthPx = Math.max(1, Math.round(picture.widthPx * factor));
  const heightPx = Math.max(1, Math.round(picture.heightPx * factor));
  const table = linearLightTable();
  const row = new Float32Array(picture.widthPx);
  return shrink(picture.widthPx, picture.heightPx, widthPx, heightPx, (channel, y) => {
    let at = y * picture.widthPx * 3 + channel;
    for (let x = 0; x < picture.widthPx; x++, at += 3) row[x] = table[picture.rgb[at] as number] as number;
    return row;
  });
}

/** The same by `factor` from a picture already in linear light. */
export function shrinkLinear(picture: LinearPicture, factor: number): LinearPicture {
  if (factor >= 1) return picture;
  const widthPx = Math.max(1, Math.round(picture.widthPx * factor));
  const heightPx = Math.max(1, Math.round(picture.heightPx * factor));
  return shrink(picture.widthPx, picture.heightPx, widthPx, heightPx, (channel, y) =>
    (picture.planes[channel] as Float32Array).subarray(y * picture.widthPx, (y + 1) * picture.widthPx),
  );
}

function shrink(
  fromWidth: number,
  fromHeight: number,
  widthPx: number,
  heightPx: number,
  rowOf: (channel: 0 | 1 | 2, y: number) => Float32Array,
): LinearPicture {
  const across = spreadOf(fromWidth, widthPx);
  const down = spreadOf(fromHeight, heightPx);
  const plane = (channel: 0 | 1 | 2): Float32Array => {
    const out = new Float32Array(widthPx * heightPx);
    const narrow = new Float32Array(widthPx);
    for (let y = 0; y < fromHeight; y++) {
      narrowRow(rowOf(channel, y), across, narrow);
      addRow(narrow, out, down, y, widthPx, heightPx);
    }
    return out;
  };
  return { widthPx, heightPx, planes: [plane(0), plane(1), plane(2)] };
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

function narrowRow(row: Float32Array, across: Spread, into: Float32Array): void {
  into.fill(0);
  const last = into.length - 1;
  for (let x = 0; x < row.length; x++) {
    const to = across.target[x] as number;
    const value = row[x] as number;
    into[to] = (into[to] as number) + value * (across.here[x] as number);
    if (to < last) into[to + 1] = (into[to + 1] as number) + value * (across.next[x] as number);
  }
}

function addRow(
  row: Float32Array,
  out: Float32Array,
  down: Spread,
  y: number,
  widthPx: number,
  heightPx: number,
): void {
  const first = down.target[y] as number;
  const here = down.here[y] as number;
  const next = first + 1 < heightPx ? (down.next[y] as number) : 0;
  const at = first * widthPx;
  for (let x = 0; x < widthPx; x++) {
    const value = row[x] as number;
    out[at + x] = (out[at + x] as number) + value * here;
    if (next > 0) out[at + widthPx + x] = (out[at + widthPx + x] as number) + value * next;
  }
}
