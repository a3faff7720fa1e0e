import type { Box } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import type { Lettering } from '../drawing/index.ts';

/** Red, green and blue, 0 to 255 (sRGB). */
export type Colour = readonly [number, number, number];

/** Eight-bit red, green, blue, row by row from the top left; `rgb.length = 3 · widthPx · heightPx`. */
export interface Raster {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgb: Uint8Array;
}

/** A raster that fills a box; only what lies within `within` shows. */
export interface PlacedRaster {
  readonly raster: Raster;
  readonly box: Box<'drawing'>;
  readonly within?: Chain<'drawing'>;
}

/** A line with its colour; a closed one may be filled, with or without a stroke of its own (width 0). */
export interface InkedLine {
  readonly chain: Chain<'drawing'>;
  readonly ink: Colour;
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
  readonly fill?: Colour;
}

export interface InkedLettering {
  readonly lettering: Lettering;
  readonly ink: Colour;
  /** Bold lettering is written with a broader pen. */
  readonly bold?: boolean;
}

/**
 * A picture to look at, not for tools: what lies on it is painted in the order of its parts. True millimetres, y up; the
 * box is what shows.
 */
export interface PictureSheet {
  readonly title: string;
  readonly box: Box<'drawing'>;
  readonly ground: Colour;
  readonly rasters: readonly PlacedRaster[];
  readonly lines: readonly InkedLine[];
  readonly lettering: readonly InkedLettering[];
}
