import { distanceBetween, type Point } from '../base/index.ts';

/**
 * Triangles between two closed rings of points that run the same way, the second inside the first and near it; their first
 * points lie beside each other. Indices count from `outerStart` and `innerStart`.
 * Method: from the first points on, the shorter of both diagonals each time.
 */
export function zipRings(
  outer: readonly Point<'body'>[],
  outerStart: number,
  inner: readonly Point<'body'>[],
  innerStart: number,
): readonly number[] {
  const triangles: number[] = [];
  const apart = (a: Point<'body'> | undefined, b: Point<'body'> | undefined): number =>
    a && b ? distanceBetween(a, b) : Number.POSITIVE_INFINITY;
  let [onOuter, onInner] = [0, 0];
  while (onOuter < outer.length || onInner < inner.length) {
    const nextOuter = (onOuter + 1) % outer.length;
    const nextInner = (onInner + 1) % inner.length;
    const a = outerStart + (onOuter % outer.length);
    const b = innerStart + (onInner % inner.length);
    const forward = apart(outer[nextOuter], inner[onInner % inner.length]);
    const inward = apart(outer[onOuter % outer.length], inner[nextInner]);
    if (onInner >= inner.length || (onOuter < outer.length && forward <= inward)) {
      triangles.push(a, outerStart + nextOuter, b);
      onOuter++;
    } else {
      triangles.push(a, innerStart + nextInner, b);
      onInner++;
    }
  }
  return triangles;
}
