/**
 * An upright picture in memory: eight-bit red, green, blue, row by row from the top left.
 * `rgb.length = 3 · widthPx · heightPx`. `focal35Mm` is the lens's 35 mm equivalent as the camera noted it.
 */
export interface Picture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgb: Uint8Array;
  readonly focal35Mm?: number;
}
