import { atan2, hypot } from '../base/index.ts';
import { addRow, emptyEquations, solveEquations } from './normalEquations.ts';

/** A place in any plane. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** A circle through places, and how far they leave it: lengths in their own unit. */
export interface FittedCircle extends Place {
  readonly radius: number;
  readonly rms: number;
}

/**
 * The circle for which the differences of squared distances are least; null where the places do not make one.
 * Source: I. Kåsa, A circle fitting procedure and its error analysis, 1976.
 */
export function fitCircle(places: readonly Place[]): FittedCircle | null {
  const middle = middleOf(places);
  const equations = emptyEquations(3);
  for (const { x, y } of places) {
    const [u, v] = [x - middle.x, y - middle.y];
    addRow(equations, Float64Array.of(u, v, 1), u * u + v * v, 1);
  }
  if (!solveEquations(equations)) return null;
  const [u, v] = [equations.right[0] / 2, equations.right[1] / 2];
  const [x, y] = [middle.x + u, middle.y + v];
  const radius = Math.sqrt(Math.max(0, equations.right[2] + u * u + v * v));
  const off = places.reduce((sum, place) => sum + (hypot(place.x - x, place.y - y) - radius) ** 2, 0);
  return { x, y, radius, rms: Math.sqrt(off / places.length) };
}

/** A straight line through places, and how far they leave it. */
export interface FittedLine {
  readonly middle: Place;
  /** Of the line's own direction, which may be either of two. */
  readonly headingRad: number;
  readonly rms: number;
}

/** The line for which the squared distances are least; of a single place the level one. Promises a place. */
export function fitLine(places: readonly Place[]): FittedLine {
  const middle = middleOf(places);
  let [xx, xy, yy] = [0, 0, 0];
  for (const { x, y } of places) {
    xx += (x - middle.x) ** 2;
    xy += (x - middle.x) * (y - middle.y);
    yy += (y - middle.y) ** 2;
  }
  const headingRad = atan2(2 * xy, xx - yy) / 2;
  const across = (xx + yy - hypot(xx - yy, 2 * xy)) / 2;
  return { middle, headingRad, rms: Math.sqrt(Math.max(0, across) / Math.max(1, places.length)) };
}

function middleOf(places: readonly Place[]): Place {
  const count = Math.max(1, places.length);
  return {
    x: places.reduce((sum, { x }) => sum + x, 0) / count,
    y: places.reduce((sum, { y }) => sum + y, 0) / count,
  };
}
