import type { Frame, Point } from '../../base/index.ts';

/** The convex hull of points, without those in line, anticlockwise where y goes up. Method: Andrew's monotone chain, 1979. */
export function convexHull<F extends Frame>(points: readonly Point<F>[]): readonly Point<F>[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (ordered: readonly Point<F>[]): Point<F>[] => {
    const hull: Point<F>[] = [];
    for (const next of ordered) {
      while (hull.length >= 2 && turn(hull[hull.length - 2], hull[hull.length - 1], next) <= 0) hull.pop();
      hull.push(next);
    }
    return hull.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Twice the area on the left of a → b → c, positive anticlockwise. */
function turn<F extends Frame>(a: Point<F>, b: Point<F>, c: Point<F>): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** The area of a polygon, positive anticlockwise where y goes up. */
export function polygonArea<F extends Frame>(polygon: readonly Point<F>[]): number {
  return (
    polygon.reduce((sum, one, place) => {
      const next = polygon[(place + 1) % polygon.length];
      return sum + one.x * next.y - one.y * next.x;
    }, 0) / 2
  );
}
