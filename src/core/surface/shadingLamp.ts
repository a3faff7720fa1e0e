import { cos, sin } from '../base/index.ts';

/**
 * One lamp in a dark room, over a plate seen from its outside with the neck end up. Its place is told as a maker sees
 * it: how high it stands as seen from the plate's middle, and where it comes from, clockwise from the neck end.
 */
export interface Lamp {
  /** Above the gluing face, from the middle of the plate; between 0 and a right angle. */
  readonly heightRad: number;
  /** Clockwise from the neck end: a quarter turn is from the right. */
  readonly fromRad: number;
  /** From the middle of the plate. Near lamps light the near side more. */
  readonly distanceMm: number;
  /** Half the width of the shining part, as seen from the plate: it softens the border of shadows. */
  readonly halfWidthRad: number;
}

/** Where the lamp shines, in the frame of the field, millimetres. */
export interface LampPlace {
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
}

export function lampPlace(lamp: Lamp, middle: { readonly xMm: number; readonly yMm: number }): LampPlace {
  const level = lamp.distanceMm * cos(lamp.heightRad);
  return {
    xMm: middle.xMm + level * sin(lamp.fromRad),
    yMm: middle.yMm + level * cos(lamp.fromRad),
    zMm: lamp.distanceMm * sin(lamp.heightRad),
  };
}
