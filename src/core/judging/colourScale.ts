import type { Colour } from './pictureSheet.ts';

/** Colours from the lowest to the highest value of a map, at equal distances. */
export type ColourScale = readonly Colour[];

/** From paper to walnut: heights and thicknesses, dark where there is most wood. */
export const WOOD_SCALE: ColourScale = [
  [251, 245, 231],
  [244, 229, 199],
  [232, 205, 156],
  [214, 172, 112],
  [183, 130, 75],
  [143, 92, 52],
];

/** From blue over paper to rust, for what may go both ways: white is none. */
export const BOTH_WAYS_SCALE: ColourScale = [
  [23, 72, 128],
  [88, 142, 190],
  [172, 205, 226],
  [250, 249, 245],
  [240, 196, 160],
  [208, 121, 82],
  [138, 50, 36],
];

/** The colour at a share of a scale, 0 its first and 1 its last; what lies beyond takes the end's. */
export function colourAt(scale: ColourScale, share: number): Colour {
  const place = Math.max(0, Math.min(1, share)) * (scale.length - 1);
  const index = Math.min(scale.length - 2, Math.floor(place));
  const part = place - index;
  const low = scale[index] as Colour;
  const high = scale[index + 1] as Colour;
  const between = (channel: 0 | 1 | 2): number =>
    Math.round(low[channel] + part * (high[channel] - low[channel]));
  return [between(0), between(1), between(2)];
}

/** A colour under so much light: 1 leaves it, more brings it nearer to white, less to black. */
export function shaded([red, green, blue]: Colour, light: number): Colour {
  const channel = (value: number): number => {
    const lit = light > 1 ? value + (WHITE - value) * Math.min(1, light - 1) : value * Math.max(0, light);
    return Math.round(lit);
  };
  return [channel(red), channel(green), channel(blue)];
}

const WHITE = 255;
