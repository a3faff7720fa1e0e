import type { Point } from '../base/index.ts';

/** Where straight pieces through points pass a height. */
export function crossingsAt(points: readonly Point<'body'>[], y: number): readonly number[] {
  return points.flatMap((to, index) => {
    const from = points[index - 1];
    if (!from || from.y > y === to.y > y) return [];
    return [from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)];
  });
}
