import { distanceBetween, type Point, point } from '../base/index.ts';

/**
 * The profile of a surface over a straight way in its plane: way from the start, and height, mm. Places no farther apart
 * than the step; a place without height (NaN) is left out.
 */
export function sectionLine(
  heightAt: (xMm: number, yMm: number) => number,
  from: Point<'body'>,
  to: Point<'body'>,
  stepMm: number,
): readonly Point<'section'>[] {
  const length = distanceBetween(from, to);
  const pieces = Math.max(1, Math.ceil(length / stepMm));
  return Array.from({ length: pieces + 1 }, (_, index): Point<'section'> => {
    const share = index / pieces;
    return point(
      share * length,
      heightAt(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)),
    );
  }).filter(({ y }) => !Number.isNaN(y));
}
