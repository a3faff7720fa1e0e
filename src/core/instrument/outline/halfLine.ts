import { atan, Bug, type Point, tan } from '../../base/index.ts';
import type { Chain, Vertex } from '../../curve/index.ts';

/**
 * The closed line made of a half line and its mirror image.
 *
 * `half` is open, in the body frame, on the treble side (x ≥ 0), and runs upward from the centre line to the centre line,
 * square to it at both ends. The result is closed and anticlockwise; the segments that reach the centre line are
 * written once across it, so no vertex stands there, and the two sides are mirror images to the last bit.
 */
export function closeAcrossCentre(half: Chain<'body'>): Chain<'body'> {
  const points = half.vertices;
  const last = points.length - 1;
  if (half.closed || last < 2)
    throw new Bug('a half line needs at least three segments ends and must be open');
  const inner = points.slice(1, last);
  const treble = inner.map((vertex, at) =>
    at === inner.length - 1 ? { ...vertex, bulge: twice(vertex.bulge) } : vertex,
  );
  const bass = inner.toReversed().map((vertex, at): Vertex<'body'> => {
    const before = points[last - 2 - at] as Vertex<'body'>;
    return { x: -vertex.x, y: vertex.y, bulge: at === inner.length - 1 ? twice(before.bulge) : before.bulge };
  });
  return { closed: true, vertices: [...treble, ...bass] };
}

/**
 * The closed line made of a half line and the straight centre line itself: a half template.
 *
 * Anticlockwise, x = 0 exactly on the straight edge. `edge` holds what the straight edge carries on its way down from
 * the upper to the lower end (notches), each vertex with the bulge of the segment that leaves it.
 */
export function closeOnCentreLine(half: Chain<'body'>, edge: readonly Vertex<'body'>[] = []): Chain<'body'> {
  const last = half.vertices.length - 1;
  const onLine = half.vertices.map((vertex, at) => (at === 0 || at === last ? { ...vertex, x: 0 } : vertex));
  return { closed: true, vertices: [...onLine, ...edge] };
}

/** A round pin whose centre stands on the centre line. */
export interface Pin {
  readonly centre: Point<'body'>;
  readonly radiusMm: number;
}

/** A straight edge on the centre line, walked downward, with a half-round notch at each pin. */
export function notchedEdge(pins: readonly Pin[]): readonly Vertex<'body'>[] {
  const downward = pins.toSorted((a, b) => b.centre.y - a.centre.y);
  return downward.flatMap(({ centre, radiusMm }): Vertex<'body'>[] => [
    // A half circle into the material on the left of the way down: clockwise round the pin.
    { x: 0, y: centre.y + radiusMm, bulge: -1 },
    { x: 0, y: centre.y - radiusMm, bulge: 0 },
  ]);
}

/** The bulge of an arc of twice the sweep. */
function twice(bulge: number): number {
  return tan(2 * atan(bulge));
}
