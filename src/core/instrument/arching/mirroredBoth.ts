import { atan, tan } from '../../base/index.ts';
import type { Chain, Vertex } from '../../curve/index.ts';

/** A half that starts level on the centre line, and its mirror, with one arc across the centre line. */
export function mirroredBoth(right: Chain<'section'>): Chain<'section'> {
  const [first, ...rest] = right.vertices;
  if (!first) return right;
  const across = tan(2 * atan(first.bulge));
  const left = rest.map((vertex, index): Vertex<'section'> => {
    const bulge = index === 0 ? across : (rest[index - 1]?.bulge ?? 0);
    return { x: -vertex.x, y: vertex.y, bulge };
  });
  return { closed: false, vertices: [...left.reverse(), ...rest] };
}
