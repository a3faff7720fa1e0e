import { hypot } from './elementary/index.ts';

/**
 * The planes that coordinates are given in. Only a type: it costs nothing at run time and keeps a
 * pixel from being taken for a millimetre.
 *
 * - `photo`   pixels of an upright picture, x right, y down, (0, 0) the centre of the top left pixel
 * - `scene`   millimetres on the plane that was photographed, x right, y up, any origin
 * - `sheet`   millimetres on the calibration sheet, x right, y up, origin its lower left corner
 * - `body`    millimetres, x to the right and y from the lower end to the neck, looking at the outside
 *             of the top; origin where the centre line meets the lower end of the outline
 * - `section` millimetres in a plane across or along a plate: first coordinate along the gluing face
 *             (x across, or y along the centre line), second the height above it
 * - `head`    millimetres in the plane of the head's side, seen from the treble side: x behind the gluing face of the
 *             fingerboard, y along it from the nut toward the scroll; origin at the nut, on the side of the pegbox
 * - `drawing` millimetres on a drawing, x right, y up
 * - `page`    millimetres on a sheet of paper, x right, y up, origin its lower left corner
 */
export type Frame = 'photo' | 'scene' | 'sheet' | 'body' | 'section' | 'head' | 'drawing' | 'page';

declare const frameOf: unique symbol;

/** A point of one frame. Make one with {@link point}; points of two frames do not mix. */
export interface Point<F extends Frame> {
  readonly x: number;
  readonly y: number;
  readonly [frameOf]?: F;
}

export function point<F extends Frame>(x: number, y: number): Point<F> {
  return { x, y };
}

export function distanceBetween<F extends Frame>(a: Point<F>, b: Point<F>): number {
  return hypot(b.x - a.x, b.y - a.y);
}

/** An upright box; `min` is its lower left in frames with y up, its upper left in `photo`. */
export interface Box<F extends Frame> {
  readonly min: Point<F>;
  readonly max: Point<F>;
}
