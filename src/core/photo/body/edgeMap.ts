import { Bug, exp, letGo } from '../../base/index.ts';
import type { LabPicture } from '../picture/labPicture.ts';

/**
 * The gradient of the strongest colour channel at every pixel, Lab units a px; zero on masked pixels and on the
 * picture's rim. It is made tile by tile as it is asked for: most of a picture is never looked at.
 */
export interface EdgeMap {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Across and down, row by row. Only the map writes them, where it is looked at; they have no bytes after `forget`. */
  readonly gx: Float32Array;
  readonly gy: Float32Array;
  /** Makes sure that the gradient stands at the pixel (x, y), the next one to the right and the two below. */
  readonly look: (x: number, y: number) => void;
  /** Nobody looks at it any more: its room is given back. */
  readonly forget: () => void;
}

/** How much more a step in a or b counts, squared, than the same step in lightness: colour is less in shadow. */
const CHROMA_WEIGHT = 1.2;
/** Pixels along the side of a tile, as a power of two. */
const TILE_BITS = 5;
const TILE_PX = 1 << TILE_BITS;

/** The gradient after a Gaussian blur of `sigmaPx`, per pixel from the channel where it is largest. */
export function edgeMapOf(lab: LabPicture, sigmaPx: number, masked?: Uint8Array): EdgeMap {
  const { widthPx, heightPx } = lab;
  const across = Math.ceil(widthPx / TILE_PX);
  const known = new Uint8Array(across * Math.ceil(heightPx / TILE_PX));
  const gx = new Float32Array(widthPx * heightPx);
  const gy = new Float32Array(widthPx * heightPx);
  const room = tileRoom(gaussianKernel(sigmaPx));
  let isForgotten = false;
  const look = (x: number, y: number): void => {
    const tile = (y >> TILE_BITS) * across + (x >> TILE_BITS);
    if (known[tile] === 1) return;
    if (isForgotten) throw new Bug('an edge map is looked at after it was forgotten');
    known[tile] = 1;
    fillTile({ lab, masked, gx, gy }, (x >> TILE_BITS) * TILE_PX, (y >> TILE_BITS) * TILE_PX, room);
  };
  const forget = (): void => {
    isForgotten = true;
    known.fill(0);
    letGo(gx, gy);
  };
  return { widthPx, heightPx, gx, gy, look, forget };
}

/** Makes the whole map. */
export function lookEverywhere(map: EdgeMap): EdgeMap {
  for (let y = 0; y < map.heightPx; y += TILE_PX)
    for (let x = 0; x < map.widthPx; x += TILE_PX) map.look(x, y);
  return map;
}

/** Scratch for one tile with the rim that its blur and its slopes reach into; written anew for every plane of every tile. */
interface TileRoom {
  readonly kernel: Float64Array;
  /** Pixels of the rim, and of the side of the whole square. */
  readonly rim: number;
  readonly side: number;
  readonly plain: Float32Array;
  readonly between: Float32Array;
  readonly soft: Float32Array;
  readonly largest: Float32Array;
}

/** A tile answers for one pixel more to the right and below, so that a look between pixels needs one tile only. */
const ANSWERED_PX = TILE_PX + 1;

function tileRoom(kernel: Float64Array): TileRoom {
  const rim = kernel.length;
  const side = ANSWERED_PX + 2 * rim;
  const room = () => new Float32Array(side * side);
  return {
    kernel,
    rim,
    side,
    plain: room(),
    between: room(),
    soft: room(),
    largest: new Float32Array(ANSWERED_PX * ANSWERED_PX),
  };
}

/** What a tile is made from, and the gradients of the whole picture that it is written into. */
interface EdgeTarget {
  readonly lab: LabPicture;
  readonly masked: Uint8Array | undefined;
  readonly gx: Float32Array;
  readonly gy: Float32Array;
}

/** Writes one tile of `gx` and `gy`, whose left upper pixel is (left, top), with the pixel more that it answers for. */
function fillTile(target: EdgeTarget, left: number, top: number, room: TileRoom): void {
  const { lab, masked, gx, gy } = target;
  const { widthPx, heightPx } = lab;
  room.largest.fill(0);
  for (const plane of [lab.lightness, lab.a, lab.b]) {
    fetchPlane(plane, widthPx, heightPx, left - room.rim, top - room.rim, room);
    blurTile(room);
    keepLarger(target, left, top, plane === lab.lightness ? 1 : CHROMA_WEIGHT, room);
  }
  if (!masked) return;
  const [right, low] = [Math.min(widthPx, left + ANSWERED_PX), Math.min(heightPx, top + ANSWERED_PX)];
  for (let y = top; y < low; y++)
    for (let i = y * widthPx + left; i < y * widthPx + right; i++)
      if (masked[i]) {
        gx[i] = 0;
        gy[i] = 0;
      }
}

/** The plane's pixels round a tile; beyond the picture its rim is repeated. */
function fetchPlane(
  plane: Float32Array,
  widthPx: number,
  heightPx: number,
  left: number,
  top: number,
  { side, plain }: TileRoom,
): void {
  const inside = left >= 0 && left + side <= widthPx;
  for (let row = 0; row < side; row++) {
    const from = Math.min(heightPx - 1, Math.max(0, top + row)) * widthPx;
    if (inside) plain.set(plane.subarray(from + left, from + left + side), row * side);
    else
      for (let column = 0; column < side; column++)
        plain[row * side + column] = plane[from + Math.min(widthPx - 1, Math.max(0, left + column))];
  }
}

/** Gaussian blur from `plain` into `soft`, right wherever it is at least the kernel's reach from the square's sides. */
function blurTile({ kernel, side, plain, between, soft }: TileRoom): void {
  const reach = kernel.length - 1;
  const middle = kernel[0];
  for (let row = 0; row < side; row++) {
    const end = (row + 1) * side - reach;
    for (let i = row * side + reach; i < end; i++) {
      let sum = middle * plain[i];
      for (let k = 1; k <= reach; k++) sum += kernel[k] * (plain[i - k] + plain[i + k]);
      between[i] = sum;
    }
  }
  for (let row = reach; row < side - reach; row++) {
    const end = (row + 1) * side - reach;
    for (let i = row * side + reach; i < end; i++) {
      let sum = middle * between[i];
      for (let k = 1, step = side; k <= reach; k++, step += side)
        sum += kernel[k] * (between[i - step] + between[i + step]);
      soft[i] = sum;
    }
  }
}

function keepLarger(
  { lab: { widthPx, heightPx }, gx, gy }: EdgeTarget,
  left: number,
  top: number,
  weight: number,
  { rim, side, soft, largest }: TileRoom,
): void {
  const root = Math.sqrt(weight);
  const right = Math.min(widthPx - 1, left + ANSWERED_PX);
  const low = Math.min(heightPx - 1, top + ANSWERED_PX);
  const first = Math.max(1, left);
  for (let y = Math.max(1, top); y < low; y++) {
    let from = (y - top + rim) * side + first - left + rim;
    let own = (y - top) * ANSWERED_PX + first - left;
    for (let i = y * widthPx + first; i < y * widthPx + right; i++, from++, own++) {
      const dx = (soft[from + 1] - soft[from - 1]) * 0.5;
      const dy = (soft[from + side] - soft[from - side]) * 0.5;
      const size = (dx * dx + dy * dy) * weight;
      if (size <= largest[own]) continue;
      largest[own] = size;
      gx[i] = dx * root;
      gy[i] = dy * root;
    }
  }
}

function gaussianKernel(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(2.6 * sigmaPx));
  const kernel = new Float64Array(reach + 1);
  let total = 0;
  for (let k = 0; k <= reach; k++) {
    kernel[k] = exp((-k * k) / (2 * sigmaPx * sigmaPx));
    total += (k === 0 ? 1 : 2) * kernel[k];
  }
  for (let k = 0; k <= reach; k++) kernel[k] /= total;
  return kernel;
}

/** Bilinear value of `plane` at (x, y) px; the caller keeps 0 ≤ x ≤ width − 1 and 0 ≤ y ≤ height − 1. */
export function valueAt(
  plane: Float32Array,
  widthPx: number,
  heightPx: number,
  x: number,
  y: number,
): number {
  const x0 = Math.min(widthPx - 2, Math.floor(x));
  const y0 = Math.min(heightPx - 2, Math.floor(y));
  const fx = x - x0;
  const fy = y - y0;
  const at = y0 * widthPx + x0;
  const top = plane[at] * (1 - fx) + plane[at + 1] * fx;
  const low = plane[at + widthPx] * (1 - fx) + plane[at + widthPx + 1] * fx;
  return top * (1 - fy) + low * fy;
}
