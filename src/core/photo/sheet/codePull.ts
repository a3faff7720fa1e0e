import { type Point, point, tanh } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';
import { refineSaddle, type SaddleGuess } from './saddle.ts';

/** Which way from a saddle a code stands, along its first and its second edge. */
export interface CodeSide {
  readonly first: 1 | -1;
  readonly second: 1 | -1;
}

/** Where the code begins, counted along each edge from the saddle. */
export interface CodeStart {
  readonly firstPx: number;
  readonly secondPx: number;
}

/**
 * How far a blurred code in one of the two white quarters draws {@link refineSaddle} off the crossing, px in x and y; null
 * where the crossing is lost. Codes in both quarters draw as much to both sides.
 *
 * Method: the same refinement of a made picture of the crossing with that code, whose edges are as wide as those seen.
 */
export function codePull(
  seen: SaddleGuess,
  side: CodeSide,
  start: CodeStart,
  blurPx: number,
): { readonly x: number; readonly y: number } | null {
  const half = Math.ceil(seen.armPx) + ROOM_PX;
  const at = point<'photo'>(half, half);
  const found = refineSaddle(madePicture(seen, side, start, blurPx, half), { ...seen, at });
  return found && { x: found.at.x - at.x, y: found.at.y - at.y };
}

/** px. Round the arms, for the gradients and for the refinement to move in. */
const ROOM_PX = 5;
/** Levels of 255, black and white; much contrast, so that rounding to levels is nothing. */
const [MIDDLE, SWING] = [128, 110];

function madePicture(
  { edges: [first, second] }: SaddleGuess,
  side: CodeSide,
  start: CodeStart,
  blurPx: number,
  half: number,
): GrayPicture {
  const sizePx = 2 * half + 1;
  const data = new Uint8Array(sizePx * sizePx);
  const cross = first.x * second.y - first.y * second.x;
  const sharpness = Math.abs(cross) / blurPx;
  for (let row = 0; row < sizePx; row++)
    for (let column = 0; column < sizePx; column++) {
      const d: Point<'photo'> = point(column - half, row - half);
      const u = (side.first * (d.x * second.y - d.y * second.x)) / cross;
      const v = (side.second * (first.x * d.y - first.y * d.x)) / cross;
      const squares = tanh(u * sharpness) * tanh(v * sharpness);
      const code =
        ((1 + tanh((u - start.firstPx) * sharpness)) * (1 + tanh((v - start.secondPx) * sharpness))) / 2;
      data[row * sizePx + column] = Math.round(MIDDLE + SWING * (squares - code));
    }
  return { widthPx: sizePx, heightPx: sizePx, data };
}
