import { type Point, point } from '../../base/index.ts';
import { addRow, emptyEquations, solveEquations } from '../../numeric/index.ts';

/** A circle through places, and how far they leave it. */
export interface FittedCircle {
  readonly centre: Point<'section'>;
  readonly radiusMm: number;
  readonly rmsMm: number;
}

/**
 * The circle for which the differences of squared distances are least; a radius of 0 where the places do not make one.
 * Source: I. Kåsa, A circle fitting procedure and its error analysis, 1976.
 */
export function fitCircle(places: readonly Point<'section'>[]): FittedCircle {
  const count = Math.max(1, places.length);
  const cx = places.reduce((sum, { x }) => sum + x, 0) / count;
  const cy = places.reduce((sum, { y }) => sum + y, 0) / count;
  const equations = emptyEquations(3);
  for (const { x, y } of places) {
    const [u, v] = [x - cx, y - cy];
    addRow(equations, Float64Array.of(u, v, 1), u * u + v * v, 1);
  }
  if (!solveEquations(equations)) return { centre: point(cx, cy), radiusMm: 0, rmsMm: 0 };
  const solved = equations.right;
  const [u, v] = [solved[0] / 2, solved[1] / 2];
  const radiusMm = Math.sqrt(Math.max(0, solved[2] + u * u + v * v));
  const centre = point<'section'>(cx + u, cy + v);
  const off = places.reduce(
    (sum, { x, y }) => sum + (Math.hypot(x - centre.x, y - centre.y) - radiusMm) ** 2,
    0,
  );
  return { centre, radiusMm, rmsMm: Math.sqrt(off / count) };
}
