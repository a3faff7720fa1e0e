import { distanceBetween, exp, hypot, type Point, point } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';

/** Where black and white meet crosswise, to a few hundredths of a pixel. */
export interface Saddle {
  readonly at: Point<'photo'>;
  /** Spread to expect in x and in y from noise of one level in every pixel, px. */
  readonly sigmaPxPerLevel: number;
}

/** What is known of a crossing before it is measured. */
export interface SaddleGuess {
  readonly at: Point<'photo'>;
  /** Directions of the two edges in the photograph, of length 1. */
  readonly edges: readonly [Direction, Direction];
  /** How far along each edge, to both sides, the picture shows nothing but that edge. */
  readonly armPx: number;
  /** How far to the sides of an edge the picture is plain. */
  readonly sidePx: number;
}

export interface Direction {
  readonly x: number;
  readonly y: number;
}

const MOST_STEPS = 25;
/** px. A step this small is far under the noise of a single saddle. */
const SETTLED_PX = 0.001;

/**
 * The saddle nearest a first guess, in pixels whose centres have whole numbers; null when it wanders farther from the
 * guess than the plain strips are wide, when they leave the picture, or when no two edges cross there.
 *
 * Method: the point to which the gradients in the four arms are square in the sense of least squares, re-centred
 * until it stands still (the gradient of either edge is square to the line from the crossing to it). Ink that spread
 * moves opposite arms opposite ways and cancels. Source of the idea: Förstner and Gülch, "A fast operator for
 * detection and precise location of distinct points, corners and centres of circular features", 1987.
 */
export function refineSaddle(picture: GrayPicture, guess: SaddleGuess): Saddle | null {
  let at = guess.at;
  const window = armWindow(guess);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!windowInside(picture, at, window.half + 2)) return null;
    const sums = gradientSums(picture, at, window);
    const determinant = sums.xx * sums.yy - sums.xy * sums.xy;
    if (!(determinant > WEAKEST_CROSSING * sums.xx * sums.yy)) return null;
    const moveX = (sums.yy * sums.alongX - sums.xy * sums.alongY) / determinant;
    const moveY = (sums.xx * sums.alongY - sums.xy * sums.alongX) / determinant;
    at = point(at.x + moveX, at.y + moveY);
    if (distanceBetween(at, guess.at) > guess.sidePx + WANDER_PX) return null;
    if (hypot(moveX, moveY) < SETTLED_PX)
      return { at, sigmaPxPerLevel: spread(picture, at, window, determinant) };
  }
  return null;
}

/** px. Guesses come from codes that are good to a pixel or two. */
const WANDER_PX = 1;

/** Of the product of both directions' edge strength: two edges less than about 15° apart do not cross sharply. */
const WEAKEST_CROSSING = 0.05;

/** Pixel weights round the crossing: 1 in its middle, falling along the arms, 0 off them. */
interface Window {
  readonly half: number;
  readonly weights: Float64Array;
}

function armWindow({ edges, armPx, sidePx }: SaddleGuess): Window {
  const half = Math.floor(armPx);
  const side = 2 * half + 1;
  const weights = new Float64Array(side * side);
  const off = (edge: Direction, dx: number, dy: number) => Math.abs(edge.x * dy - edge.y * dx);
  for (let dy = -half; dy <= half; dy++)
    for (let dx = -half; dx <= half; dx++) {
      const isPlain = Math.min(off(edges[0], dx, dy), off(edges[1], dx, dy)) <= sidePx;
      const square = dx * dx + dy * dy;
      if (isPlain && square <= armPx * armPx)
        weights[(dy + half) * side + dx + half] = exp(-square / (armPx * armPx));
    }
  return { half, weights };
}

interface GradientSums {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  readonly alongX: number;
  readonly alongY: number;
}

function gradientSums(picture: GrayPicture, at: Point<'photo'>, { half, weights }: Window): GradientSums {
  const { alongX: gx, alongY: gy } = slopesAt(picture, at, half);
  const side = 2 * half + 1;
  let [xx, xy, yy, alongX, alongY] = [0, 0, 0, 0, 0];
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i];
    if (weight === 0) continue;
    const [dx, dy] = [(i % side) - half, Math.floor(i / side) - half];
    const projected = gx[i] * dx + gy[i] * dy;
    xx += weight * gx[i] * gx[i];
    xy += weight * gx[i] * gy[i];
    yy += weight * gy[i] * gy[i];
    alongX += weight * gx[i] * projected;
    alongY += weight * gy[i] * projected;
  }
  return { xx, xy, yy, alongX, alongY };
}

/**
 * How much the settled point moves when every pixel's brightness moves by one level at random: each pixel's own share in
 * the sums, through the gradients that it takes part in, added up as squares.
 */
function spread(picture: GrayPicture, at: Point<'photo'>, window: Window, determinant: number): number {
  const { half, weights } = window;
  const { xx, xy, yy } = gradientSums(picture, at, window);
  const { alongX: gx, alongY: gy } = slopesAt(picture, at, half);
  const side = 2 * half + 1;
  // A gradient takes part of the pixels one outside the window, too.
  const wide = side + 2;
  const [shareX, shareY] = [new Float64Array(wide * wide), new Float64Array(wide * wide)];
  for (let i = 0; i < weights.length; i++) {
    if (weights[i] === 0) continue;
    const [dx, dy] = [(i % side) - half, Math.floor(i / side) - half];
    const place = (dy + half + 1) * wide + dx + half + 1;
    for (const [share, g] of [
      [shareX, gx[i]],
      [shareY, gy[i]],
    ] as const) {
      share[place + 1] += (weights[i] * g * dx) / 2;
      share[place - 1] -= (weights[i] * g * dx) / 2;
      share[place + wide] += (weights[i] * g * dy) / 2;
      share[place - wide] -= (weights[i] * g * dy) / 2;
    }
  }
  let squares = 0;
  for (let place = 0; place < shareX.length; place++) {
    const moveX = (yy * shareX[place] - xy * shareY[place]) / determinant;
    const moveY = (xx * shareY[place] - xy * shareX[place]) / determinant;
    squares += moveX * moveX + moveY * moveY;
  }
  return Math.sqrt(squares / 2);
}

/** Slopes of the brightness, levels a pixel, at whole steps from a place, up to `half` of them to each side, row by row. */
function slopesAt(picture: GrayPicture, at: Point<'photo'>, half: number) {
  const patch = patchAt(picture, at, half + 1);
  const side = 2 * half + 1;
  const wide = side + 2;
  const [alongX, alongY] = [new Float64Array(side * side), new Float64Array(side * side)];
  for (let i = 0; i < alongX.length; i++) {
    const place = (Math.floor(i / side) + 1) * wide + (i % side) + 1;
    alongX[i] = (patch[place + 1] - patch[place - 1]) / 2;
    alongY[i] = (patch[place + wide] - patch[place - wide]) / 2;
  }
  return { alongX, alongY };
}

/** The brightness at whole steps from a place between pixels, up to `half` of them to each side; the picture must reach as far. */
function patchAt({ widthPx, data }: GrayPicture, at: Point<'photo'>, half: number): Float64Array {
  const side = 2 * half + 1;
  const patch = new Float64Array(side * side);
  const [column, row] = [Math.floor(at.x), Math.floor(at.y)];
  const [right, down] = [at.x - column, at.y - row];
  const [upperRight, lowerLeft] = [right * (1 - down), (1 - right) * down];
  const [upperLeft, lowerRight] = [(1 - right) * (1 - down), right * down];
  for (let y = 0; y < side; y++) {
    let from = (row + y - half) * widthPx + column - half;
    for (let place = y * side, end = place + side; place < end; place++, from++)
      patch[place] =
        upperLeft * data[from] +
        upperRight * data[from + 1] +
        lowerLeft * data[from + widthPx] +
        lowerRight * data[from + widthPx + 1];
  }
  return patch;
}

function windowInside(picture: GrayPicture, at: Point<'photo'>, reachPx: number): boolean {
  return (
    at.x >= reachPx &&
    at.y >= reachPx &&
    at.x <= picture.widthPx - 1 - reachPx &&
    at.y <= picture.heightPx - 1 - reachPx
  );
}
