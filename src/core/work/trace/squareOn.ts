import type { ShownWays } from './shownWays.ts';

/** A picture square on to the body, neck up, as it was photographed: `rgba` row by row, clear where the photograph ends. */
export interface SquareOn {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
  readonly pxPerMm: number;
  /** The picture's left and upper edges: mm right of the centre line, and down from the upper end of the body. */
  readonly leftMm: number;
  readonly topMm: number;
}

/** Which part is drawn, and how large. */
export interface SquareOnPart {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly pxPerMm: number;
}

/** A part of a photograph seen square on; between its pixels the light is blended. */
export function squareOn(
  { shot, toPhoto }: ShownWays,
  { leftMm, topMm, widthMm, heightMm, pxPerMm }: SquareOnPart,
): SquareOn {
  const widthPx = Math.round(widthMm * pxPerMm);
  const heightPx = Math.round(heightMm * pxPerMm);
  const { widthPx: across, heightPx: down, rgb } = shot.photograph.picture;
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let row = 0; row < heightPx; row++)
    for (let column = 0; column < widthPx; column++) {
      const at = toPhoto([leftMm + (column + 0.5) / pxPerMm, topMm + (row + 0.5) / pxPerMm]);
      const [px, py] = [Math.floor(at.x), Math.floor(at.y)];
      if (!(px >= 0 && py >= 0 && px + 1 < across && py + 1 < down)) continue;
      const [u, v] = [at.x - px, at.y - py];
      const from = 3 * (py * across + px);
      const below = from + 3 * across;
      const to = 4 * (row * widthPx + column);
      for (let tone = 0; tone < 3; tone++) {
        const upper = (1 - u) * (rgb[from + tone] as number) + u * (rgb[from + 3 + tone] as number);
        const lower = (1 - u) * (rgb[below + tone] as number) + u * (rgb[below + 3 + tone] as number);
        rgba[to + tone] = (1 - v) * upper + v * lower;
      }
      rgba[to + 3] = 255;
    }
  return { widthPx, heightPx, rgba, pxPerMm, leftMm, topMm };
}
